package buildup.engine.room.sticks;

import buildup.engine.room.splice.Splice;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop.Aim;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.sheet.Sheet;
import java.util.Optional;

/** How near the cutting plan is to the best there can be, as sheets. */
final class PlanSheets {
    private static final double HUNDREDTHS = 100;

    private static final String OVER = "over the lower bound: money where the price is to be least, else sticks";

    private static final String RIPS =
            "RIPPING CHECK: boards ripped over their whole length, against any other way to do so";

    private static final Phrase MISSING = Phrase.of("sticks are missing");
    private static final Phrase RIPPED = Phrase.of("ripped: see below");
    private static final Phrase CHEAPEST = Phrase.of("least price, proved");
    private static final Phrase FEWEST = Phrase.of("fewest to buy, proved");
    private static final Phrase NEAR_CHEAPEST = Phrase.of("within {over} of the lower bound");
    private static final Phrase NEAR_FEWEST = Phrase.of("within {over} sticks of the lower bound");
    private static final Phrase ONE_FROM_FEWEST = Phrase.of("within 1 stick of the lower bound");

    private PlanSheets() {}

    /** Each material by itself. */
    static Sheet lots(Optional<CutList> list) {
        return Sheet.of("lots", "CUTTING PLAN CHECK: each material by itself", StickSheets.all(list, CutList::lots))
                .saying("of", "material", LotPlan::name)
                .both()
                .name("wood", "wood", LotPlan::wood)
                .length("width", "width", lot -> LengthSteps.inches(lot.strip()))
                .flag("ripped", "ripped", LotPlan::ripped)
                .count("pieces", "lengths", LotPlan::pieces)
                .count("sticks", "sticks or strips", LotPlan::sticks)
                .words("aim", "what is to be least", lot -> lot.aim().word())
                .flag("proved", "proved", LotPlan::proved)
                .flag("missing", "sticks are missing", LotPlan::missing)
                .measure("over", OVER, Quantity.MONEY, lot -> over(lot.aim(), lot.over()))
                .count("steps", "steps of the search", LotPlan::steps)
                .saying("known", "what is known", PlanSheets::known)
                .table("CUTTING PLAN CHECK: each material by itself", "of", "wood", "pieces", "sticks", "known")
                .sheet();
    }

    /** Where pieces longer than any stick are joined, and why there. */
    static Sheet splices(Optional<CutList> list) {
        return Sheet.of("splices", "SPLICES: pieces longer than any stick", StickSheets.all(list, CutList::splices))
                .words("id", "label", joint -> joint.piece().id())
                .words("course", "piece", joint -> joint.piece().course())
                .words("stretch", "stretch", joint -> joint.piece().stretch())
                .words("left", "left part", joint -> joint.left().id())
                .words("right", "right part", joint -> joint.right().id())
                .words("joint", "joint", joint -> joint.scarf() ? "scarf" : "butt")
                .length("at", "from its left end", Splice.Joint::fromLeft)
                .length("along", "along the wall", Splice.Joint::middle)
                .wordsIf(
                        "over",
                        "lies over",
                        joint -> joint.scarf()
                                ? Optional.of((joint.leftLiesOver() ? joint.left() : joint.right()).id())
                                : Optional.empty())
                .saying("why", "why there", Splice.Joint::why)
                .both()
                .table(
                        "SPLICES: where the middle of the joint lies in pieces longer than any stick, which part lies over, and"
                                + " why there",
                        "id",
                        "course",
                        "joint",
                        "at",
                        "along",
                        "over",
                        "why")
                .sheet();
    }

    /** Boards of one thickness that are ripped. */
    static Sheet rips(Optional<CutList> list) {
        return Sheet.of("rips", RIPS, StickSheets.all(list, CutList::rips))
                .length("thickness", "thickness", RipPlan::thickness)
                .name("wood", "wood", RipPlan::wood)
                .words("aim", "what is to be least", rip -> rip.aim().word())
                .measure("over", OVER, Quantity.MONEY, rip -> over(rip.aim(), rip.over()))
                .saying("known", "what is known", rip -> known(rip.aim(), rip.over()))
                .table(RIPS, "thickness", "wood", "known")
                .sheet();
    }

    /** Money when the price is to be least, else sticks. */
    private static double over(Aim aim, long over) {
        return aim == Aim.CHEAPEST ? over / HUNDREDTHS : over;
    }

    private static Phrase known(LotPlan lot) {
        if (lot.missing()) {
            return MISSING;
        }
        return lot.ripped() ? RIPPED : known(lot.aim(), lot.over());
    }

    private static Phrase known(Aim aim, long over) {
        if (over == 0) {
            return aim == Aim.CHEAPEST ? CHEAPEST : FEWEST;
        }
        if (aim == Aim.CHEAPEST) {
            return NEAR_CHEAPEST.with("over", Figure.of(Quantity.MONEY, over / HUNDREDTHS));
        }
        return over == 1 ? ONE_FROM_FEWEST : NEAR_FEWEST.with("over", Figure.count(over));
    }
}
