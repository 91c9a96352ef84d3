package buildup.profiles.outline;

/**
 * Every bound below which a difference counts as none, and every error that a computation may make, named by what it
 * means. Lengths are inches, angles radians, areas square inches; a share has no unit. No other main code holds such a
 * number (what printed figures need stands in {@code buildup.shared.length.PrintTolerance}, below this module).
 */
public final class Tolerance {
    // Wood, as a shop meets it.

    /** Pieces nearer than this touch: a carpenter cannot set wood closer, and paint or glue fills it. In. */
    public static final double TOUCHING = 1.0 / 256;

    /**
     * What lies behind a slit between two pieces is not of the room while the slit is no wider than this: 1/16, as much as
     * a remodelers' standard lets the edges of a miter stand apart. Neither eye, brush nor finger goes in; a shadow gap
     * that is meant to be looked at is 1/8 and more (common practice, no source). In.
     */
    public static final double CLOSED_TO_THE_ROOM = 1.0 / 16;

    /**
     * Two sizes nearer than this are one to whoever cuts them: 1/64, half of what a shop rule divides and about what a
     * trim saw repeats (common practice, no source). Two stacks beside each other do not differ by less. In.
     */
    public static final double SAW_CUT = 1.0 / 64;

    /** What is missing by less than this is printed as nothing by a length in thousandths, in: half of its least step. */
    public static final double HALF_A_THOUSANDTH = 0.0005;

    /** The finest that whoever grinds steel reads from a drawing: half of a thousandth. In, degrees or a share of a size. */
    public static final double STEEL = 0.0005;

    /** A void smaller than this is a glue line. Sq in. */
    public static final double LEAST_VOID_AREA = 0.001;

    /** A face whose normal leans this little from plumb is level: a share of a right angle's sine. */
    public static final double LEVEL_FACE = 1e-3;

    // Curves that chords or other curves stand for.

    /** Greatest distance of a chord from the arc that it stands for; a quarter of {@link #TOUCHING}. In. */
    public static final double CHORD = 0.001;

    /** The same where a picture is laid out: a fraction of the width of any outline on paper. In of paper. */
    public static final double DRAWN_CHORD = 0.002;

    /** Greatest distance of a cubic curve in a file from the arc that it stands for. In of paper. */
    public static final double WRITTEN_CURVE = 0.0001;

    /** Greatest distance of a chord from a curve of a drawing that is read, as a share of the drawing's diagonal. */
    public static final double DRAWING_CHORD = 1e-5;

    // What computing leaves.

    /**
     * Distance within which the noder of a union merges vertices: ten times the largest mismatch that sums of shop
     * fractions and turned pieces leave (1e-7) and far below the shortest chord. In.
     */
    public static final double SNAP = 1e-6;

    /**
     * Two computed points, lengths or plain numbers of their size nearer than this are one: far above rounding at
     * 1,000 in, far below a cut. In, radians, or a share.
     */
    public static final double COINCIDENT = 1e-9;

    /** Two sizes of which one is held against a rule are one when nearer: far above rounding, far below any tool. In. */
    public static final double SAME_SIZE = 1e-6;

    /**
     * Two shares nearer than this are one: places along a segment (0 to 1), sines, parts of a force, and counts that
     * ought to be whole. No unit.
     */
    public static final double SAME_SHARE = 1e-6;

    /** What a few operations leave in a number of about the size of one: quarter turns, radians, written numbers. */
    public static final double ROUNDING = 1e-12;

    /** Two outlines that share less than this share nothing: rounding along ten feet of a common edge. Sq in. */
    public static final double NO_AREA = 1e-9;

    /**
     * A union whose area differs more than this from the sum of its pieces had overlaps: the smallest overlap that
     * counts, touching wide and touching deep, has eight times as much. Sq in.
     */
    public static final double LAPPED_AREA = 1e-6;

    /** Directions nearer than this are one: 0.01 degree. Radians. */
    public static final double SAME_DIRECTION = Math.toRadians(0.01);

    // Looking.

    /** What spans less of a view than this is seen edge on. In of the view, or right angles. */
    public static final double EDGE_ON = 1e-12;

    /** Nearer than this along a ray, two outlines are one; also the step into a band to ask what lies there. In. */
    public static final double BESIDE = 1e-7;

    /** A step beside a sight line: less than a thousandth of an inch at any distance in a room. Right angles. */
    public static final double BESIDE_A_SIGHT_LINE = 1e-9;

    /** Calipers read a size of the whole to so much: a vernier's 0.05 mm, in; common practice, no source. */
    public static final double CALIPERS_READ = 0.002;

    // Standing and falling.

    /** The overhang of its own weight by which a stack is said to tip: far under what wood is cut to. In. */
    public static final double LEAST_OVERHANG = 1e-8;

    /** Work below this is what the solver blurs: a thousandth of the least overhang. In, times the weight of the stack. */
    public static final double LEAST_WORK = LEAST_OVERHANG / 1000;

    /** Motions that differ by less than this share of the greatest are one: far above what the solver blurs. */
    public static final double SAME_MOTION = 1e-5;

    /** What rubbing costs, as a share of all weight: so little that it only makes a piece turn rather than slide. */
    public static final double COST_OF_RUBBING = 1e-6;

    /** What moving at all costs, as a share of all weight: so little that it only keeps still what need not move. */
    public static final double COST_OF_MOVING = 1e-7;

    // Searching for the nearest profile.

    /** Steps are halved down to this: the area is then out by less than a thousandth of a square inch per foot. In. */
    public static final double FINEST_STEP = 1e-6;

    /** The same where turn or size are free too, since no plane is set by them. In, radians or a share. */
    public static final double FREE_STEP = 1e-4;

    /** A gain below this is rounding: two places that good are one. Sq in. */
    public static final double GAIN = 1e-10;

    /** A stretch that can hold no point this much farther off than the farthest known is not searched. In. */
    public static final double FARTHEST_FOUND = 0.002;

    // Fitting a tracing.

    /** An outline keeps this near to a tracing, however still the hand: what a good contour gauge repeats. In. */
    public static final double TRACED = 0.004;

    /** A ring is not cut for less: a drawing has no scatter, and its curves may be none of a molder's. In. */
    public static final double TRACED_CUT = 0.0013;

    /** A drawing of true lines and arcs is cut for this, and leaves less: its file's last digit. In. */
    public static final double DRAWN_CUT = 5e-5;

    /** Points of a drawing are believed so far: chords of its arcs, and its file's last digit. In. */
    public static final double DRAWN_SCATTER = 1e-4;

    /** Points are never believed more than this: half a thousandth is what a shop can see. In. */
    public static final double LEAST_SCATTER = 0.0004;

    /** A scatter that is worth a word. In. */
    public static final double SEEN_SCATTER = 0.001;

    /** Points that stray by less than this share of the tracing's size stray by rounding. */
    public static final double LEAST_STRAYING = 1e-5;

    /** Points nearer than this share of the tracing's size are one. */
    public static final double TRACED_TWICE = 1e-7;

    /** Ends and runs of a drawing nearer than this share of its size are in one place. */
    public static final double DRAWN_TWICE = 1e-4;

    /** A sheet's frame goes round what holds at least this share of its area. */
    public static final double HELD_ON_SHEET = 2e-4;

    /** A title stands in a corner of its frame when its sides are this near to those, as a share of the frame's size. */
    public static final double TITLE_CORNER = 1e-3;

    /** A ring of a drawing that encloses less than this share of the square of the drawing's size is a line. */
    public static final double FLAT_RING = 1e-6;

    /** A tracing that encloses less than this share of the square of its size is a line. */
    public static final double FLAT_TRACING = 1e-4;

    /** A bond between two curves that is off by more could not be kept together with those before it. In or radians. */
    public static final double BOND_KEPT = 1e-8;

    /** Bonds that say the same twice make the equations singular; giving this much settles it and moves nothing. */
    public static final double BOND_GIVES = 1e-11;

    /** Small enough for a difference to be a slope. In and radians. */
    public static final double SLOPE_STEP = 1e-6;

    /** A step smaller than this is the last one. In, or a share of the value that is sought. */
    public static final double LAST_STEP = 1e-10;

    /** In the simplex method: a factor that is smaller, where the greatest was about 1, is what subtracting left: no row is divided by it. */
    public static final double SIMPLEX_DUST = 1e-9;

    /** In the simplex method: what is smaller in a row whose greatest factor is about 1, is rounding. */
    public static final double SIMPLEX_ROUNDING = 1e-11;

    /** In the simplex method: how much a bound gives where several are reached at about once. */
    public static final double SIMPLEX_GIVES = 1e-12;

    /** In the simplex method: a factor that is smaller is divided by only where no other is there; a promise that is smaller may be dust. */
    public static final double SIMPLEX_FIRM = 1e-7;

    /** By so much sums are moved apart, so that rows of the same sum do not make it go round in circles. */
    public static final double SIMPLEX_APART = 1e-7;

    /** No hand goes on as it went to within less than this from one point to the next, in. */
    public static final double FRESH_STROKE = 1e-4;

    /** A size at which a rule turns, found by halving, that is so near to a round one is that, if its figure agrees, in. */
    public static final double TURNS_ROUND = 1e-5;

    private Tolerance() {}

    /** Whether two lengths agree within {@link #COINCIDENT}. In. */
    public static boolean same(double a, double b) {
        return Math.abs(a - b) <= COINCIDENT;
    }
}
