package buildup.engine.hold.season;

import buildup.profiles.outline.Point;

/**
 * By what share wood grows in the plane of the section; symmetric.
 *
 * @param out growth of what lies out, for every inch out
 * @param both growth out for every inch up, and up for every inch out: of a stick that leans
 * @param up growth of what stands, for every inch up
 */
public record Strain(double out, double both, double up) {
    static final Strain NONE = new Strain(0, 0, 0);

    /** So much along a direction, and so much square to it. */
    static Strain along(Point way, double along, double square) {
        double x = way.x();
        double y = way.y();
        return new Strain(along * x * x + square * y * y, (along - square) * x * y, along * y * y + square * x * x);
    }

    /** How far the end of a step moves when its beginning stays. */
    Point of(Point step) {
        return new Point(out * step.x() + both * step.y(), both * step.x() + up * step.y());
    }
}
