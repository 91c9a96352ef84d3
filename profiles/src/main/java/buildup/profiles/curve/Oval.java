package buildup.profiles.curve;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.Optional;

/**
 * An arc of an ellipse, in any place and however stretched: center + u cos(a) + v sin(a), for a from {@code start} over
 * {@code sweep}. A circle's u and v are square to each other and alike.
 *
 * @param start radians
 * @param sweep radians, at most a full turn either way
 */
public record Oval(Point from, Point to, Point center, Point u, Point v, double start, double sweep)
        implements DrawnCurve {
    /** The arc between two angles, its ends worked out. */
    public static Oval of(Point center, Point u, Point v, double start, double sweep) {
        return new Oval(place(center, u, v, start), place(center, u, v, start + sweep), center, u, v, start, sweep);
    }

    /** An arc of a circle; angles in radians, counterclockwise where {@code sweep} is positive. */
    public static Oval circular(Point center, double radius, double start, double sweep) {
        return of(center, new Point(radius, 0), new Point(0, radius), start, sweep);
    }

    /**
     * The circular stretch of a polyline with a bulge, the tangent of a quarter of the angle swept (positive
     * counterclockwise); a straight line when the bulge is nothing.
     */
    public static Optional<DrawnCurve> bulged(Point from, Point to, double bulge) {
        if (!(Math.abs(bulge) < 1 / Tolerance.COINCIDENT)) {
            return Optional.empty();
        }
        Point chord = to.minus(from);
        if (Math.abs(bulge) < Tolerance.COINCIDENT || chord.length() <= 0) {
            return Optional.of(new Straight(from, to));
        }
        Point center = from.towards(to, 0.5).plus(chord.left().times((1 - bulge * bulge) / (4 * bulge)));
        Point u = from.minus(center);
        return Optional.of(new Oval(from, to, center, u, u.left(), 0, 4 * Math.atan(bulge)));
    }

    /**
     * The arc of an ellipse through two points, by its radii.
     *
     * @param tilt of the first radius, radians
     * @param large whether it sweeps more than half a turn
     * @param positive whether it sweeps toward greater angles
     * @see <a href="https://www.w3.org/TR/SVG11/implnote.html#ArcConversionEndpointToCenter">SVG 1.1, F.6.5 and F.6.6:
     *     from ends to center; radii too small for the ends are enlarged</a>
     */
    public static DrawnCurve between(
            Point from, Point to, double rx, double ry, double tilt, boolean large, boolean positive) {
        Point half = from.minus(to).times(0.5);
        if (!(rx > 0) || !(ry > 0) || half.length() <= 0) {
            return new Straight(from, to);
        }
        Point axis = Point.towards(tilt);
        // on the circle of radius 1 that the ellipse is stretched from
        Point own = new Point(half.dot(axis) / rx, half.dot(axis.left()) / ry);
        double square = own.dot(own);
        double grow = Math.max(1, Math.sqrt(square));
        double reach = Math.sqrt(Math.max(0, grow * grow / square - 1));
        Point off = own.right().times(large == positive ? -reach : reach);
        double start = Math.atan2(own.y() - off.y(), own.x() - off.x());
        double end = Math.atan2(-own.y() - off.y(), -own.x() - off.x());
        double sweep = end - start;
        if (positive && sweep < 0) {
            sweep += 2 * Math.PI;
        } else if (!positive && sweep > 0) {
            sweep -= 2 * Math.PI;
        }
        Point u = axis.times(rx * grow);
        Point v = axis.left().times(ry * grow);
        // the circle was grown so that it reaches the ends: in its own measure they are at own/grow
        Point center = from.towards(to, 0.5).plus(u.times(off.x() / grow)).plus(v.times(off.y() / grow));
        return new Oval(from, to, center, u, v, start, sweep);
    }

    private static Point place(Point center, Point u, Point v, double angle) {
        return center.plus(u.times(Math.cos(angle))).plus(v.times(Math.sin(angle)));
    }

    @Override
    public Point at(double t) {
        return t <= 0 ? from : t >= 1 ? to : place(center, u, v, start + t * sweep);
    }

    @Override
    public Oval moved(Affine map) {
        return new Oval(map.apply(from), map.apply(to), map.apply(center), map.step(u), map.step(v), start, sweep);
    }

    /**
     * From the sagitta of a chord of the circle: error = r (1 - cos(step/2)) = 2 r sin^2(step/4). An ellipse is a
     * circle of its longer half axis pressed flat, and pressing brings chord and curve nearer together; that half axis
     * is at most sqrt(u^2 + v^2).
     */
    @Override
    public int chords(double chordError) {
        double longest = Math.sqrt(u.dot(u) + v.dot(v));
        double widest = 4 * Math.asin(Math.sqrt(Math.min(1, chordError / (2 * longest))));
        return DrawnCurve.bounded(Math.abs(sweep) / widest);
    }
}
