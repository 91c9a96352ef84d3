package buildup.engine.room.sticks;

import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Stick;
import buildup.engine.room.stock.StickNotices;
import buildup.engine.room.stock.StickPiece;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notices;

/** Something must be long enough to clamp while a cut is made: the piece, or what is left of its stick. */
final class Clamping {
    private final Notices notices;

    private Clamping(Notices notices) {
        this.notices = notices;
    }

    /** Looks at the sticks as they are to be cut. */
    static void look(Shop shop, Iterable<Stick> sticks, Notices notices) {
        Clamping clamping = new Clamping(notices);
        for (Stick stick : sticks) {
            stick.strips().forEach(strip -> strip.pieces().forEach(lie -> clamping.look(Clamped.of(stick, lie, shop))));
        }
    }

    private void look(Clamped clamped) {
        if (clamped.tooLittleLeft()) {
            StickPiece piece = clamped.piece();
            int left = clamped.left().orElse(0);
            notices.add(StickNotices.TOO_LITTLE_TO_CLAMP
                    .with("label", piece.id())
                    .with("length", Figure.length(piece.inches()))
                    .with("left", LengthSteps.figure(left))
                    .with("hold", LengthSteps.figure(clamped.hold()))
                    .of(piece.course())
                    .amount(LengthSteps.figure(clamped.hold() - left))
                    .cure(StickNotices.DO_THAT.with("how", clamped.instead())));
        }
    }
}
