package buildup.engine.hold.order;

import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Job;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Reveal;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** The order of putting up, as sheets. */
public final class OrderSheets {
    /**
     * What one person lifts at best, lb: the load constant of the Revised NIOSH Lifting Equation (Waters, Putz-Anderson,
     * Garg, Applications Manual, DHHS (NIOSH) 94-110, 1994), 23 kg; from memory. Overhead it is much less.
     */
    private static final double ONE_LIFTS = 51;

    /** Two people with the load held close, at best, lb. */
    private static final double TWO_LIFT = 2 * ONE_LIFTS;

    private static final double FOOT = 12;

    private final Section section;
    private final PuttingUp order;
    private final Optional<Job> job;

    private OrderSheets(Section section, PuttingUp order, Optional<Job> job) {
        this.section = section;
        this.order = order;
        this.job = job;
    }

    /**
     * All of them, in the order of a report.
     *
     * @param job tells how long the sticks are; absent while there is no plan
     */
    public static List<Sheet> of(Section section, PuttingUp order, Optional<Job> job) {
        OrderSheets sheets = new OrderSheets(section, order, job);
        return List.of(
                sheets.answer(), sheets.steps(), sheets.instead(), sheets.nails(), sheets.units(), sheets.cautions());
    }

    private List<String> names(List<Integer> bodies) {
        return bodies.stream().map(section::name).toList();
    }

    private List<String> unitNames() {
        return order.instead().orElse(List.of()).stream()
                .map(unit -> unit.name(section))
                .toList();
    }

    private Sheet answer() {
        return Sheet.single("order", "CAN IT BE PUT UP IN THIS ORDER?", order)
                .flag("possible", "in this order", PuttingUp::possible)
                .names("instead", "an order that goes", ignored -> unitNames())
                .names("bench", "join on the bench first", answer -> names(answer.join()))
                .silent()
                .sheet();
    }

    /** The same order for people, a line a step. */
    private Sheet instead() {
        List<Unit> units = order.instead().orElse(List.of());
        List<Integer> rows = IntStream.range(0, units.size()).boxed().toList();
        return Sheet.of(
                        "order.other",
                        order.propped()
                                ? "AN ORDER THAT GOES, with a prop under what has nothing to rest on yet"
                                : order.proved()
                                        ? "AN ORDER THAT GOES, the nearest to the one given"
                                        : "AN ORDER THAT GOES; a nearer one was not ruled out",
                        rows)
                .count("step", "step", row -> row + 1)
                .name("unit", "put up", row -> units.get(row).name(section))
                .people()
                .sheet();
    }

    private record Numbered(int number, PutUp step) {}

    private Sheet steps() {
        List<Numbered> rows = IntStream.range(0, order.steps().size())
                .mapToObj(i -> new Numbered(i + 1, order.steps().get(i)))
                .toList();
        return Sheet.of("order.steps", "SEQUENCE", rows)
                .count("step", "step", Numbered::number)
                .name("unit", "put up", row -> row.step().unit().name(section))
                .names("pieces", "pieces", row -> names(row.step().unit().bodies()))
                .json()
                .many("way", "way", move(), row -> moves(row.step()))
                .json()
                .saying("how", "comes", row -> how(row.step()))
                .wordsIf(
                        "axis",
                        "axis",
                        row -> row.step().needs().isPresent()
                                ? row.step().way().map(way -> way.axis().name().toLowerCase(Locale.ROOT))
                                : Optional.empty())
                .json()
                .lengthIf("needs", "needs", row -> row.step().needs())
                .json()
                .lengthIf("has", "has", row -> row.step().has())
                .json()
                .names("blockedBy", "blocked by", row -> names(row.step().blockedBy()))
                .json()
                .sayingIf(
                        "hold",
                        "hold with",
                        row -> order.driving().isEmpty() ? Optional.empty() : Optional.of(holds(row.number() - 1)))
                .length("top", "top", row -> top(row.step().unit()))
                .lengthIf(
                        "overFloor",
                        "top over the floor",
                        row -> overFloor(row.step().unit()))
                .saying("shows", "shows", row -> shows(row.step().unit()))
                .table("SEQUENCE: put up in this order, each piece held before the next", "step", "unit", "how", "hold")
                .table(
                        "CHECK before going on: where its top is, what it shows beside what stands",
                        "step",
                        "unit",
                        "top",
                        "overFloor",
                        "shows")
                .sheet();
    }

    private static Columns<Point> move() {
        return Columns.<Point>inner().length("dx", "out", Point::x).length("dy", "up", Point::y);
    }

    private static List<Point> moves(PutUp step) {
        return step.way().map(WayIn::moves).orElse(List.of());
    }

    /** How a unit comes to its place, and the room on its way. */
    public static Phrase how(PutUp step) {
        if (step.way().isEmpty()) {
            return Phrase.of("no way in");
        }
        WayIn way = step.way().get();
        Phrase words = Phrase.plain(words(way));
        if (way.isStraight()) {
            return words;
        }
        Phrase far = Phrase.of("{words} {needs}").with("words", words).with("needs", Figure.atLeast(way.shift()));
        return step.has().isPresent()
                ? Phrase.of(step.goes() ? "{way}; there is room for {has}" : "{way}, but there is room for {has} only")
                        .with("way", far)
                        .with("has", Figure.atMost(step.has().getAsDouble()))
                : far;
    }

    /** The way in, as it is walked. */
    private static String words(WayIn way) {
        String in = way.then() == 0 ? "in from the room" : way.then() == 90 ? "down from above" : "up from below";
        if (way.isStraight()) {
            return in;
        }
        double first = way.first();
        String last = first == 90
                ? "down"
                : first == 270 ? "up" : first == 180 ? "out" : first == 0 ? "back" : "along its slope";
        return in + ", then " + last;
    }

    /** Rows of nails and screws driven in this step; glue and clamps where there are none. */
    private Phrase holds(int step) {
        List<Phrase> now = order.driving().stream()
                .filter(row -> row.step() == step && !row.bench())
                .map(this::nail)
                .toList();
        return now.isEmpty()
                ? Phrase.of("no fastening given: glue and clamp")
                : Phrase.of("{nails}").with("nails", Listing.commas(now));
    }

    private Phrase nail(Driving row) {
        return Phrase.of("{name}").with("name", row.fixed().fastening().name());
    }

    private double top(Unit unit) {
        return unit.bodies().stream()
                .mapToDouble(body -> section.body(body).outline().box().top())
                .max()
                .orElseThrow();
    }

    private OptionalDouble overFloor(Unit unit) {
        OptionalDouble floor = section.stack().space().floor();
        return floor.isPresent() ? OptionalDouble.of(top(unit) - floor.getAsDouble()) : floor;
    }

    /** The set-backs that a rule can be laid to; a longer one is a face. */
    private Phrase shows(Unit unit) {
        List<Phrase> said = new ArrayList<>();
        for (Reveal reveal : section.reveals()) {
            if (unit.bodies().contains(later(reveal)) && reveal.compares()) {
                said.add(Phrase.of("{amount} of {piece} past {over}")
                        .with("piece", section.name(reveal.piece()))
                        .with("amount", Figure.length(reveal.amount()))
                        .with("over", section.name(reveal.over())));
            }
        }
        return Phrase.of("{all}").with("all", Listing.commas(said));
    }

    private static int later(Reveal reveal) {
        return Math.max(reveal.piece(), reveal.over());
    }

    private Sheet nails() {
        return Sheet.of("order.nails", "WHEN EACH ROW IS DRIVEN", order.driving())
                .name("fastening", "row", row -> row.fixed().fastening().name())
                .words("piece", "through", row -> section.name(row.fixed().piece()))
                .count("step", "in step", row -> row.step() + 1)
                .flagIf("onBench", "on the bench", row -> row.bench() ? Optional.of(true) : Optional.empty())
                .wordsIf("before", "before it is covered by", row -> name(row.before()))
                .wordsIf("hiddenBy", "hidden in its unit by", row -> name(row.hiddenBy()))
                .sheet();
    }

    private Optional<String> name(OptionalInt body) {
        return body.isPresent() ? Optional.of(section.name(body.getAsInt())) : Optional.empty();
    }

    private Sheet units() {
        List<PutUp> joined = order.steps().stream()
                .filter(step -> step.unit().bench().isPresent())
                .toList();
        return Sheet.of("order.units", "BENCH UNITS: joined first, put up as one", joined)
                .name("unit", "unit", step -> step.unit().name(section))
                .names("pieces", "pieces", step -> names(step.unit().bodies()))
                .measure("weightPerFoot", "weight a foot", Quantity.LINE_WEIGHT, step -> weight(step.unit()))
                .lengthIf("longest", "longest stick", step -> longest(step.unit()))
                .measureIf(
                        "weight",
                        "weighs",
                        Quantity.FORCE,
                        Rounding.UP,
                        step -> times(longest(step.unit()), weight(step.unit()) / FOOT))
                .length("twoLift", "longest that two people lift", step -> TWO_LIFT / weight(step.unit()) * FOOT)
                .sheet();
    }

    private double weight(Unit unit) {
        return unit.bodies().stream()
                .mapToDouble(body -> Composer.weightPerFoot(section.body(body)))
                .sum();
    }

    private static OptionalDouble times(OptionalDouble length, double weight) {
        return length.isPresent() ? OptionalDouble.of(length.getAsDouble() * weight) : length;
    }

    private OptionalDouble longest(Unit unit) {
        return job.stream()
                .flatMap(found -> found.fits().stream())
                .filter(fit -> unit.bodies().contains(fit.course().body()))
                .mapToDouble(Fit::faceLength)
                .max();
    }

    private Sheet cautions() {
        List<Phrase> said = new ArrayList<>();
        said.add(
                Phrase.of("Ways are looked at in the plane of the section: straight, or with one bend. A piece that has"
                        + " none may still slide in from an open end, or be tipped in."));
        said.add(Phrase.of(
                        "Work overhead and lifting: two people, a firm platform, eye protection; nobody stands under a"
                                + " piece that is not fastened. What two people lift at best is {weight} with the load"
                                + " held close; overhead it is much less.")
                .with("weight", Figure.of(Quantity.WEIGHT, TWO_LIFT).rounded(Rounding.decimals(0))));
        return Sheet.of("order.cautions", "CAUTIONS FOR THE SEQUENCE", said)
                .saying("caution", "caution", phrase -> phrase)
                .people()
                .sheet();
    }
}
