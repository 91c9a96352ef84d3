package buildup.engine.room.run;

import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;

/**
 * Where a stretch lies in the plan, seen from above with the wall up the page and the room below.
 *
 * @param start its left end on the wall plane, in
 * @param along unit step from left to right
 */
public record Frame(Point start, Point along) {
    /** A place so far along the wall and so far out into the room. */
    public Point at(double length, double projection) {
        return start.plus(along.times(length)).plus(along.right().times(projection));
    }

    /** The frame that begins where a stretch of that length ends, turned so many degrees to the left. */
    Frame next(double length, double turn) {
        return new Frame(at(length, 0), Motion.turn(turn).apply(along));
    }

    /** The frame of a stretch of no length that ends where this one begins, before a turn of so many degrees left. */
    Frame before(double turn) {
        return new Frame(start, Motion.turn(-turn).apply(along));
    }
}
