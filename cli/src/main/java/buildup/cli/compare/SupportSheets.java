package buildup.cli.compare;

import buildup.engine.Answers;
import buildup.engine.hold.fixing.Fixed;
import buildup.engine.hold.support.Balance;
import buildup.engine.hold.support.Pull;
import buildup.engine.hold.support.Support;
import buildup.engine.section.compose.Section;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What carries and what holds, as sheets to compare, until the questions themselves write theirs. */
record SupportSheets(Answers known, Section section) {
    List<Sheet> all() {
        return List.of(balances(), whole(), nails(), pulls());
    }

    private Sheet balances() {
        return Sheet.of(
                        "support.balances",
                        "BEARING: resultant of the weight on the level bearing below; loads counted",
                        known.support().balances())
                .name("piece", "piece", balance -> section.name(balance.body()))
                .name("group", "with", balance -> balance.carrier() ? "all it carries" : "its group")
                .length("bearingFrom", "from", Balance::bearingBack)
                .length("bearingTo", "to", Balance::bearingFace)
                .measure("weight", "", Quantity.LINE_FORCE, balance -> balance.weight() + balance.load())
                .length("loaded", "resultant at", Balance::loaded)
                .length("margin", "inside by", Balance::margin)
                .measureIf("holdBack", "hold back", Quantity.LINE_FORCE, Rounding.NEAREST, Balance::holdBack)
                .sheet();
    }

    private Sheet whole() {
        Optional<Support.Verdict> whole = known.support().whole();
        return Sheet.single("support.whole", "AS FASTENED", whole)
                .words("stands", "as fastened it", verdict -> verdict.stands() ? "stands" : "falls")
                .measureIf(
                        "factor",
                        "loads may grow",
                        Quantity.TIMES,
                        Rounding.decimals(2),
                        verdict -> OptionalDouble.of(verdict.factor()))
                .sheet()
                .askedIf(whole.isPresent());
    }

    private Sheet nails() {
        return Sheet.of("nails", "NAILS AND SCREWS; pull: what one may hold, lb", known.fixed())
                .name("name", "nail", fixed -> fixed.fastening().name())
                .name("piece", "piece", fixed -> section.name(fixed.piece()))
                .words("use", "use", fixed -> fixed.fastening().use().call())
                .length("out", "out", fixed -> fixed.head().x())
                .length("up", "up", fixed -> fixed.head().y())
                .length("bite", "bite", Fixed::bite)
                .measure("allowable", "pull", Quantity.FORCE, Fixed::allowable)
                .lengthIf("edge", "edge", Fixed::edge)
                .flag("holds", "holds", Fixed::holds)
                .sheet();
    }

    private Sheet pulls() {
        return Sheet.of("pulls", "WHAT NAILS MUST HOLD against leaning", known.pulls())
                .name("piece", "of", pull -> section.name(pull.balance().body()))
                .name("nail", "nail", pull -> pull.fixed().fastening().name())
                .measure("needed", "must", Quantity.LINE_FORCE, Pull::needed)
                .measure("allowable", "may", Quantity.LINE_FORCE, Pull::allowable)
                .length("bite", "bite", Pull::bite)
                .sheet();
    }
}
