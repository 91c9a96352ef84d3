package buildup.shared.length;

/** How near a true size must be to a printed one; the tolerances of geometry stand in {@code buildup.profiles.outline}. */
public final class PrintTolerance {
    /** A printed fraction further than this from the true size is marked: far below what a tape or a rule shows. In. */
    public static final double MARKED = 1e-6;

    /**
     * A number this near to a step of its scale stands on it: above the rounding of some thousand additions, below any
     * tool. In the unit that is printed.
     */
    public static final double ON_A_STEP = 1e-9;

    /** A fraction this near to a size is that size for whoever sets a piece by it: under a thirtieth of touching. In. */
    public static final double CONTACT = 1e-4;

    private PrintTolerance() {}
}
