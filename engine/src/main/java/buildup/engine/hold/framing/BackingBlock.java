package buildup.engine.hold.framing;

import buildup.profiles.outline.Tolerance;

/**
 * The blocks behind a sprung molding on one stick: triangles in the corner between wall and ceiling, or whatever backs
 * and covers it, their long face along the molding's back. Under a sloped ceiling the corner is not square.
 *
 * @param run, stretch as the plan calls them
 * @param piece number of the molding's body
 * @param height, width legs of the triangle, in: up the back, and how far it comes out, measured level
 * @param bevel of the long face from plumb, degrees: the spring
 * @param topBevel of the face under the ceiling from level, degrees: above 0 where the ceiling rises from the wall
 * @param spacing from middle to middle along the run, in: that of the framing
 * @param count of them on the stick, one near each end counted
 * @param length of each along the run, in
 * @param rip two of them are ripped from a stick so thick, in; the legs' lesser
 */
public record BackingBlock(
        String run,
        String stretch,
        int piece,
        double height,
        double width,
        double bevel,
        double topBevel,
        double spacing,
        int count,
        double length,
        double rip) {
    /** Legs are cut to so much, in. */
    private static final double STEP = 1.0 / 16;

    /** The long face, in. */
    public double slope() {
        return Math.hypot(height + rise(), width);
    }

    /** Whether the ceiling over it is level. */
    public boolean square() {
        return Math.abs(rise()) < Tolerance.COINCIDENT;
    }

    /** How much higher its outer end is than its corner, in; less than 0 under a ceiling that falls from the wall. */
    public double rise() {
        return width * Math.tan(Math.toRadians(topBevel));
    }

    /**
     * The same as it is cut: the lesser leg down to a size of the tape, and the other as the bevel makes it then. A block
     * that is a little small only leaves a little more air behind the molding.
     */
    BackingBlock cut() {
        double lesser = Math.min(height, width);
        double share = Math.floor(lesser / STEP + Tolerance.COINCIDENT) * STEP / lesser;
        return new BackingBlock(
                run,
                stretch,
                piece,
                height * share,
                width * share,
                bevel,
                topBevel,
                spacing,
                count,
                length,
                rip * share);
    }
}
