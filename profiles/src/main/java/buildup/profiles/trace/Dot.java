package buildup.profiles.trace;

import buildup.profiles.outline.Point;

/**
 * A traced point.
 *
 * @param number its place in the tracing, from 1, all trails in their order
 */
record Dot(Point at, int number) {
    Dot scaled(double factor) {
        return new Dot(at.times(factor), number);
    }
}
