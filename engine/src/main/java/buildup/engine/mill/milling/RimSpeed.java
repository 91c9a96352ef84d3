package buildup.engine.mill.milling;

import buildup.profiles.outline.Tolerance;
import java.util.List;

/**
 * How fast the outermost edge of a cutter moves, and how fast published tables let a bit turn. The limits differ by nearly
 * two from table to table; the lowest for a diameter is given here. The maker's marking on the tool governs.
 */
final class RimSpeed {
    /**
     * The highest speed of a rim that any of the tables allows, ft a minute (a calculator's page; a spindle-molder manual of
     * 2019 allows 13,780 for some cutters).
     */
    static final double HIGHEST = 12_000;

    private static final double INCHES_PER_FOOT = 12;

    /** Up to a diameter, the fastest turn that the strictest of the tables gives. */
    private record Limit(double diameter, int rpm) {}

    /** The least of five published tables for each row; listed in {@code reference/milling.md}. */
    private static final List<Limit> LIMITS = List.of(
            new Limit(0.5, 22_000),
            new Limit(0.75, 18_000),
            new Limit(1, 16_000),
            new Limit(1.25, 14_000),
            new Limit(1.5, 12_000),
            new Limit(2, 10_000),
            new Limit(2.5, 9_000),
            new Limit(3.5, 8_000));

    private RimSpeed() {}

    /** pi x diameter x rpm / 12, ft a minute. */
    static double of(double diameter, double rpm) {
        return Math.PI * diameter * rpm / INCHES_PER_FOOT;
    }

    /** The fastest turn of a router bit by the strictest table, rpm; past the tables by {@link #HIGHEST} and their last row. */
    static double mostTurns(double diameter) {
        double listed = LIMITS.stream()
                .filter(limit -> diameter <= limit.diameter() + Tolerance.COINCIDENT)
                .mapToDouble(Limit::rpm)
                .findFirst()
                .orElse(LIMITS.get(LIMITS.size() - 1).rpm());
        return Math.min(listed, HIGHEST * INCHES_PER_FOOT / (Math.PI * diameter));
    }
}
