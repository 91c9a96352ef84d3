package buildup.profiles.member;

import buildup.profiles.outline.Point;

/** A level or upright direction of the walk, in the words of the stack language. */
public enum Way {
    OUT(1, 0),
    UP(0, 1),
    IN(-1, 0),
    DOWN(0, -1);

    private final Point unit;

    Way(double x, double y) {
        unit = new Point(x, y);
    }

    /** A step of one inch that way. */
    public Point unit() {
        return unit;
    }
}
