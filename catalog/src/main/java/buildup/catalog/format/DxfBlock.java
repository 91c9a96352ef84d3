package buildup.catalog.format;

import buildup.profiles.curve.Affine;
import buildup.profiles.outline.Point;
import buildup.shared.figure.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The entities of a block, or of the drawing itself, and what it puts in of other blocks. */
final class DxfBlock {
    private final Source source;
    private final Point base;
    private final Plot plot;
    private final List<DxfEntity> inserts = new ArrayList<>();

    /** @param base the point that comes to where the block is put */
    DxfBlock(Point base, Source source) {
        this.source = source;
        this.base = base;
        this.plot = new Plot(source);
    }

    Plot plot() {
        return plot;
    }

    void insert(DxfEntity insert) throws FileRefused {
        inserts.add(insert);
        if (inserts.size() > Limits.MOST_INSERTS) {
            throw tooMany();
        }
    }

    /** Draws all of it, blocks put in included; what they hold lies on the layer of the insert and in the block too. */
    void unfold(Map<String, DxfBlock> blocks, Plot into) throws FileRefused {
        unfold(blocks, Affine.NONE, List.of(), new int[1], into);
    }

    private void unfold(Map<String, DxfBlock> blocks, Affine map, List<String> holders, int[] count, Plot into)
            throws FileRefused {
        into.addAll(plot, map, holders);
        for (DxfEntity insert : inserts) {
            DxfBlock block = blocks.get(DxfReader.key(insert.name()));
            if (block == null) {
                source.tell(FormatNotices.BLOCK_ELSEWHERE.with("block", Numerals.shown(insert.name())), insert.line());
                continue;
            }
            if (holders.size() >= 2 * Limits.DEEPEST) {
                throw source.refused(
                        FormatNotices.DEEP_BLOCK
                                .with("block", Numerals.shown(insert.name()))
                                .with("most", Figure.count(Limits.DEEPEST)),
                        insert.line());
            }
            List<String> inner = new ArrayList<>(holders);
            inner.add(insert.layer());
            inner.add(insert.name());
            int columns = Math.max(1, insert.whole(70, 1));
            int rows = Math.max(1, insert.whole(71, 1));
            for (long i = 0; i < (long) columns * rows; i++) {
                if (++count[0] > Limits.MOST_INSERTS) {
                    throw tooMany();
                }
                long column = i % columns;
                long row = i / columns;
                Affine place =
                        block.place(insert, (double) column, (double) row).then(map);
                if (place.within(1e12)) {
                    block.unfold(blocks, place, inner, count, into);
                }
            }
        }
    }

    /** Where an insert puts this block: its base to the origin, scaled, moved within the array, turned, moved. */
    private Affine place(DxfEntity insert, double column, double row) {
        Point at = insert.point(10);
        Affine map = Affine.shift(-base.x(), -base.y())
                .then(Affine.scale(insert.number(41, 1), insert.number(42, 1)))
                .then(Affine.shift(column * insert.number(44, 0), row * insert.number(45, 0)))
                .then(Affine.turn(insert.number(50, 0)))
                .then(Affine.shift(at.x(), at.y()));
        return insert.mirrored() ? map.then(DxfShape.MIRROR) : map;
    }

    private FileRefused tooMany() {
        return source.refused(FormatNotices.MANY_BLOCKS.with("most", Figure.count(Limits.MOST_INSERTS)), 1);
    }
}
