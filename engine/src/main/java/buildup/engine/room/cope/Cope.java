package buildup.engine.room.cope;

import buildup.engine.room.run.CopeSide;
import buildup.engine.room.run.Fit;

/**
 * A stick that is coped at one end.
 *
 * @param run as the plan calls it
 * @param stretch that the coped stick lies on, and {@code over} the one of the stick that runs through
 * @param fit the coped stick
 * @param right whether its right end is coped
 * @param corner inside angle, degrees
 * @param edge the sharpest angle of wood along the cope before it is cut back, degrees; a level face is left out, for
 *     there the two sticks lie flush, and of a curve what breaks off harmlessly ({@link CopeEdge})
 * @param at where that is: a member of the stick, or its upright faces
 */
public record Cope(
        String run,
        String stretch,
        String over,
        Fit fit,
        boolean right,
        CopeSide side,
        double corner,
        double edge,
        String at) {
    /** Thinner than this, degrees, the edge breaks or curls: common practice, no source. */
    public static final double THIN = 40;

    /** The stretch to the left of the corner, the one that says how the corner is cut. */
    public String before() {
        return right ? stretch : over;
    }

    /** Whether it is better mitered. */
    public boolean thin() {
        return edge < THIN;
    }
}
