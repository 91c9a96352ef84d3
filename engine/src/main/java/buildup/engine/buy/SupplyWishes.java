package buildup.engine.buy;

import buildup.catalog.fastener.Fastener;
import buildup.catalog.supply.Good;
import buildup.shared.notice.Mark;
import java.util.List;
import java.util.Optional;

/**
 * What a document says of all that is bought besides sticks.
 *
 * @param asked whether it asks for any of it
 * @param spare share of fasteners that is bought over those that are counted
 * @param boxes of single fasteners
 * @param goods glue, paint and the like, one of a kind
 * @param blocks what blocks are nailed with; absent when that is not said
 * @param mark where it is asked for
 */
public record SupplyWishes(
        boolean asked, double spare, List<Boxes> boxes, List<Poured> goods, Optional<Fastener.Cut> blocks, Mark mark) {
    /** Fasteners that jam, bend and fall: common practice, no source. */
    static final double USUAL_SPARE = 0.1;

    /**
     * In what a fastener is sold.
     *
     * @param packs sizes of box; empty: those of the catalog
     * @param onHand how many lie in the shop
     */
    record Boxes(Fastener.Cut use, List<Pack> packs, int onHand, Mark mark) {
        Boxes {
            packs = List.copyOf(packs);
        }
    }

    /**
     * Something that is spread, laid in a bead or pressed into holes.
     *
     * @param good as the catalog has it, its figures replaced by those of the document
     * @param packs sizes of pack; at least one
     * @param onHand cubic inches in the shop
     * @param pieces names of those that it is for; empty: all
     */
    record Poured(Good good, List<Pack> packs, double onHand, List<String> pieces) {
        Poured {
            packs = List.copyOf(packs);
            pieces = List.copyOf(pieces);
        }

        boolean isFor(String piece) {
            return pieces.isEmpty() || pieces.contains(piece);
        }
    }

    public SupplyWishes {
        boxes = List.copyOf(boxes);
        goods = List.copyOf(goods);
    }
}
