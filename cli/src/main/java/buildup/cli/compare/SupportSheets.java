package buildup.cli.compare;

import buildup.engine.Answers;
import buildup.engine.hold.fixing.Fixed;
import buildup.engine.section.compose.Section;
import buildup.shared.figure.Quantity;
import buildup.shared.sheet.Sheet;
import java.util.List;

/** What carries and what holds, as sheets to compare, until the questions themselves write theirs. */
record SupportSheets(Answers known, Section section) {
    List<Sheet> all() {
        return List.of(nails());
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
}
