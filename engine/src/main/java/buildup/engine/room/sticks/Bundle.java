package buildup.engine.room.sticks;

import buildup.engine.room.stock.End;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.StickPiece;
import java.util.List;

/**
 * Pieces that come from one stick in their order; one piece alone most of the time.
 *
 * @param gaps between one piece and the next, {@link LengthSteps}
 * @param width of the strip that they need, {@link LengthSteps}
 */
record Bundle(List<StickPiece> pieces, List<Integer> gaps, int width) {
    /** Lost at a corner that the grain runs round, besides the kerf: to clean up the cut; shop practice, no source. */
    private static final double CLEANING = 1.0 / 16;

    Bundle {
        pieces = List.copyOf(pieces);
        gaps = List.copyOf(gaps);
    }

    static Bundle of(StickPiece piece, int width) {
        return new Bundle(List.of(piece), List.of(), width);
    }

    int length() {
        return pieces.stream().mapToInt(StickPiece::length).sum()
                + gaps.stream().mapToInt(Integer::intValue).sum();
    }

    /** What a saw takes from the stick between two pieces: its kerf is wider along the stick when it cuts aslant. */
    static int gap(StickPiece before, StickPiece after, Shop shop) {
        return shop.grid()
                .needed(Math.max(
                                before.rightOnStick().kerf(shop),
                                after.leftOnStick().kerf(shop))
                        + CLEANING);
    }

    /** The end that lies to the left on the stick, as it is sawn there. */
    End left() {
        return pieces.get(0).leftOnStick();
    }

    /** The end that lies to the right on the stick, as it is sawn there. */
    End right() {
        return pieces.get(pieces.size() - 1).rightOnStick();
    }
}
