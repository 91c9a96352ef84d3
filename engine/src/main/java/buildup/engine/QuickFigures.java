package buildup.engine;

import buildup.engine.judge.must.AskedFigure;
import buildup.engine.judge.proportion.OrderRow;
import buildup.engine.judge.proportion.PartShare;
import buildup.engine.look.light.Darkness;
import buildup.engine.look.light.Lights;
import buildup.engine.look.light.Shadow;
import buildup.engine.look.sight.Coverage;
import buildup.engine.look.sight.Eyes;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Reveal;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing;
import buildup.engine.section.compose.Totals;
import buildup.engine.section.stack.Eye;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Outline;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * Figures of one stack that its outlines tell without a union, each taken from the very answer that its sheet is made of.
 * A sheet is many cells; here one is asked for. One thread asks.
 */
final class QuickFigures {
    /** What has to be known of a stack before a figure can be told, the cheapest first. */
    enum Depth {
        /** Where its pieces sit. */
        BOXES,
        /** What lies on what. */
        CONTACTS,
        /** The walk along the room side. */
        WALK,
        /** What eyes see. */
        SIGHT,
        /** What lights leave dark. */
        LIGHT,
        /** Only the whole answer tells it. */
        ALL
    }

    private static final Map<String, Function<Totals, Double>> OF_TOTALS = Map.of(
            "height", Totals::height,
            "projection", Totals::projection,
            "bottom", Totals::bottom,
            "top", Totals::top,
            "trimHeight", Totals::trimHeight,
            "trimProjection", Totals::trimProjection,
            "area", Totals::area,
            "weightPerFoot", Totals::weightPerFoot);

    private static final Map<String, Function<Outline, Double>> OF_OUTLINE = Map.of(
            "bottom", outline -> outline.box().bottom(),
            "top", outline -> outline.box().top(),
            "height", outline -> outline.box().height(),
            "back", outline -> outline.box().back(),
            "face", outline -> outline.box().face(),
            "area", Outline::area);

    private static final Map<String, Function<Reveal, Double>> OF_REVEAL =
            Map.of("amount", Reveal::amount, "step", Reveal::step);

    private static final Map<String, Function<Member, OptionalDouble>> OF_MEMBER = Map.of(
            "length", member -> OptionalDouble.of(member.length()),
            "bottom", member -> OptionalDouble.of(member.box().bottom()),
            "top", member -> OptionalDouble.of(member.box().top()),
            "projection", member -> OptionalDouble.of(member.projection()),
            "step", Member::step);

    private static final Map<String, Function<Shadow, OptionalDouble>> OF_SHADOW = Map.of(
            "top",
            shadow -> OptionalDouble.of(shadow.box().top()),
            "bottom",
            shadow -> OptionalDouble.of(shadow.box().bottom()),
            "overhang",
            Shadow::overhang,
            "depth",
            shadow -> shadow.depth().isPresent() ? shadow.depth() : shadow.reach());

    private static final Map<String, Function<Darkness, Double>> OF_DARKNESS =
            Map.of("dark", Darkness::dark, "share", Darkness::share);

    /** The figures of a shadow for which it has to be known what casts it. */
    private static final Set<String> OF_CASTERS = Set.of("overhang", "depth");

    private static final Map<String, Function<Coverage, Double>> OF_COVERAGE =
            Map.of("exposed", Coverage::exposed, "seen", Coverage::seen, "hiddenShare", Coverage::hiddenShare);

    private static final Map<String, Function<PartShare, Double>> OF_PART = Map.of(
            "share", PartShare::share,
            "height", PartShare::height,
            "bottom", PartShare::bottom,
            "top", PartShare::top);

    /** Of raw wood: where a piece shows none, it is none. */
    private static final Set<String> NONE_WITHOUT_ROW = Set.of("exposed", "seen");

    private final Composer.Staged staged;
    private final Composer.Known known;
    private final List<Eye> eyes;
    private final List<Light> lights;
    private final QuickAsking asking;
    private Optional<Lights> lighting = Optional.empty();
    private Optional<Eyes> seeing = Optional.empty();

    /** @param known what is remembered of outlines beside each other */
    QuickFigures(Composer.Staged staged, Composer.Known known, List<Eye> eyes, List<Light> lights, QuickAsking asking) {
        this.asking = asking;
        this.staged = staged;
        this.known = known;
        this.eyes = eyes;
        this.lights = lights;
    }

    /** How deep a figure lies. */
    static Depth depth(AskedFigure figure, QuickAsking asking) {
        String column = figure.column();
        if (figure.several()) {
            return Depth.ALL;
        }
        return switch (figure.sheet()) {
            case "totals" -> OF_TOTALS.containsKey(column) ? Depth.BOXES : Depth.ALL;
            case "pieces" ->
                OF_OUTLINE.containsKey(column)
                        ? Depth.BOXES
                        : column.equals("bearing") && !asking.fastened() ? Depth.CONTACTS : Depth.ALL;
            case "contacts" -> column.equals("length") ? Depth.WALK : Depth.ALL;
            case "reveals" -> OF_REVEAL.containsKey(column) ? Depth.WALK : Depth.ALL;
            case "members" -> OF_MEMBER.containsKey(column) ? Depth.WALK : Depth.ALL;
            case "space" -> Depth.WALK;
            case "coverage" -> OF_COVERAGE.containsKey(column) ? Depth.SIGHT : Depth.ALL;
            case "darkness" -> OF_DARKNESS.containsKey(column) ? Depth.LIGHT : Depth.ALL;
            case "shadows" -> OF_SHADOW.containsKey(column) ? Depth.LIGHT : Depth.ALL;
            case "proportion.parts" -> asking.parts() && OF_PART.containsKey(column) ? Depth.WALK : Depth.ALL;
            case "proportion.orders" -> asking.parts() && column.equals("off") ? Depth.WALK : Depth.ALL;
            default -> Depth.ALL;
        };
    }

    /** The figures that a line leaves; absent where only a union can say how the outlines meet. */
    Optional<Collection<Double>> of(AskedFigure figure) {
        String column = figure.column();
        Map<String, String> named = figure.named();
        return switch (figure.sheet()) {
            case "totals" -> Optional.of(List.of(taken(OF_TOTALS, column, staged.totals())));
            case "pieces" -> Optional.of(ofPieces(column, named));
            default -> staged.section().map(section -> ofSection(section, figure.sheet(), column, named));
        };
    }

    private Collection<Double> ofPieces(String column, Map<String, String> named) {
        List<Double> found = new ArrayList<>();
        List<Standing> standing = OF_OUTLINE.containsKey(column) ? List.of() : staged.standing();
        int piece = 0;
        for (Body body : staged.bodies()) {
            if (body.piece() && goesBy(named, "name", body.name())) {
                found.add(standing.isEmpty() ? taken(OF_OUTLINE, column, body.outline()) : width(standing.get(piece)));
            }
            piece += body.piece() ? 1 : 0;
        }
        // widths add up, and no row of them is none
        return found.isEmpty() && !OF_OUTLINE.containsKey(column) ? List.of(0.0) : found;
    }

    private static double width(Standing standing) {
        return standing.bearing().stream().mapToDouble(Standing.Bearing::width).sum();
    }

    private Collection<Double> ofSection(Section section, String sheet, String column, Map<String, String> named) {
        List<OptionalDouble> found = new ArrayList<>();
        switch (sheet) {
            case "space" -> found.add(column.equals("ceilingLeft") ? section.ceilingLeft() : section.projectionLeft());
            case "reveals" -> {
                for (Reveal reveal : section.reveals()) {
                    if (goesBy(named, "piece", section.name(reveal.piece()))
                            && goesBy(named, "over", section.name(reveal.over()))) {
                        found.add(OptionalDouble.of(taken(OF_REVEAL, column, reveal)));
                    }
                }
            }
            case "contacts" -> {
                for (Contact contact : section.contacts()) {
                    if (goesBy(named, "a", section.name(contact.a()))
                            && goesBy(named, "b", section.name(contact.b()))) {
                        found.add(OptionalDouble.of(contact.length()));
                    }
                }
            }
            case "members" -> {
                for (Member member : section.members()) {
                    if (is(section, member, named, "piece")) {
                        found.add(taken(OF_MEMBER, column, member));
                    }
                }
            }
            case "proportion.parts" -> {
                for (PartShare part : asking.proportion(section).parts()) {
                    if (goesBy(named, "name", part.part().word())) {
                        found.add(OptionalDouble.of(taken(OF_PART, column, part)));
                    }
                }
            }
            case "proportion.orders" -> {
                for (OrderRow row : asking.proportion(section).orders()) {
                    if (goesBy(named, "order", row.order().name())) {
                        found.add(OptionalDouble.of(row.off()));
                    }
                }
            }
            case "coverage" -> coverage(section, column, named, found);
            case "darkness" -> darkness(section, column, named, found);
            default -> shadows(section, column, named, found);
        }
        List<Double> figures = new ArrayList<>(found.size());
        for (OptionalDouble one : found) {
            if (one.isPresent() && Double.isFinite(one.getAsDouble())) {
                figures.add(one.getAsDouble());
            }
        }
        return figures;
    }

    private void coverage(Section section, String column, Map<String, String> named, List<OptionalDouble> found) {
        for (Eye eye : eyes) {
            if (goesBy(named, "eye", eye.name())) {
                for (Coverage coverage : covered(section, eye, named)) {
                    found.add(OptionalDouble.of(taken(OF_COVERAGE, column, coverage)));
                }
            }
        }
        boolean sees = found.isEmpty()
                && eyes.stream()
                        .anyMatch(eye -> goesBy(named, "eye", eye.name())
                                && Eyes.fault(eye, section).isEmpty());
        if (sees && NONE_WITHOUT_ROW.contains(column)) {
            found.add(OptionalDouble.of(0));
        }
    }

    private List<Coverage> covered(Section section, Eye eye, Map<String, String> named) {
        if (seeing.isEmpty()) {
            seeing = Optional.of(Eyes.asked(section));
        }
        return seeing.get().covered(eye, body -> goesBy(named, "piece", section.name(body)));
    }

    private void darkness(Section section, String column, Map<String, String> named, List<OptionalDouble> found) {
        for (Light light : lights) {
            if (goesBy(named, "light", light.name())) {
                lights(section)
                        .darkness(light, member -> is(section, member, named, "on"))
                        .forEach(dark -> found.add(OptionalDouble.of(taken(OF_DARKNESS, column, dark))));
            }
        }
        boolean shines = found.isEmpty()
                && lights.stream()
                        .anyMatch(light -> goesBy(named, "light", light.name())
                                && Lights.fault(light, section).isEmpty());
        if (shines) {
            found.add(OptionalDouble.of(0));
        }
    }

    private Lights lights(Section section) {
        if (lighting.isEmpty()) {
            lighting = Optional.of(Lights.asked(section, known));
        }
        return lighting.get();
    }

    private void shadows(Section section, String column, Map<String, String> named, List<OptionalDouble> found) {
        boolean casters = OF_CASTERS.contains(column);
        boolean shines = false;
        for (Light light : lights) {
            if (goesBy(named, "light", light.name())) {
                lights(section)
                        .shadows(light, member -> is(section, member, named, "on"), casters)
                        .forEach(shadow -> found.add(taken(OF_SHADOW, column, shadow)));
                shines |= Lights.fault(light, section).isEmpty();
            }
        }
        if (found.isEmpty() && shines && casters) {
            found.add(OptionalDouble.of(0));
        }
    }

    /** The figure of a column that is known to be among these. */
    private static <T, R> R taken(Map<String, Function<T, R>> columns, String column, T row) {
        return Optional.ofNullable(columns.get(column)).orElseThrow().apply(row);
    }

    private static boolean is(Section section, Member member, Map<String, String> named, String piece) {
        return goesBy(named, piece, section.name(member.body())) && goesBy(named, "member", member.member());
    }

    private static boolean goesBy(Map<String, String> named, String key, String name) {
        String wanted = named.get(key);
        return wanted == null || wanted.equals(name);
    }
}
