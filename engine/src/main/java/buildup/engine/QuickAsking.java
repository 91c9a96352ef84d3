package buildup.engine;

import buildup.catalog.Catalog;
import buildup.engine.judge.proportion.Proportion;
import buildup.engine.judge.proportion.ProportionWish;
import buildup.engine.judge.proportion.Proportions;
import buildup.engine.section.compose.Section;
import buildup.engine.section.free.FreeSizes;
import buildup.shared.document.Document;
import buildup.shared.notice.Notices;
import java.util.List;

/**
 * What a document says besides its pieces on which it hangs whether outlines alone tell a figure.
 *
 * @param fastened whether it speaks of fastenings, which then decide what stands
 * @param parts whether the parts of the trim are the same ones whatever the free sizes are
 * @param wish what it asks of its proportions
 */
record QuickAsking(boolean fastened, boolean parts, ProportionWish wish, Catalog catalog) {
    /**
     * What a document says.
     *
     * @param start its stack as it is today
     */
    static QuickAsking of(Answers start, Document document, FreeSizes free) {
        boolean staying = free.sizes().stream().noneMatch(size -> size.place().endsWith("." + FreeSizes.LEAVE_OUT));
        boolean fixed = List.of("parts", "proportion", "space", "units").stream()
                .allMatch(key -> document.root()
                        .get(key)
                        .map(node -> free.behind(node).isEmpty())
                        .orElse(true));
        Blocks blocks = start.blocks();
        return new QuickAsking(
                blocks.keys().contains("fastenings"), staying && fixed, blocks.proportion(), blocks.catalog());
    }

    /** How a stack reads beside the books; what there is to say of it is said by the whole answer. */
    Proportion proportion(Section section) {
        return Proportions.of(section, wish, catalog, new Notices());
    }
}
