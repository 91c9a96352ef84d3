package buildup.cli.write;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;

/** Where one drawn stretch goes on from another. */
final class Joins {
    private Joins() {}

    static boolean meet(Point end, Point start) {
        return end.near(start, Tolerance.SNAP);
    }
}
