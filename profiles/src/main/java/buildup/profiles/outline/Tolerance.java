package buildup.profiles.outline;

/** The distances below which two things count as one, all in inches and all named here and nowhere else. */
public final class Tolerance {
    /** Pieces nearer than this touch: a carpenter cannot set wood closer, and paint or glue fills it. */
    public static final double TOUCHING = 1.0 / 256;

    /** Greatest distance of a chord from the arc that it stands for; a quarter of {@link #TOUCHING}. */
    public static final double CHORD = 0.001;

    /**
     * Distance within which the noder of a union merges vertices: ten times the largest mismatch that sums of shop
     * fractions and turned pieces leave (1e-7) and far below the shortest chord.
     */
    public static final double SNAP = 1e-6;

    /** Two computed points or lengths nearer than this are one: far above rounding at 1,000 in, far below a cut. */
    public static final double COINCIDENT = 1e-9;

    /** Directions nearer than this are one: 0.01 degree, in radians. */
    public static final double SAME_DIRECTION = Math.toRadians(0.01);

    /** What spans less of a view than this is seen edge on: in of the view, or radians. */
    public static final double EDGE_ON = 1e-12;

    /** A void smaller than this, in square inches, is a glue line. */
    public static final double LEAST_VOID_AREA = 0.001;

    /**
     * Two sizes nearer than this are one to whoever cuts them: 1/64, half of what a shop rule divides and about what a
     * trim saw repeats (common practice, no source). Two stacks beside each other do not differ by less.
     */
    public static final double SAW_CUT = 1.0 / 64;

    private Tolerance() {}

    /** Whether two lengths agree within {@link #COINCIDENT}. */
    public static boolean same(double a, double b) {
        return Math.abs(a - b) <= COINCIDENT;
    }
}
