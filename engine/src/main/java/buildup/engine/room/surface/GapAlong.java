package buildup.engine.room.surface;

import buildup.engine.room.plan.Measured;
import buildup.engine.room.plan.Station;
import buildup.engine.room.run.Fit;
import buildup.profiles.outline.Tolerance;
import buildup.shared.notice.Mark;

/**
 * The air between a surface of the room and the piece that comes nearest to it, along one stick of that piece.
 *
 * @param run, stretch as the plan calls them, with the side of an opening where the stick is a part
 * @param fit the stick of the piece
 * @param gap from the stick's left end to its right end as it lies on the stretch; exact, for all is straight between
 *     the places of the plan
 * @param mark of the stretch
 */
public record GapAlong(String run, String stretch, Surface surface, Fit fit, Measured gap, Mark mark) {
    /** The least, and where. */
    public Station least() {
        return gap.least();
    }

    /** The greatest, and where. */
    public Station most() {
        return gap.most();
    }

    /** Whether stack and room want the same place somewhere. */
    public boolean clashes() {
        return least().amount() < -Tolerance.TOUCHING;
    }

    /** Whether it comes so near somewhere that what is between is closed or left as a reveal. */
    public boolean near() {
        return least().amount() < Remedies.NEAR;
    }

    /** Whether the surface runs as straight and level as the stack. */
    public boolean even() {
        return gap.variation() <= Tolerance.TOUCHING;
    }

    /** How far the stack goes out of level, or out of line with the wall, when it follows the surface best: over its length, in. */
    public double outOfLine() {
        return gap.steepness() * length();
    }

    /** What the gap still varies by when it does. */
    public double leftOver() {
        return gap.less(gap.steepness()).variation();
    }

    private double length() {
        return gap.stations().get(gap.stations().size() - 1).along()
                - gap.stations().get(0).along();
    }
}
