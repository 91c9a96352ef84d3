package buildup.engine.hold.support;

import buildup.engine.hold.statics.FirstToGive;
import buildup.engine.hold.statics.Load;
import buildup.engine.hold.support.Support.Whole;
import buildup.engine.section.compose.Section;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Cell;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** What holds a stack, as sheets. */
public final class SupportSheets {
    /** A longer way down is told to here, and then as the way of the piece that it has come to. */
    private static final int LONGEST_WAY = 5;

    private static final int TOLD = 2;

    private final Section section;
    private final Support support;
    private final List<Pull> pulls;

    private SupportSheets(Section section, Support support, List<Pull> pulls) {
        this.section = section;
        this.support = support;
        this.pulls = pulls;
    }

    /** All of them, in the order of a report. */
    public static List<Sheet> of(Section section, Support support, List<Pull> pulls) {
        SupportSheets sheets = new SupportSheets(section, support, pulls);
        return List.of(
                sheets.loads(),
                sheets.balances(),
                sheets.path(),
                sheets.pulls(),
                sheets.falls(),
                sheets.proposed(),
                sheets.trust(),
                sheets.whole(),
                sheets.told());
    }

    private List<String> names(List<Integer> bodies) {
        return bodies.stream().map(section::name).toList();
    }

    private Optional<String> name(OptionalInt body) {
        return body.isPresent() ? Optional.of(section.name(body.getAsInt())) : Optional.empty();
    }

    private Sheet loads() {
        return Sheet.of("support.loads", "LOADS, straight down", support.loads())
                .name("name", "load", Load::name)
                .words("on", "on", load -> section.name(load.body()))
                .length("out", "out", Load::out)
                .measure("poundsPerFoot", "load", Quantity.LINE_FORCE, Load::poundsPerFoot)
                .sheet();
    }

    private Sheet balances() {
        return Sheet.of(
                        "support.balances",
                        "BEARING: where the weight falls on the level bearing below; loads counted",
                        support.balances())
                .name("piece", "piece", balance -> section.name(balance.piece()))
                .saying("with", "with", this::with)
                .names("carriers", "on", balance -> names(balance.carriers()))
                .names("group", "group", balance -> names(balance.group()))
                .json()
                .length("bearing", "bearing", Balance::bearing)
                .json()
                .length("bearingFrom", "from", Balance::bearingBack)
                .length("bearingTo", "to", Balance::bearingFace)
                .measure("all", "weighs", Quantity.LINE_FORCE, balance -> balance.weight() + balance.load())
                .text()
                .measure("weight", "weight", Quantity.LINE_WEIGHT, Balance::weight)
                .json()
                .length("resultant", "resultant", Balance::resultant)
                .json()
                .measure("load", "load", Quantity.LINE_FORCE, Balance::load)
                .json()
                .length("loaded", "resultant at", Balance::loaded)
                .length("margin", "inside by", Balance::margin)
                .json()
                .length("middleThirdMargin", "inside the middle third by", Balance::middleThirdMargin)
                .json()
                .measure("overturning", "overturning", Quantity.LINE_MOMENT, Balance::overturning)
                .json()
                .measureIf("holdBack", "hold back", Quantity.LINE_FORCE, Rounding.NEAREST, Balance::holdBack)
                .json()
                .emptyIsNone()
                .lengthIf(
                        "holdBackAt",
                        "hold back at",
                        balance -> where(balance.holdBack(), balance.holdAt().y()))
                .json()
                .measureIf("holdDown", "hold down", Quantity.LINE_FORCE, Rounding.NEAREST, Balance::holdDown)
                .json()
                .emptyIsNone()
                .lengthIf(
                        "holdDownAt",
                        "hold down at",
                        balance -> where(balance.holdDown(), balance.downAt().x()))
                .json()
                .words("keptBy", "kept by", balance -> balance.kept().by().word())
                .json()
                .measureIf(
                        "times",
                        "times",
                        Quantity.TIMES,
                        Rounding.TIMES,
                        balance -> balance.kept().times())
                .json()
                .standsFor(balance -> endless(balance.stands()))
                .wordsIf(
                        "governs",
                        "governs",
                        balance -> balance.kept().governs().map(FirstToGive::name))
                .json()
                .wordsIf(
                        "mode",
                        "by",
                        balance -> balance.kept()
                                .governs()
                                .map(governs -> governs.mode().word()))
                .json()
                .saying("so", "result", BalanceWords::so)
                .alone()
                .sheet();
    }

    private static OptionalDouble where(OptionalDouble force, double place) {
        return force.isPresent() ? OptionalDouble.of(place) : OptionalDouble.empty();
    }

    private Phrase with(Balance balance) {
        int more = balance.group().size() - 1;
        return more == 0 ? Phrase.of("") : Phrase.of("{more} more").with("more", Figure.count(more));
    }

    private Sheet path() {
        List<Integer> pieces = section.standing().stream()
                .map(standing -> standing.body())
                .filter(body -> section.body(body).inStack())
                .toList();
        return Sheet.of("support.path", "LOAD PATH", pieces)
                .name("piece", "piece", section::name)
                .words("way", "carried by, down to the ground", this::way)
                .words("breaks", "", body -> support.path().reachesGround(body) ? "" : "breaks")
                .people()
                .sheet();
    }

    private String way(int body) {
        List<String> steps = new ArrayList<>();
        Set<Integer> seen = new LinkedHashSet<>(Set.of(body));
        List<Integer> on = support.path().restsOn(body);
        while (!on.isEmpty()) {
            steps.add(String.join(" and ", names(on)));
            List<Integer> next = new ArrayList<>();
            for (int below : on) {
                if (seen.add(below)) {
                    support.path().restsOn(below).stream()
                            .filter(one -> !next.contains(one))
                            .forEach(next::add);
                }
            }
            on = next;
        }
        if (steps.size() <= LONGEST_WAY) {
            return String.join(", ", steps);
        }
        return String.join(", ", steps.subList(0, TOLD)) + ", and on as for " + steps.get(TOLD - 1);
    }

    private Sheet pulls() {
        return Sheet.of(
                        "support.pulls",
                        "FASTENINGS AGAINST LEANING: what each would have to hold by itself, and what it may",
                        pulls)
                .name("piece", "piece", pull -> section.name(pull.balance().piece()))
                .names("carriers", "on", pull -> names(pull.balance().carriers()))
                .name("fastening", "held by", pull -> pull.fixed().fastening().name())
                .measure("needed", "needs", Quantity.LINE_FORCE, Pull::needed)
                .measure("allowable", "may hold", Quantity.LINE_FORCE, Pull::allowable)
                .length("bite", "bite", Pull::bite)
                .fine("biteNeeded", "bite needed", Pull::biteNeeded)
                .sheet();
    }

    private Sheet falls() {
        return fallColumns(Sheet.of("support.falls", "WHAT FALLS, and how far until what stops it", parts()))
                .people()
                .sheet();
    }

    private List<Fall.Part> parts() {
        return support.whole().falls().stream()
                .flatMap(fall -> fall.parts().stream())
                .toList();
    }

    private <T extends Columns<Fall.Part>> Columns<Fall.Part> fallColumns(T columns) {
        return columns.names("pieces", "pieces", part -> names(part.pieces()))
                .words("way", "it", part -> part.way().words())
                .wordsIf("on", "over the edge of", part -> name(part.on()))
                .placeIf("at", "at", part -> part.about().map(at -> new Cell.Place(at.x(), at.y())))
                .lengthIf("travel", "by", part -> travel(part.stop()))
                .standsFor(part -> endless(true))
                .noneWithoutRow()
                .wordsIf("until", "until it meets", part -> part.stop().map(stop -> section.name(stop.by())))
                .measureIf(
                        "degrees",
                        "turned",
                        Quantity.ANGLE,
                        Rounding.decimals(0),
                        part -> part.way().turns() ? degrees(part.stop()) : OptionalDouble.empty())
                .standsFor(part -> part.way().turns() ? endless(true) : OptionalDouble.of(0))
                .noneWithoutRow();
    }

    /** No number bounds what that is so of; of any other nothing is known. */
    private static OptionalDouble endless(boolean so) {
        return so ? OptionalDouble.of(Double.POSITIVE_INFINITY) : OptionalDouble.empty();
    }

    private static OptionalDouble travel(Optional<Fall.Stop> stop) {
        return stop.map(one -> OptionalDouble.of(one.travel())).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble degrees(Optional<Fall.Stop> stop) {
        return stop.map(one -> OptionalDouble.of(one.degrees())).orElse(OptionalDouble.empty());
    }

    private Sheet trust() {
        return Sheet.of("support.trust", "ASSUMPTIONS: what the answer rests on that was not given", support.trust())
                .name("piece", "piece", trust -> section.name(trust.piece()))
                .wordsIf("on", "taken to be held to", trust -> name(trust.on()))
                .words("why", "since", trust -> trust.why().words())
                .sheet();
    }

    private Sheet whole() {
        return Sheet.single("support.whole", "STABILITY OF THE WHOLE STACK", support.whole())
                .words("answer", "it", whole -> whole.answer().word())
                .flag("stands", "stands", Whole::stands)
                .measureIf("factor", "factor", Quantity.TIMES, Rounding.TIMES, Whole::factor)
                .standsFor(whole -> endless(whole.stands()))
                .measureIf("loadFactor", "load factor", Quantity.TIMES, Rounding.TIMES, Whole::loadFactor)
                .standsFor(whole -> endless(whole.stands() && !support.loads().isEmpty()))
                .measureIf("times", "all may grow", Quantity.TIMES, Rounding.TIMES, Whole::times)
                .standsFor(whole -> endless(whole.stands()))
                .wordsIf("governs", "governs", whole -> whole.governs().map(FirstToGive::name))
                .wordsIf(
                        "mode",
                        "by",
                        whole -> whole.governs().map(governs -> governs.mode().word()))
                .measureIf("friction", "friction", Quantity.TIMES, Rounding.decimals(2), whole -> support.friction())
                .many(
                        "motion",
                        "motion",
                        fallColumns(Columns.inner()),
                        whole -> whole.closing().map(Fall::parts).orElse(parts()))
                .silent()
                .sheet();
    }

    /** The same in sentences. */
    private Sheet told() {
        List<Phrase> said = new ArrayList<>(List.of(WholeWords.of(section, support)));
        said.add(
                support.friction().isPresent()
                        ? Phrase.of("Contacts rub with the coefficient {friction}, as the document asks.")
                                .with(
                                        "friction",
                                        Figure.of(
                                                        Quantity.TIMES,
                                                        support.friction().getAsDouble())
                                                .rounded(Rounding.decimals(2)))
                        : Phrase.of(
                                "Contacts do not rub: friction is counted only where the document gives a coefficient."));
        said.add(Phrase.of(Support.LEFT_OUT));
        return Sheet.of(
                        "support.told",
                        "STABILITY: every piece rigid, contacts that only push, fastenings at their limits",
                        said)
                .saying("verdict", "verdict", phrase -> phrase)
                .people()
                .sheet();
    }

    private Sheet proposed() {
        return Sheet.of(
                        "support.proposed",
                        "THE LEAST ROW OF FASTENINGS THAT MAKES IT STAND, tried",
                        support.cured() ? support.proposed() : List.of())
                .name("piece", "piece", row -> section.name(row.nail().piece()))
                .saying("use", "use", row -> row.nail().fastening().use().phrase())
                .both()
                .length("out", "out", row -> row.nail().head().x())
                .length("up", "up", row -> row.nail().head().y())
                .measure(
                        "angle",
                        "tilt",
                        Quantity.ANGLE,
                        Rounding.decimals(0),
                        row -> row.nail().fastening().angle())
                .measure("spacing", "every", Quantity.LENGTH, Rounding.DOWN, LeastRow::spacing)
                .measure("needsPerFoot", "needs a foot", Quantity.RATIO, Rounding.decimals(2), LeastRow::needed)
                .json()
                .measure("pull", "may pull", Quantity.LINE_FORCE, LeastRow::pull)
                .measure("across", "across", Quantity.LINE_FORCE, LeastRow::across)
                .wordsIf("instead", "in place of", LeastRow::instead)
                .offered()
                .sheet();
    }
}
