package buildup.profiles.trace.ring;

import buildup.profiles.outline.Point;

/**
 * A traced point.
 *
 * @param number its place in the tracing, from 1, all trails in their order
 * @param open whether nothing was drawn from here to the next point of the ring
 */
public record Dot(Point at, int number, boolean open) {
    /** A point from which the line goes on. */
    public Dot(Point at, int number) {
        this(at, number, false);
    }

    /** The same point, the line going on from it or not. */
    Dot opened(boolean gap) {
        return new Dot(at, number, gap);
    }
}
