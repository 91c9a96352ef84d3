package buildup.engine.hold.fixing;

import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;

/**
 * A place on the face of a body.
 *
 * @param member that it is on
 * @param inward unit step square into the wood
 */
record Spot(int body, Point at, String member, Point inward) {
    /** The place on the outline nearest to {@code p}; at a corner, on the first of the strokes that meet there. */
    static Spot nearest(int body, Outline outline, Point p) {
        Stroke best = outline.strokes().get(0);
        for (Stroke stroke : outline.strokes()) {
            // by a margin: strokes that share the place must not be told apart by rounding
            if (stroke.segment().distance(p) < best.segment().distance(p) - Tolerance.COINCIDENT) {
                best = stroke;
            }
        }
        return on(body, best, best.segment().nearest(p));
    }

    static Spot on(int body, Stroke stroke, double t) {
        Segment segment = stroke.segment();
        return new Spot(
                body, segment.at(t), stroke.member(), segment.direction(t).left());
    }

    /**
     * The way of a nail so many degrees off square: up when positive, on a level face toward the wall. Turning to the
     * right tilts a nail that goes toward the wall upward.
     */
    Point way(double degrees) {
        double side = inward.x() > Tolerance.LEVEL_FACE ? 1 : -1;
        double turn = side * Math.toRadians(degrees);
        double level = Math.abs(inward.x()) > Tolerance.LEVEL_FACE ? 1 : inward.y() > 0 ? -1 : 1;
        double cos = Math.cos(turn);
        double sin = Math.sin(turn) * level;
        return new Point(inward.x() * cos - inward.y() * sin, inward.x() * sin + inward.y() * cos);
    }

    /** A step out of the wood, to see what lies over the spot. */
    Point outside(double inches) {
        return at.minus(inward.times(inches));
    }

    /** Back, front, bottom or top, by where the face looks. */
    String side() {
        if (Math.abs(inward.x()) >= Math.abs(inward.y())) {
            return inward.x() < 0 ? "front" : "back";
        }
        return inward.y() < 0 ? "top" : "bottom";
    }
}
