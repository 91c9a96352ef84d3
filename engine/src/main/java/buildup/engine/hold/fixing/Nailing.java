package buildup.engine.hold.fixing;

import buildup.catalog.Catalog;
import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.nail.Check;
import buildup.engine.hold.nail.Check.Rule;
import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Drive;
import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Grip;
import buildup.engine.hold.nail.Hiding;
import buildup.engine.hold.nail.Reach;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.sight.Sighting;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;

/** Looks at one fastening on one spot. */
final class Nailing {
    /** In diameters; where each is from stands at {@link Rule}. */
    private static final double NAIL_BITE = 12;

    private static final double SCREW_BITE = 6;
    private static final double EDGE = 2.5;

    /** Of that, where it is bored for. */
    private static final double EDGE_BORED = 2.0 / 3;

    private final Catalog catalog;
    private final Timber timber;
    private final NailPaths shots;
    private final Reaching reaching;
    private final Hidings hidings;

    Nailing(Section section, List<Lighting> lights, List<Sighting> sights, Catalog catalog) {
        this(new Timber(section), lights, sights, catalog);
    }

    Nailing(Timber timber, List<Lighting> lights, List<Sighting> sights, Catalog catalog) {
        this.catalog = catalog;
        this.timber = timber;
        this.shots = new NailPaths(timber);
        this.reaching = new Reaching(timber, catalog);
        this.hidings = new Hidings(timber, lights, sights);
    }

    /** What the shop of this job reaches for, in that order. */
    List<Fastener> fasteners() {
        return catalog.fasteners(timber.section().stack().unit());
    }

    Timber timber() {
        return timber;
    }

    NailPaths shots() {
        return shots;
    }

    Hidings hidings() {
        return hidings;
    }

    Reaching reaching() {
        return reaching;
    }

    /** The bite that a fastener must have, in. */
    static double needed(Fastener fastener) {
        double diameters = fastener.kind() == Fastener.Kind.NAIL ? NAIL_BITE : SCREW_BITE;
        return diameters * fastener.diameter().toInches();
    }

    Drive drive(Spot spot, Fastening fastening, int step) {
        return shots.follow(
                spot.at(), spot.way(fastening.angle()), fastening.use().length().toInches(), step);
    }

    /**
     * What is wrong first with a fastener on that drive: too little wood beside it, what most fail by and the quickest to be
     * asked; then no room for its tool; then anything else.
     *
     * @param hiding what becomes of its head
     * @param blocked tools that do not get in there; another is noted
     * @param row the fastening, written out only where nothing is wrong so far
     * @return the fastening if it is sound
     */
    Optional<Fixed> sound(
            Spot spot, Hiding hiding, Fastener.Cut use, Drive drive, Set<String> blocked, Supplier<Fastening> row) {
        // nobody is told to bore where another place or fastener will do
        Check unbored = edge(use, false, 0);
        OptionalDouble edge = shots.edge(drive, unbored.needs() - Tolerance.SAME_SIZE);
        if (edge.isPresent() && !edge(use, false, edge.getAsDouble()).met()) {
            return Optional.empty();
        }
        Reach reach = reaching.of(spot, drive.way(), use, spot.body());
        if (!reach.free()) {
            blocked.add(use.fastener().tool());
            return Optional.empty();
        }
        return Optional.of(fixed(spot, hiding, row.get(), spot.body(), drive, edge, reach))
                .filter(Fixed::holds);
    }

    private static Check edge(Fastener.Cut use, boolean bored, double wood) {
        double least = EDGE * use.fastener().diameter().toInches();
        return bored ? new Check(Rule.EDGE_BORED, wood, EDGE_BORED * least) : new Check(Rule.EDGE, wood, least);
    }

    Fixed fixed(Spot spot, Fastening fastening, int step) {
        Drive drive = drive(spot, fastening, step);
        Reach reach = reaching.of(spot, drive.way(), fastening.use(), step);
        return fixed(spot, hidings.of(spot, step), fastening, step, drive, shots.edge(drive), reach);
    }

    private Fixed fixed(
            Spot spot, Hiding hiding, Fastening fastening, int step, Drive drive, OptionalDouble edge, Reach reach) {
        Holding holding = new Holding(timber, fastening, drive);
        List<Grip> grips = holding.grips();
        return new Fixed(
                fastening,
                spot.body(),
                step,
                drive,
                grips,
                holding.joints(grips),
                checks(spot.body(), fastening, drive, edge, step),
                edge,
                Holding.slant(fastening),
                hiding,
                reach);
    }

    /**
     * The bodies whose bite matters: what stood before, where the nail ends in it, for it is then meant to hold the stack to
     * that; else the pieces beyond its own, since blocks behind a molding stand together. Where it bites enough in those
     * they do: a longer nail never holds less than one that ends there.
     */
    List<Integer> judged(int piece, Fastener fastener, Drive drive) {
        Optional<Integer> standing = drive.last()
                .filter(Crossing::holds)
                .map(crossing -> crossing.body().orElseThrow())
                .filter(body -> body != piece && timber.body(body).standing());
        List<Integer> pieces = drive.held().stream()
                .filter(body -> body != piece && !standing.equals(Optional.of(body)))
                .toList();
        return standing.map(List::of)
                .filter(last -> bite(piece, pieces, drive) < needed(fastener) - Tolerance.SAME_SIZE
                        || bite(piece, last, drive) >= bite(piece, pieces, drive))
                .orElse(pieces);
    }

    /** What counts as nothing in withdrawal is no bite. */
    private double bite(int piece, List<Integer> bodies, Drive drive) {
        String name = timber.body(piece).name();
        return bodies.stream()
                .filter(body -> timber.counts(body, drive.way(), name))
                .mapToDouble(drive::in)
                .sum();
    }

    private List<Check> checks(int piece, Fastening fastening, Drive drive, OptionalDouble edge, int step) {
        double diameter = fastening.use().fastener().diameter().toInches();
        double beyond = bite(piece, judged(piece, fastening.use().fastener(), drive), drive);
        List<Check> checks = new ArrayList<>(List.of(
                new Check(Rule.TWELVE_DIAMETERS, beyond, NAIL_BITE * diameter),
                new Check(Rule.SIX_DIAMETERS, beyond, SCREW_BITE * diameter),
                new Check(Rule.TEN_DIAMETERS, beyond, 10 * diameter),
                new Check(Rule.FOURTEEN_DIAMETERS, beyond, 14 * diameter),
                new Check(Rule.HALF_ITS_LENGTH, beyond, drive.length() / 2),
                new Check(Rule.THREE_QUARTERS, beyond, Rule.THREE_QUARTERS.size()),
                new Check(Rule.THRICE_THE_PIECE, drive.length(), 3 * drive.in(piece))));
        if (drive.last().filter(Crossing::holds).isPresent()) {
            shots.left(drive).ifPresent(left -> checks.add(new Check(Rule.FAR_FACE, left, Rule.FAR_FACE.size())));
            // nails do not go as straight as drawn
            double ahead = shots.ahead(drive, Rule.POINT.size(), step);
            checks.add(new Check(Rule.POINT, ahead, Rule.POINT.size()));
        }
        shots.open(drive).ifPresent(out -> checks.add(new Check(Rule.OPEN_AIR, out.by(), 0)));
        edge.ifPresent(wood -> checks.add(edge(fastening.use(), fastening.bored(), wood)));
        return checks;
    }
}
