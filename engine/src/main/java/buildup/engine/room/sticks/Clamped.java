package buildup.engine.room.sticks;

import buildup.engine.room.stock.End;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Stick;
import buildup.engine.room.stock.StickNotices;
import buildup.engine.room.stock.StickPiece;
import buildup.shared.figure.Phrase;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How a piece is held that is too short to be clamped itself. While enough of its stick is left, the stick is clamped and
 * the piece comes off it last. Where it is not: a return is mitered on a longer piece and then cut off that (two articles
 * on trim, one of which says 18 in); what is mitered in another way likewise; and what is square is sawn by hand. A hand
 * saw in place of a machine for what cannot be held is what makers of saws advise.
 *
 * @param left of the stick behind the cut, {@link LengthSteps}; absent where the stick is not known
 * @param hold what has to be left, {@link LengthSteps}
 */
record Clamped(StickPiece piece, OptionalInt left, int hold) {
    /** As it lies on its stick, the last cut of the piece taken off what is left. */
    static Clamped of(Stick stick, Stick.LaidPiece lie, Shop shop) {
        int behind = stick.length() - shop.trim() - lie.to();
        int left = behind - shop.grid().needed(lie.piece().rightOnStick().kerf(shop));
        return of(lie.piece(), OptionalInt.of(Math.max(0, left)), shop);
    }

    /** A piece whose stick is not known. */
    static Clamped of(StickPiece piece, Shop shop) {
        return of(piece, OptionalInt.empty(), shop);
    }

    private static Clamped of(StickPiece piece, OptionalInt left, Shop shop) {
        return new Clamped(piece, left, piece.selfReturn() ? shop.holdForReturn() : shop.hold());
    }

    /** Whether the piece is shorter than what is clamped; one that is the rest of its stick is not cut off. */
    private boolean isShort() {
        return piece.length() < hold && (left.isEmpty() || left.getAsInt() > 0);
    }

    /** Whether too little of its stick is left to clamp that instead. */
    boolean tooLittleLeft() {
        return isShort() && left.isPresent() && left.getAsInt() < hold;
    }

    /** What is done; nothing for a piece that is clamped as it is. */
    Optional<Phrase> how() {
        if (!isShort()) {
            return Optional.empty();
        }
        if (tooLittleLeft()) {
            return Optional.of(instead());
        }
        return Optional.of((left.isPresent() ? StickNotices.CLAMP_THE_STICK : StickNotices.CLAMP_A_STICK)
                .with("left", LengthSteps.figure(left.orElse(hold))));
    }

    /** What is done where too little of the stick is left. */
    Phrase instead() {
        if (piece.selfReturn()) {
            return StickNotices.RETURN_FROM_A_LONGER_PIECE.with("hold", LengthSteps.figure(hold));
        }
        return isSquare(piece.left()) && isSquare(piece.right())
                ? StickNotices.BY_HAND
                : StickNotices.FROM_A_LONGER_PIECE.with("hold", LengthSteps.figure(hold));
    }

    private static boolean isSquare(End end) {
        return end.setting().isEmpty();
    }
}
