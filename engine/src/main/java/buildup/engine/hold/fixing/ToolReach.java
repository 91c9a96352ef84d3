package buildup.engine.hold.fixing;

import buildup.catalog.Catalog;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.section.compose.Section;
import java.util.OptionalInt;

/** Until when a tool gets to the head of a fastening, as more pieces go up. */
public final class ToolReach {
    private final Timber timber;
    private final Reaching reaching;

    /** @param catalog lists the tools */
    public ToolReach(Section section, Catalog catalog) {
        this.timber = new Timber(section);
        this.reaching = new Reaching(timber, catalog);
    }

    /** What is in the way of the tool once the body of that number is up, and all before it; absent when nothing is. */
    public OptionalInt inTheWay(Fixed fixed, int step) {
        return reaching.of(spot(fixed), fixed.way(), fixed.fastening().use(), step)
                .inTheWay();
    }

    /** The first body after a step that, once up, keeps the tool from the head; absent when none does, or something did before. */
    public OptionalInt coveredBy(Fixed fixed, int step) {
        if (inTheWay(fixed, step).isPresent()) {
            return OptionalInt.empty();
        }
        for (int later = step + 1; later < timber.count(); later++) {
            if (timber.body(later).inStack() && inTheWay(fixed, later).isPresent()) {
                return OptionalInt.of(later);
            }
        }
        return OptionalInt.empty();
    }

    private Spot spot(Fixed fixed) {
        return Spot.nearest(fixed.piece(), timber.body(fixed.piece()).outline(), fixed.head());
    }
}
