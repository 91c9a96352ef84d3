package buildup.profiles.trace;

import buildup.profiles.outline.Point;

/** Where the back of a profile lies in the tracing as drawn. */
public enum TracedSide {
    /** As profiles are drawn: the room on the right. */
    LEFT(new Point(-1, 0)),
    /** The tracing is turned round. */
    RIGHT(new Point(1, 0)),
    /** The tracing lies on its face. */
    UP(new Point(0, 1)),
    /** The tracing lies on its back. */
    DOWN(new Point(0, -1));

    private final Point outward;

    TracedSide(Point outward) {
        this.outward = outward;
    }

    /** From the wood to the wall. */
    Point outward() {
        return outward;
    }
}
