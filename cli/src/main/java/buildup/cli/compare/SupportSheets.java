package buildup.cli.compare;

import static buildup.cli.compare.Sheet.length;
import static buildup.cli.compare.Sheet.names;
import static buildup.cli.compare.Sheet.words;

import buildup.cli.compare.Sheet.Figure;
import buildup.cli.compare.Sheet.Head;
import buildup.cli.compare.Sheet.Kind;
import buildup.cli.compare.Sheet.Row;
import buildup.engine.Answers;
import buildup.engine.hold.fixing.Fixed;
import buildup.engine.hold.support.Balance;
import buildup.engine.section.compose.Section;
import java.util.List;

/** The sheets of what carries and what holds. */
record SupportSheets(Answers known, Section section) {
    static final String NAILS = "nails";

    List<Sheet> all() {
        return List.of(balances(), nails(), pulls());
    }

    private Sheet balances() {
        return new Sheet(
                "support",
                "WHAT CARRIES WHAT: where the weight falls on the level bearing below; loads counted",
                List.of(new Head("piece", "piece"), new Head("group", "with")),
                List.of(
                        length("bearingFrom", "from"),
                        length("bearingTo", "to"),
                        Sheet.of("weight", "lb a foot", Kind.WEIGHT),
                        length("loaded", "falls at"),
                        length("margin", "inside by"),
                        Sheet.of("holdBack", "hold back lb", Kind.WEIGHT)),
                known.support().balances().stream().map(this::balance).toList());
    }

    private Row balance(Balance balance) {
        return new Row(
                List.of(section.name(balance.body()), balance.carrier() ? "all it carries" : "its group"),
                List.of(
                        Figure.of(balance.bearingBack()),
                        Figure.of(balance.bearingFace()),
                        Figure.of(balance.weight() + balance.load()),
                        Figure.of(balance.loaded()),
                        Figure.of(balance.margin()),
                        Figure.of(balance.holdBack())));
    }

    private Sheet nails() {
        return new Sheet(
                NAILS,
                "NAILS AND SCREWS; pull: what one may hold, lb",
                names("nail", "piece"),
                List.of(
                        words("use", "use"),
                        length("out"),
                        length("up"),
                        length("bite"),
                        Sheet.of("allowable", "pull", Kind.WEIGHT),
                        length("edge"),
                        words("holds", "holds")),
                known.fixed().stream().map(this::nail).toList());
    }

    private Row nail(Fixed fixed) {
        return new Row(
                List.of(fixed.fastening().name(), section.name(fixed.piece())),
                List.of(
                        Figure.of(fixed.fastening().use().call()),
                        Figure.of(fixed.head().x()),
                        Figure.of(fixed.head().y()),
                        Figure.of(fixed.bite()),
                        Figure.of(fixed.allowable()),
                        Figure.of(fixed.edge()),
                        Figure.of(fixed.holds() ? "yes" : "no")));
    }

    private Sheet pulls() {
        return new Sheet(
                "pulls",
                "WHAT NAILS MUST HOLD against leaning, lb a foot",
                List.of(new Head("piece", "of"), new Head("nail", "nail")),
                List.of(
                        Sheet.of("needed", "must", Kind.WEIGHT),
                        Sheet.of("allowable", "may", Kind.WEIGHT),
                        length("bite")),
                known.pulls().stream()
                        .map(pull -> new Row(
                                List.of(
                                        section.name(pull.balance().body()),
                                        pull.fixed().fastening().name()),
                                List.of(Figure.of(pull.needed()), Figure.of(pull.allowable()), Figure.of(pull.bite()))))
                        .toList());
    }
}
