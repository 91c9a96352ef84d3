package buildup.engine.room.stock;

import buildup.engine.room.run.EndCut;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Saw.Hand;
import buildup.profiles.outline.Point;
import java.util.List;

/**
 * A cut at one end of a piece.
 *
 * @param slant how much longer the room side is than the back at this end, seen from above, in; negative when shorter
 * @param miter, bevel with the stick flat on the table, degrees
 */
public record End(EndJoint joint, double slant, double miter, double bevel) {
    private static final double FLATTEST = 0.1;

    /** Square to the stick. */
    public static final End SQUARE = new End(EndJoint.SQUARE, 0, 0, 0);

    /**
     * What a saw takes along the stick at this end, in: its kerf is wider along the stick when it cuts aslant, by the
     * secants of miter and bevel. Cuts so flat that no saw makes them are counted as 84 degrees.
     */
    public double kerf(Shop shop) {
        double aslant = Math.cos(Math.toRadians(miter)) * Math.cos(Math.toRadians(bevel));
        return LengthSteps.inches(shop.kerf()) / Math.max(aslant, FLATTEST);
    }

    /** The cut at one end of a fit, by the hand on which it lies. */
    public static End of(Fit fit, Hand hand) {
        EndCut cut = fit.cut(hand);
        List<Point> outline = fit.outline();
        Point along = fit.frame().along();
        boolean left = hand == Hand.LEFT;
        Point back = outline.get(left ? 0 : 3);
        Point face = outline.get(left ? 1 : 2);
        double slant = face.minus(back).dot(along) * (left ? -1 : 1);
        return new End(EndJoint.of(cut.kind()), slant, cut.miter(), cut.bevel());
    }
}
