package buildup.engine.hold.framing;

import buildup.engine.room.block.LooseBlock;
import buildup.engine.room.run.Job;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop;
import java.util.List;

/**
 * The strips that backing blocks are cut from: ripped corner to corner, a strip gives two triangles, and these are then cut
 * to length. A kerf c through the middle takes c / (2 sin S) off the one leg and c / (2 cos S) off the other, S the bevel
 * of the long face from plumb: by so much the strip is larger than the legs. Under a sloped ceiling the two triangles make a
 * parallelogram, and the strip is wider by what the ceiling rises or falls over the block.
 */
public final class BackingStrips {
    private BackingStrips() {}

    /** One strip for the blocks of each row. */
    public static List<LooseBlock> of(Job job, List<BackingBlock> blocks, Shop shop) {
        return blocks.stream().map(block -> strip(job, block, shop)).toList();
    }

    private static LooseBlock strip(Job job, BackingBlock block, Shop shop) {
        double s = Math.toRadians(block.bevel());
        double rip = LengthSteps.inches(shop.ripKerf()) / 2;
        int pairs = (block.count() + 1) / 2;
        double length = pairs * block.length() + (pairs - 1) * LengthSteps.inches(shop.kerf());
        String where = job.plan().runs().size() == 1 ? block.stretch() : block.run() + ": " + block.stretch();
        String wood = job.section()
                .body(block.piece())
                .placed()
                .orElseThrow()
                .piece()
                .wood()
                .name();
        return new LooseBlock(
                LooseBlock.Kind.BACKING,
                where + ", behind " + job.section().name(block.piece()),
                1,
                length,
                block.width() + rip / Math.cos(s),
                block.height() + Math.abs(block.rise()) + rip / Math.sin(s),
                wood,
                (block.square() ? "" : "both edges beveled as the ceiling slopes, ")
                        + "ripped corner to corner, then cut into " + block.count() + "; grain along the wall",
                0,
                0);
    }
}
