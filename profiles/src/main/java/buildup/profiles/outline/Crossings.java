package buildup.profiles.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where the curves of two true segments meet; closed forms of line and circle. */
public final class Crossings {
    private Crossings() {}

    /**
     * The isolated meetings of two segments, at most two. Stretches that run on each other (parallel lines, arcs of
     * one circle) meet nowhere in this sense.
     *
     * @param slack how far, in inches, a meeting may lie beyond an end of either segment
     */
    public static List<Point> of(Segment a, Segment b, double slack) {
        List<Point> met = new ArrayList<>();
        for (Point p : ofCurves(a, b)) {
            if (a.distance(p) <= slack && b.distance(p) <= slack) {
                met.add(p);
            }
        }
        return met;
    }

    /** Where the endless lines through two segments meet; nothing when they are parallel. */
    public static Optional<Point> ofLines(Line a, Line b) {
        return lines(a, b).stream().findFirst();
    }

    /** Where the endless lines and whole circles meet that two segments are stretches of; at most two places. */
    public static List<Point> ofCurves(Segment a, Segment b) {
        if (a instanceof Line la) {
            return b instanceof Line lb ? lines(la, lb) : lineAndCircle(la, (Arc) b);
        }
        return b instanceof Line lb ? lineAndCircle(lb, (Arc) a) : circles((Arc) a, (Arc) b);
    }

    private static List<Point> lines(Line a, Line b) {
        Point u = a.direction(0);
        Point v = b.direction(0);
        double turn = u.cross(v);
        if (Math.abs(turn) < Tolerance.COINCIDENT) {
            return List.of();
        }
        return List.of(a.from().plus(u.times(b.from().minus(a.from()).cross(v) / turn)));
    }

    private static List<Point> lineAndCircle(Line line, Arc arc) {
        Point u = line.direction(0);
        Point foot = line.from().plus(u.times(arc.center().minus(line.from()).dot(u)));
        double r = arc.radius();
        double off = foot.distance(arc.center());
        if (off > r + Tolerance.COINCIDENT) {
            return List.of();
        }
        double half = Math.sqrt(Math.max(0, (r - off) * (r + off)));
        return half < Tolerance.COINCIDENT
                ? List.of(foot)
                : List.of(foot.minus(u.times(half)), foot.plus(u.times(half)));
    }

    private static List<Point> circles(Arc a, Arc b) {
        Point between = b.center().minus(a.center());
        double d = between.length();
        double ra = a.radius();
        double rb = b.radius();
        if (d < Tolerance.COINCIDENT
                || d > ra + rb + Tolerance.COINCIDENT
                || d < Math.abs(ra - rb) - Tolerance.COINCIDENT) {
            return List.of();
        }
        double along = (d * d + ra * ra - rb * rb) / (2 * d);
        double half = Math.sqrt(Math.max(0, (ra - along) * (ra + along)));
        Point u = between.unit();
        Point foot = a.center().plus(u.times(along));
        return half < Tolerance.COINCIDENT
                ? List.of(foot)
                : List.of(foot.plus(u.left().times(half)), foot.plus(u.right().times(half)));
    }
}
