package buildup.catalog.format;

/** How much a file may hold, each so far above any profile that only a mistake or malice meets it. */
final class Limits {
    /** Points of all trails, those that curves become included. */
    static final int MOST_POINTS = 100_000;

    /** No coordinate is farther from 0, in the unit of the drawing: 10 km in millimeters. */
    static final double FARTHEST = 1e7;

    /** Elements within elements, blocks within blocks. */
    static final int DEEPEST = 64;

    /** Blocks put into the drawing, also those that draw nothing. */
    static final int MOST_INSERTS = 10_000;

    private Limits() {}
}
