package buildup.engine.hold.framing;

import buildup.engine.hold.framing.Landing.Into;
import buildup.engine.hold.framing.Landing.Layout;
import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Grip;
import buildup.engine.room.plan.Framing;
import buildup.engine.room.plan.FramingRow;
import buildup.engine.room.plan.Stretch;
import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Job;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/** Asks whether rows of nails and screws land on what stands behind wall and ceiling. */
public final class Landings {
    /** A nail nearer to the edge of a stud than this, in, is taken to miss it: common practice, no source. */
    static final double FROM_EDGE = 0.25;

    /** So many places are named where a row misses; the count tells of the others. */
    private static final int MOST_NAMED = 4;

    private final Section section;
    private final Notices notices;

    /** Rows that go into framing given as a piece, where the plan knows of studs too. */
    private final Map<Integer, Set<String>> idle = new LinkedHashMap<>();

    private Landings(Section section, Notices notices) {
        this.section = section;
        this.notices = notices;
    }

    /** One answer for each row that needs framing, on each stick of its piece where the framing is known. */
    public static List<Landing> of(Section section, List<Fixed> fixed, Optional<Job> job, Notices notices) {
        Landings landings = new Landings(section, notices);
        List<Landing> all = new ArrayList<>();
        job.ifPresent(known -> fixed.forEach(row -> all.addAll(landings.along(known, row))));
        landings.idle.forEach(landings::saidTwice);
        return List.copyOf(all);
    }

    /**
     * How far apart, in, the studs or joists stand that a row needs on every stick of its piece: set out so, each of its nails
     * lands. Absent where the row needs none, or they stand unevenly or otherwise on another stretch.
     */
    public static OptionalDouble every(Section section, Fixed fixed, Optional<Job> job) {
        Landings landings = new Landings(section, new Notices());
        List<Double> spaced = job.stream()
                .flatMap(known -> known.fits().stream()
                        .filter(fit -> fit.course().body() == fixed.piece() && !fit.selfReturn())
                        .flatMap(fit -> stretch(known, fit).stream()))
                .flatMap(stretch -> landings.needed(stretch.framing(), fixed).stream())
                .map(FramingRow::every)
                .distinct()
                .toList();
        return spaced.size() == 1 && spaced.get(0) > 0 ? OptionalDouble.of(spaced.get(0)) : OptionalDouble.empty();
    }

    /** The stretch that a stick lies on; absent for a return and over an opening. */
    private static Optional<Stretch> stretch(Job job, Fit fit) {
        int number = job.frames().get(fit.run()).indexOf(fit.frame());
        WallRun run = job.plan().runs().get(fit.run());
        return number < 0 || run.opening()
                ? Optional.empty()
                : Optional.of(run.stretches().get(number));
    }

    /** The studs or joists that a row has to meet; absent where it takes hold anywhere. */
    private Optional<FramingRow> needed(Framing framing, Fixed fixed) {
        if (doesWithout(fixed)) {
            return Optional.empty();
        }
        Optional<Point> wall = entry(fixed, "wall");
        if (wall.isPresent() && framing.studs().isPresent()) {
            return framing.studs()
                    .filter(studs -> !inPlate(studs, wall.get().y()))
                    .flatMap(Framing.Studs::row);
        }
        return framing.joists()
                .filter(joists -> !joists.along() && entry(fixed, "ceiling").isPresent())
                .map(Framing.Joists::row);
    }

    /** Framing at or behind the wall plane that is given as a piece, where the nail holds in it. */
    private Optional<Integer> framing(Fixed fixed) {
        return fixed.drive().crossings().stream()
                .filter(Crossing::holds)
                .flatMap(crossing -> crossing.body().stream().boxed())
                .filter(body -> section.body(body).framing()
                        && section.body(body).outline().box().face() <= Tolerance.TOUCHING)
                .findFirst();
    }

    private void saidTwice(int framing, Set<String> rows) {
        Notice twice = FramingNotices.SAID_TWICE
                .with("rows", Listing.names(List.copyOf(rows)))
                .with("go", rows.size() == 1 ? "goes" : "go")
                .with("them", rows.size() == 1 ? "it" : "them")
                .with("framing", section.name(framing));
        notices.add(section.body(framing)
                .placed()
                .map(placed -> twice.at(placed.piece().mark()).of(placed.name()))
                .orElse(twice));
    }

    private List<Landing> along(Job job, Fixed fixed) {
        List<Landing> all = new ArrayList<>();
        for (Fit fit : job.fits()) {
            WallRun run = job.plan().runs().get(fit.run());
            if (fit.course().body() == fixed.piece() && !fit.selfReturn()) {
                stretch(job, fit)
                        .flatMap(stretch -> landing(run, stretch, fit, fixed))
                        .ifPresent(all::add);
            }
        }
        return all;
    }

    private Optional<Landing> landing(WallRun run, Stretch stretch, Fit fit, Fixed fixed) {
        Optional<Point> wall = entry(fixed, "wall");
        Optional<Framing.Studs> studs = stretch.framing().studs();
        if (wall.isPresent() && studs.isPresent()) {
            Framing.Studs known = studs.get();
            if (known.row().isEmpty()) {
                return Optional.of(anywhere(run, fit, fixed, Into.MASONRY));
            }
            return Optional.of(
                    inPlate(known, wall.get().y())
                            ? anywhere(run, fit, fixed, Into.PLATE)
                            : on(
                                    run,
                                    stretch,
                                    fit,
                                    fixed,
                                    Into.STUDS,
                                    known.row().get()));
        }
        if (wall.isEmpty() && studs.isPresent()) {
            framing(fixed)
                    .ifPresent(body -> idle.computeIfAbsent(body, key -> new LinkedHashSet<>())
                            .add("'" + fixed.fastening().name() + "'"));
        }
        Optional<Point> ceiling = entry(fixed, "ceiling");
        Optional<Framing.Joists> joists = stretch.framing().joists();
        if (ceiling.isEmpty() || joists.isEmpty()) {
            return Optional.empty();
        }
        FramingRow row = joists.get().row();
        InJoist bite = InJoist.of(section, fixed);
        // a joist that is given as a piece counts toward what the row holds where it lands
        if (doesWithout(fixed) && fixed.drive().held().stream().noneMatch(section::overCeiling)) {
            return Optional.empty();
        }
        if (!joists.get().along()) {
            Landing landing = on(run, stretch, fit, fixed, Into.JOISTS, row);
            return Optional.of(bites(
                    landing.biting(landing.landed() > 0 ? bite.across() : 0),
                    more -> bite.longer(more).across()));
        }
        double out = ceiling.get().x();
        double joist = row.nearest(out, out + row.every() + row.width());
        double off = Math.abs(joist - out) - reach(row);
        return Optional.of(
                off <= Tolerance.COINCIDENT
                        ? bites(
                                anywhere(run, fit, fixed, Into.JOISTS)
                                        .biting(bite.along(joist - row.width() / 2, joist + row.width() / 2)),
                                more -> bite.longer(more).along(joist - row.width() / 2, joist + row.width() / 2))
                        : nowhere(run, fit, fixed, off, row));
    }

    /**
     * Whether a row holds by what it bites in pieces short of wall and ceiling, and its points spend too little beyond to be
     * meant for what stands there: then it needs no stud and no joist.
     */
    private boolean doesWithout(Fixed fixed) {
        double inPieces = 0;
        double inWall = 0;
        for (Grip grip : fixed.beyond()) {
            boolean piece = section.body(grip.body()).piece();
            inPieces += piece && !section.overCeiling(grip.body()) && grip.factor() > 0 ? grip.bite() : 0;
            inWall += piece ? 0 : grip.bite();
        }
        double inJoist = InJoist.of(section, fixed).across();
        double wanted = InJoist.wanted(fixed) - Tolerance.COINCIDENT;
        return inPieces >= wanted && Math.max(inWall, inJoist) < wanted;
    }

    /**
     * Says it where a row goes into the joists by less than the rule of thumb asks, and that matters.
     *
     * @param longer how far it would go in were it so much longer, in
     */
    private Landing bites(Landing landing, DoubleUnaryOperator longer) {
        double bite = landing.bite().orElse(0);
        double wanted = InJoist.wanted(landing.fixed());
        boolean shallow = landing.landed() > 0 && bite < wanted - Tolerance.COINCIDENT;
        if (shallow && !doesWithout(landing.fixed())) {
            notices.add(FramingNotices.SHORT_IN_JOISTS
                    .with("row", landing.fixed().fastening().name())
                    .with("stretch", landing.stretch())
                    .with("bite", Figure.atMost(bite))
                    .with("wanted", Figure.atLeast(wanted))
                    .at(landing.fixed().fastening().mark())
                    .of(section.name(landing.fixed().piece()))
                    .amount(Figure.length(wanted - bite))
                    .cure(LandingCures.deeper(
                            section,
                            landing.fixed(),
                            more -> longer.applyAsDouble(more) >= wanted - Tolerance.COINCIDENT)));
        }
        return landing;
    }

    /**
     * Where the nail enters wall or ceiling, in the middle of what it spends there; absent when it never does. A joist that
     * is given as a piece lies over the ceiling, and the plan says where along the run there is one.
     */
    private Optional<Point> entry(Fixed fixed, String name) {
        return entry(section, fixed, name);
    }

    static Optional<Point> entry(Section section, Fixed fixed, String name) {
        for (Crossing crossing : fixed.drive().crossings()) {
            if (crossing.body().isPresent()) {
                int body = crossing.body().getAsInt();
                boolean room = !section.body(body).piece() && section.name(body).equals(name);
                boolean joist = name.equals("ceiling") && section.overCeiling(body) && crossing.holds();
                boolean bites = name.equals("ceiling") || crossing.holds();
                if (joist || (room && bites)) {
                    return Optional.of(fixed.drive().at((crossing.from() + crossing.to()) / 2));
                }
            }
        }
        return Optional.empty();
    }

    private boolean inPlate(Framing.Studs studs, double height) {
        Space space = section.stack().space();
        boolean top =
                space.ceiling().isPresent() && height >= space.ceiling().getAsDouble() - studs.topPlate() + FROM_EDGE;
        boolean bottom =
                space.floor().isPresent() && height <= space.floor().getAsDouble() + studs.bottomPlate() - FROM_EDGE;
        return top || bottom;
    }

    /** So far from the middle of a stud or joist a nail may stand and still be in it, in. */
    static double reach(FramingRow row) {
        return Math.max(0, row.width() / 2 - FROM_EDGE);
    }

    private Landing anywhere(WallRun run, Fit fit, Fixed fixed, Into into) {
        double first = fixed.fastening().first();
        RowPlaces stick = RowPlaces.of(fit, fixed);
        List<Double> places = stick.anywhere();
        Layout as = new Layout(first, stick.spacing(places), 0);
        return new Landing(
                run.name(),
                fit.stretch(),
                fixed,
                into,
                first > 0,
                first,
                places,
                List.of(),
                0,
                stick.without(places),
                OptionalDouble.empty(),
                as);
    }

    /** Along joists that run along the wall, and none of them where the nail goes. */
    private Landing nowhere(WallRun run, Fit fit, Fixed fixed, double off, FramingRow row) {
        double first = fixed.fastening().first();
        RowPlaces stick = RowPlaces.of(fit, fixed);
        List<Double> places = stick.anywhere();
        if (!doesWithout(fixed)) {
            notices.add(FramingNotices.BETWEEN_JOISTS
                    .with("row", fixed.fastening().name())
                    .with("stretch", fit.stretch())
                    .cure(LandingCures.beside(section, fixed, row))
                    .at(fixed.fastening().mark())
                    .of(section.name(fixed.piece()))
                    .amount(Figure.length(off)));
        }
        return new Landing(
                run.name(),
                fit.stretch(),
                fixed,
                Into.JOISTS,
                first > 0,
                first,
                places,
                places,
                off,
                stick.without(List.of()),
                OptionalDouble.of(0),
                new Layout(first, stick.spacing(places), places.size()));
    }

    private Landing on(WallRun run, Stretch stretch, Fit fit, Fixed fixed, Into into, FramingRow row) {
        double spacing = fixed.fastening().spacing();
        boolean set = fixed.fastening().first() > 0;
        RowPlaces stick = RowPlaces.of(fit, fixed);
        Optional<Layout> own = layout(stick, stretch, row, spacing);
        double first = set ? fixed.fastening().first() : own.map(Layout::first).orElse(0.0);
        List<Double> places = first > 0 ? stick.from(first, spacing) : stick.anywhere();
        Layout best =
                best(own, layout(stick, stretch, row, row.every())).orElse(new Layout(first, spacing, places.size()));
        List<Double> misses = misses(places, row, stretch);
        double off = misses.stream()
                .mapToDouble(place -> Math.abs(row.nearest(place, stretch.length()) - place) - reach(row))
                .max()
                .orElse(0);
        List<Double> landed =
                places.stream().filter(place -> !misses.contains(place)).toList();
        Landing landing = new Landing(
                run.name(),
                fit.stretch(),
                fixed,
                into,
                set,
                first,
                places,
                misses,
                off,
                stick.without(landed),
                OptionalDouble.empty(),
                best);
        if (!misses.isEmpty() && !doesWithout(fixed)) {
            say(landing);
        }
        return landing;
    }

    private static List<Double> misses(List<Double> places, FramingRow row, Stretch stretch) {
        return places.stream()
                .filter(place ->
                        Math.abs(row.nearest(place, stretch.length()) - place) > reach(row) + Tolerance.COINCIDENT)
                .toList();
    }

    /**
     * The row set out at a spacing and begun where most of it lands: in the middle of a stud, or as near to the edges of one as
     * it may where that makes fewer miss. Absent where no beginning lands any, or no spacing is known.
     */
    private static Optional<Layout> layout(RowPlaces stick, Stretch stretch, FramingRow row, double spacing) {
        if (spacing <= 0) {
            return Optional.empty();
        }
        Optional<Layout> middle = layout(stick, stretch, row, beginnings(row, stretch, spacing, List.of(0.0)), spacing);
        List<Double> asides = List.of(-reach(row), reach(row));
        return middle.filter(one -> one.misses() == 0)
                .or(() -> layout(stick, stretch, row, beginnings(row, stretch, spacing, asides), spacing)
                        .filter(edge -> middle.filter(one -> one.misses() <= edge.misses())
                                .isEmpty()))
                .or(() -> middle);
    }

    private static Optional<Layout> layout(
            RowPlaces stick, Stretch stretch, FramingRow row, List<Double> beginnings, double spacing) {
        Optional<Layout> best = Optional.empty();
        int most = 0;
        for (double first : beginnings) {
            List<Double> places = stick.from(first, spacing);
            int misses = misses(places, row, stretch).size();
            int lands = places.size() - misses;
            boolean fewer = best.filter(one -> misses < one.misses()).isPresent();
            if (lands > most || (lands == most && fewer)) {
                best = Optional.of(new Layout(first, spacing, misses));
                most = lands;
            }
        }
        return best;
    }

    /** Where a row may begin so that one of it stands so far aside from the middle of a stud, in; each once. */
    private static List<Double> beginnings(FramingRow row, Stretch stretch, double spacing, List<Double> asides) {
        List<Double> all = new ArrayList<>();
        for (double aside : asides) {
            for (double middle : row.upTo(stretch.length())) {
                double place = middle + aside;
                double before = place - Math.floor(place / spacing + Tolerance.COINCIDENT) * spacing;
                double first = before > Tolerance.COINCIDENT ? before : spacing;
                if (all.stream().noneMatch(known -> Math.abs(known - first) <= Tolerance.COINCIDENT)) {
                    all.add(first);
                }
            }
        }
        return all;
    }

    /** At its own spacing, unless fewer miss at that of the framing. */
    private static Optional<Layout> best(Optional<Layout> own, Optional<Layout> framed) {
        return own.isEmpty()
                        || framed.filter(other -> other.misses() < own.get().misses())
                                .isPresent()
                ? framed
                : own;
    }

    private void say(Landing landing) {
        List<Figure> named =
                landing.misses().stream().limit(MOST_NAMED).map(Figure::length).toList();
        notices.add(FramingNotices.MISSES
                .with("row", landing.fixed().fastening().name())
                .with("stretch", landing.stretch())
                .with("misses", Figure.count(landing.misses().size()))
                .with("of", Figure.count(landing.places().size()))
                .with("framing", landing.into().word())
                .with("places", Listing.and(named))
                .with("more", landing.misses().size() > named.size() ? ", .." : "")
                .at(landing.fixed().fastening().mark())
                .of(section.name(landing.fixed().piece()))
                .amount(Figure.length(landing.off()))
                .cure(LandingCures.of(landing)));
    }
}
