package buildup.engine.hold.framing;

/**
 * The blocks behind a sprung molding on one stick: triangles in the corner between wall and ceiling, or whatever backs
 * and covers it, their long face along the molding's back.
 *
 * @param run, stretch as the plan calls them
 * @param piece number of the molding's body
 * @param height, width legs of the triangle, in: up the back and out along the top
 * @param bevel of the long face from plumb, degrees: the spring
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
        double spacing,
        int count,
        double length,
        double rip) {
    /** The long face, in. */
    public double slope() {
        return Math.hypot(height, width);
    }
}
