package buildup.engine.hold.fixing;

import buildup.engine.hold.nail.Check;
import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Factor;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Grip;
import buildup.engine.hold.nail.Hiding;
import buildup.engine.hold.nail.Joint;
import buildup.engine.hold.nail.Proposal;
import buildup.engine.hold.nail.Spacings;
import buildup.engine.hold.nail.Strength;
import buildup.engine.section.compose.Section;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.figure.Value;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The nails and screws of a stack, and where some could go, as sheets. */
public final class FixingSheets {
    private final Section section;
    private final List<Fixed> fixed;
    private final List<Proposal> proposals;

    private FixingSheets(Section section, List<Fixed> fixed, List<Proposal> proposals) {
        this.section = section;
        this.fixed = fixed;
        this.proposals = proposals;
    }

    /** All of them, in the order of a report. */
    public static List<Sheet> of(Section section, List<Fixed> fixed, List<Proposal> proposals) {
        FixingSheets sheets = new FixingSheets(section, fixed, proposals);
        return List.of(sheets.nails(), sheets.proposals(), sheets.firsts(), sheets.formulas());
    }

    private Sheet nails() {
        return driven(Sheet.of("nails", "NAILS AND SCREWS", fixed))
                .table(
                        "NAILS AND SCREWS: what each goes through; edge: least wood beside it",
                        "name",
                        "piece",
                        "use",
                        "up",
                        "bites",
                        "edge",
                        "hidden",
                        "tool")
                .tableOfEach(
                        "joints",
                        "WHAT NAILS MAY HOLD; test: what came out in tests; other: what another publication gives",
                        "name",
                        "joints.holds",
                        "joints.gravity",
                        "joints.withdrawal",
                        "joints.head",
                        "joints.pullPerFoot",
                        "joints.test",
                        "joints.otherTest",
                        "joints.lateral",
                        "joints.otherLateral")
                .tableOfEach(
                        "factors",
                        "REDUCTIONS of these figures, and the clause for each",
                        "name",
                        "factors.in",
                        "factors.factor",
                        "factors.why",
                        "factors.source")
                .tableWhere(List.of("wants"), "RULES NOT MET", "name", "wants")
                .sheet();
    }

    private Sheet proposals() {
        return Sheet.of("proposals", "WHERE A NAIL COULD GO", proposals)
                .name("name", "nail", proposal -> proposal.fixed().fastening().name())
                .words(
                        "piece",
                        "piece",
                        proposal -> section.name(proposal.fixed().piece()))
                .saying(
                        "use",
                        "use",
                        proposal -> proposal.fixed().fastening().use().phrase())
                .both()
                .place(
                        "head",
                        "head",
                        proposal -> proposal.fixed().head().x(),
                        proposal -> proposal.fixed().head().y())
                .place(
                        "point",
                        "point",
                        proposal -> proposal.fixed().point().x(),
                        proposal -> proposal.fixed().point().y())
                .length("spent", "spent", proposal -> proposal.fixed().spent())
                .length("bite", "bite", proposal -> proposal.fixed().bite())
                .measure(
                        "allowable",
                        "pull",
                        Quantity.FORCE,
                        proposal -> proposal.fixed().allowable())
                .flag("holds", "holds", proposal -> proposal.fixed().holds())
                .flag("reach", "tool fits", proposal -> proposal.fixed().reach().free())
                .saying("reason", "why there", Proposal::reason)
                .both()
                .offered()
                .silent()
                .sheet();
    }

    private Columns<Fixed> driven(Columns<Fixed> columns) {
        return columns.name("name", "nail", nail -> nail.fastening().name())
                .name("piece", "piece", nail -> section.name(nail.piece()))
                .saying("use", "use", nail -> nail.fastening().use().phrase())
                .both()
                .length("out", "at out", nail -> nail.head().x())
                .text()
                .length("up", "at up", nail -> nail.head().y())
                .text()
                .place(
                        "head",
                        "head",
                        nail -> nail.head().x(),
                        nail -> nail.head().y())
                .json()
                .place(
                        "point",
                        "point",
                        nail -> nail.point().x(),
                        nail -> nail.point().y())
                .json()
                .length("spent", "spent", Fixed::spent)
                .json()
                .length("bite", "bite", Fixed::bite)
                .measure("design", "design", Quantity.FORCE, Fixed::design)
                .json()
                .measure("test", "test", Quantity.FORCE, Fixed::test)
                .json()
                .measure("allowable", "pull", Quantity.FORCE, Fixed::allowable)
                .lengthIf("edge", "edge", Fixed::edge)
                .flag("holds", "holds", Fixed::holds)
                .flag("reach", "tool fits", nail -> nail.reach().free())
                .json()
                .saying("bites", "bite in", this::bites)
                .words("hidden", "head", nail -> hidden(nail.hiding()))
                .text()
                .words("tool", "tool", this::tool)
                .text()
                .sayingIf("wants", "wants", FixingSheets::wants)
                .many(
                        "crossings",
                        "goes through",
                        crossings(),
                        nail -> nail.drive().crossings())
                .json()
                .adds()
                .many("grips", "grips", grips(), Fixed::grips)
                .json()
                .adds()
                .many("joints", "holds", joints(), FixingSheets::held)
                .json()
                .many("factors", "reduced by", factors(), this::reduced)
                .json()
                .many("checks", "rules", checks(), Fixed::checks)
                .json();
    }

    /** Every rule for the length and the place of a nail, also those that it is not judged by. */
    private static Columns<Check> checks() {
        return Columns.<Check>inner()
                .saying("rule", "rule", check -> check.rule().words())
                .length("has", "has", Check::has)
                .length("needs", "needs", Check::needs)
                .flag("met", "met", Check::met)
                .words("from", "from", check -> check.rule().source());
    }

    private Phrase bites(Fixed nail) {
        List<Value> bites = nail.beyond().stream()
                .<Value>map(grip -> Phrase.of("{in} {bite}")
                        .with("in", section.name(grip.body()))
                        .with("bite", Figure.length(grip.bite())))
                .toList();
        return bites.isEmpty() ? Phrase.of("nothing") : Phrase.of("{all}").with("all", Listing.commas(bites));
    }

    private String hidden(Hiding hiding) {
        return switch (hiding.grade()) {
            case COVERED -> "under " + section.name(hiding.coveredBy().orElseThrow());
            case BEHIND -> "behind";
            case QUIRK -> "in a quirk";
            case UNSEEN -> "out of sight";
            case SHADOW -> "in shadow";
            case SHOWS -> "shows";
        };
    }

    private String tool(Fixed nail) {
        return nail.reach().inTheWay().isPresent()
                ? section.name(nail.reach().inTheWay().getAsInt()) + " is in its way"
                : nail.reach().tool().isPresent() ? "fits" : "not looked at";
    }

    /** The rules that decide whether it holds, where they are not met; all of them stand as figures in JSON. */
    private static Optional<Phrase> wants(Fixed nail) {
        List<Value> wants = nail.checks().stream()
                .filter(check -> !check.met() && nail.decides(check))
                .<Value>map(check -> Phrase.of("{rule}: {needs}, has {has}")
                        .with("rule", check.rule().words())
                        .with("needs", Figure.fine(check.needs()))
                        .with("has", Figure.fine(check.has())))
                .toList();
        return wants.isEmpty()
                ? Optional.empty()
                : Optional.of(Phrase.of("{all}").with("all", Listing.commas(wants)));
    }

    private Columns<Crossing> crossings() {
        return Columns.<Crossing>inner()
                .words(
                        "through",
                        "through",
                        crossing -> crossing.body().isPresent()
                                ? section.name(crossing.body().getAsInt())
                                : crossing.stuff().name().toLowerCase(Locale.ROOT))
                .length("length", "length", Crossing::length);
    }

    private Columns<Grip> grips() {
        return Columns.<Grip>inner()
                .words("in", "in", grip -> section.name(grip.body()))
                .length("bite", "bite", Grip::bite)
                .measure("gravity", "G", Quantity.RATIO, Rounding.decimals(2), Grip::gravity)
                .measure("design", "design", Quantity.FORCE, Grip::design)
                .measure("test", "test", Quantity.FORCE, Grip::test)
                .measure("factor", "factor", Quantity.RATIO, Rounding.decimals(2), Grip::factor);
    }

    /** A joint of a nail, with the grip beyond it. */
    private record Held(Joint joint, Grip grip) {}

    private static List<Held> held(Fixed nail) {
        return nail.joints().stream()
                .map(joint -> new Held(
                        joint,
                        nail.grips().stream()
                                .filter(grip -> grip.body() == joint.far())
                                .findFirst()
                                .orElseThrow()))
                .toList();
    }

    private Columns<Held> joints() {
        return Columns.<Held>inner()
                .words(
                        "holds",
                        "holds",
                        one -> section.name(one.joint().near()) + " to "
                                + section.name(one.joint().far()))
                .text()
                .words("near", "near", one -> section.name(one.joint().near()))
                .json()
                .words("far", "far", one -> section.name(one.joint().far()))
                .json()
                .measure(
                        "gravity",
                        "G",
                        Quantity.RATIO,
                        Rounding.decimals(2),
                        one -> one.grip().gravity())
                .text()
                .measure(
                        "withdrawal",
                        "drawn out",
                        Quantity.FORCE,
                        one -> one.joint().withdrawal())
                .measure("head", "head", Quantity.FORCE, one -> one.joint().head())
                .words("governs", "governs", one -> one.joint().headGoverns() ? "head" : "bite")
                .json()
                .measure(
                        "withdrawalPerFoot",
                        "drawn out",
                        Quantity.LINE_FORCE,
                        one -> one.joint().withdrawalPerFoot())
                .json()
                .measure(
                        "headPerFoot",
                        "head",
                        Quantity.LINE_FORCE,
                        one -> one.joint().headPerFoot())
                .json()
                .measure(
                        "pullPerFoot",
                        "pull",
                        Quantity.LINE_FORCE,
                        one -> one.joint().pullPerFoot())
                .measure(
                        "test",
                        "test",
                        Quantity.FORCE,
                        Rounding.decimals(1),
                        one -> one.grip().test())
                .text()
                .measure(
                        "otherTest",
                        "other",
                        Quantity.FORCE,
                        Rounding.decimals(1),
                        one -> one.grip().otherTest())
                .text()
                .measure(
                        "lateral",
                        "across",
                        Quantity.FORCE,
                        Rounding.decimals(1),
                        one -> one.joint().lateral())
                .measure(
                        "otherLateral",
                        "other",
                        Quantity.FORCE,
                        Rounding.decimals(1),
                        one -> one.joint().otherLateral())
                .measure(
                        "lateralPerFoot",
                        "across",
                        Quantity.LINE_FORCE,
                        one -> one.joint().lateralPerFoot())
                .json();
    }

    /** A factor, and in what it was applied. */
    private record Reduced(String in, Factor factor) {}

    private List<Reduced> reduced(Fixed nail) {
        Stream<Reduced> out = nail.beyond().stream()
                .flatMap(grip -> grip.factors().stream().map(factor -> new Reduced(section.name(grip.body()), factor)));
        Stream<Reduced> across = nail.joints().stream()
                .flatMap(joint -> joint.across().stream()
                        .map(factor ->
                                new Reduced(section.name(joint.near()) + " to " + section.name(joint.far()), factor)));
        return Stream.concat(out, across).toList();
    }

    private Columns<Reduced> factors() {
        return Columns.<Reduced>inner()
                .words("in", "in", Reduced::in)
                .measure(
                        "factor",
                        "factor",
                        Quantity.RATIO,
                        Rounding.decimals(2),
                        one -> one.factor().value())
                .words("why", "why", one -> one.factor().why().words())
                .words("source", "from", one -> one.factor().why().source());
    }

    /** The spacing of all of them: a shop buys by the inch or by the millimeter. */
    private double apart() {
        return proposals.stream()
                .map(proposal -> proposal.fixed().fastening().use())
                .findFirst()
                .map(Spacings::usual)
                .orElse(0.0);
    }

    /** A piece of trim or a nailer, and the best place for a nail in it, if there is one. */
    private record First(int piece, Optional<Proposal> proposal) {}

    private Sheet firsts() {
        return Sheet.of(
                        "proposals.first",
                        Phrase.of(
                                        "WHERE A NAIL COULD GO, {apart} apart; each passes the checks of a nail that is given")
                                .with("apart", Figure.atMost(apart())),
                        firstOfEach())
                .name("piece", "piece", first -> section.name(first.piece()))
                .sayingIf(
                        "use",
                        "use",
                        first -> fixed(first).map(nail -> nail.fastening().use().phrase()))
                .figureIf(
                        "out",
                        "out",
                        first -> fixed(first)
                                .map(nail -> Figure.length(nail.head().x())))
                .figureIf(
                        "up",
                        "up",
                        first -> fixed(first)
                                .map(nail -> Figure.length(nail.head().y())))
                .figureIf(
                        "tilt",
                        "tilt",
                        first -> fixed(first)
                                .map(nail ->
                                        Figure.angle(nail.fastening().angle()).rounded(Rounding.decimals(0))))
                .figureIf("bite", "bite", first -> fixed(first).map(nail -> Figure.length(nail.bite())))
                .saying(
                        "reason",
                        "why there",
                        first -> first.proposal()
                                .map(Proposal::reason)
                                .orElse(Phrase.of("no spot found that bites enough and can be reached")))
                .people()
                .sheet();
    }

    private static Optional<Fixed> fixed(First first) {
        return first.proposal().map(Proposal::fixed);
    }

    private List<First> firstOfEach() {
        if (proposals.isEmpty() && fixed.isEmpty()) {
            return List.of();
        }
        Set<Integer> seen = new HashSet<>();
        List<First> firsts = new ArrayList<>();
        proposals.stream()
                .filter(proposal -> seen.add(proposal.fixed().piece()))
                .forEach(proposal -> firsts.add(new First(proposal.fixed().piece(), Optional.of(proposal))));
        IntStream.range(0, section.bodies().size())
                .filter(body -> section.body(body).inStack() && !seen.contains(body))
                .forEach(body -> firsts.add(new First(body, Optional.empty())));
        return firsts;
    }

    /** A formula, where it was published, and the factor between it and failure. */
    private record Formula(String formula, Phrase from, String safety) {}

    private Sheet formulas() {
        List<Formula> formulas = new ArrayList<>();
        Arrays.stream(Strength.values())
                .forEach(one -> formulas.add(new Formula(one.formula(), one.edition(), one.safety())));
        formulas.add(new Formula("not checked", Phrase.plain(String.join("; ", Strength.NOT_CHECKED)), ""));
        return Sheet.of("formulas", "FORMULAS behind the figures of nails, as published in inches and pounds", formulas)
                .name("formula", "formula", Formula::formula)
                .saying("from", "from", Formula::from)
                .words("safety", "safety", Formula::safety)
                .people()
                .sheet()
                .askedIf(!fixed.isEmpty());
    }
}
