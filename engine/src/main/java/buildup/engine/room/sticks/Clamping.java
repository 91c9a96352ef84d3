package buildup.engine.room.sticks;

import buildup.engine.room.stock.EndJoint;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Stick;
import buildup.engine.room.stock.StickNotices;
import buildup.engine.room.stock.StickPiece;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notices;

/** Something must be long enough to clamp while a cut is made: the piece, or what is left of its stick. */
final class Clamping {
    private final Shop shop;
    private final Notices notices;

    private Clamping(Shop shop, Notices notices) {
        this.shop = shop;
        this.notices = notices;
    }

    /** Looks at the sticks as they are to be cut. */
    static void look(Shop shop, Iterable<Stick> sticks, Notices notices) {
        Clamping clamping = new Clamping(shop, notices);
        for (Stick stick : sticks) {
            int end = stick.length() - shop.trim();
            stick.strips().forEach(strip -> strip.pieces().forEach(lie -> clamping.look(lie.piece(), end - lie.to())));
        }
    }

    private void look(StickPiece piece, int left) {
        boolean isReturn =
                piece.left().joint() == EndJoint.RETURN || piece.right().joint() == EndJoint.RETURN;
        int hold = isReturn ? shop.holdForReturn() : shop.hold();
        // a piece that is the rest of its stick is not cut off
        if (piece.length() < hold && left < hold && left > 0) {
            notices.add(StickNotices.TOO_LITTLE_TO_CLAMP
                    .with("label", piece.id())
                    .with("length", Figure.length(piece.inches()))
                    .with("left", LengthSteps.figure(left))
                    .with("hold", LengthSteps.figure(hold))
                    .of(piece.course())
                    .amount(LengthSteps.figure(hold - left)));
        }
    }
}
