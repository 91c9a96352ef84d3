package buildup.profiles.curve;

import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A cubic Bezier curve: two ends and two handles. */
public record Bezier(Point from, Point first, Point second, Point to) implements DrawnCurve {
    /** What one point does to the next is less than a third at each further one: 3^-24 is below rounding. */
    private static final int RING_OVERLAP = 32;

    /** The quadratic curve with one handle, raised to a cubic. */
    public static Bezier quadratic(Point from, Point handle, Point to) {
        return new Bezier(from, from.towards(handle, 2.0 / 3), to.towards(handle, 2.0 / 3), to);
    }

    /**
     * The curves of a cubic spline through points: its second derivative is continuous over chord lengths, and nothing at
     * an end without a direction (C. de Boor, "A Practical Guide to Splines", 1978, chapter IV, cited from memory).
     *
     * @param points at least two; equal neighbors count once
     * @param start direction at the first, if it is given
     * @param end direction at the last, if it is given
     * @param closed whether it goes on from the last to the first
     */
    public static List<DrawnCurve> through(
            List<Point> points, Optional<Point> start, Optional<Point> end, boolean closed) {
        List<Point> stops = new ArrayList<>();
        for (Point p : points) {
            if (stops.isEmpty() || !stops.get(stops.size() - 1).near(p, 0)) {
                stops.add(p);
            }
        }
        if (closed && !stops.get(0).near(stops.get(stops.size() - 1), 0)) {
            stops.add(stops.get(0));
        }
        if (stops.size() < 2) {
            return List.of(new Straight(points.get(0), points.get(0)));
        }
        int n = stops.size();
        double[] chords = new double[n - 1];
        for (int i = 0; i < n - 1; i++) {
            chords[i] = stops.get(i).distance(stops.get(i + 1));
        }
        Point[] ways = closed && n > 3 ? ringWays(stops, chords) : openWays(stops, chords, start, end);
        List<DrawnCurve> curves = new ArrayList<>();
        for (int i = 0; i < n - 1; i++) {
            curves.add(new Bezier(
                    stops.get(i),
                    stops.get(i).plus(ways[i].times(chords[i] / 3)),
                    stops.get(i + 1).minus(ways[i + 1].times(chords[i] / 3)),
                    stops.get(i + 1)));
        }
        return curves;
    }

    /** First derivatives at the points, from the equations of continuous second ones, by elimination. */
    private static Point[] openWays(List<Point> stops, double[] chords, Optional<Point> start, Optional<Point> end) {
        int n = stops.size();
        double[] below = new double[n];
        double[] on = new double[n];
        double[] above = new double[n];
        Point[] right = new Point[n];
        on[0] = start.isPresent() ? 1 : 2;
        above[0] = start.isPresent() ? 0 : 1;
        right[0] =
                start.map(Point::unit).orElseGet(() -> slope(stops, chords, 0).times(3));
        on[n - 1] = end.isPresent() ? 1 : 2;
        below[n - 1] = end.isPresent() ? 0 : 1;
        right[n - 1] =
                end.map(Point::unit).orElseGet(() -> slope(stops, chords, n - 2).times(3));
        for (int i = 1; i < n - 1; i++) {
            below[i] = chords[i];
            on[i] = 2 * (chords[i - 1] + chords[i]);
            above[i] = chords[i - 1];
            right[i] = slope(stops, chords, i - 1)
                    .times(chords[i])
                    .plus(slope(stops, chords, i).times(chords[i - 1]))
                    .times(3);
        }
        for (int i = 1; i < n; i++) {
            double factor = below[i] / on[i - 1];
            on[i] -= factor * above[i - 1];
            right[i] = right[i].minus(right[i - 1].times(factor));
        }
        right[n - 1] = right[n - 1].times(1 / on[n - 1]);
        for (int i = n - 2; i >= 0; i--) {
            right[i] = right[i].minus(right[i + 1].times(above[i])).times(1 / on[i]);
        }
        return right;
    }

    /** The same round a ring: what is far away counts for little, so a few points more on either side close it. */
    private static Point[] ringWays(List<Point> stops, double[] chords) {
        int n = stops.size() - 1;
        int more = Math.min(n, RING_OVERLAP);
        List<Point> longer = new ArrayList<>();
        double[] steps = new double[n + 2 * more];
        for (int i = -more; i <= n + more; i++) {
            longer.add(stops.get(Math.floorMod(i, n)));
            if (i < n + more) {
                steps[i + more] = chords[Math.floorMod(i, n)];
            }
        }
        Point[] ways = openWays(longer, steps, Optional.empty(), Optional.empty());
        return Arrays.copyOfRange(ways, more, more + n + 1);
    }

    private static Point slope(List<Point> stops, double[] chords, int i) {
        return stops.get(i + 1).minus(stops.get(i)).times(1 / chords[i]);
    }

    @Override
    public Point at(double t) {
        if (t <= 0 || t >= 1) {
            return t <= 0 ? from : to;
        }
        Point a = from.towards(first, t);
        Point b = first.towards(second, t);
        Point c = second.towards(to, t);
        return a.towards(b, t).towards(b.towards(c, t), t);
    }

    @Override
    public Bezier moved(Affine map) {
        return new Bezier(map.apply(from), map.apply(first), map.apply(second), map.apply(to));
    }

    /**
     * A chord over a step h of the parameter strays by at most h^2/8 of the second derivative, which is at most six times
     * the greater of the two second differences of the four points: error of linear interpolation.
     */
    @Override
    public int chords(double chordError) {
        double bend = 6
                * Math.max(
                        from.minus(first.times(2)).plus(second).length(),
                        first.minus(second.times(2)).plus(to).length());
        double chords = Math.sqrt(bend / (8 * chordError));
        return straight(chordError) ? 1 : DrawnCurve.bounded(chords);
    }

    /** Whether both handles lie on the line between the ends, so that nothing of it leaves the line. */
    private boolean straight(double within) {
        return onChord(first, within / 2) && onChord(second, within / 2);
    }

    private boolean onChord(Point handle, double within) {
        Point chord = to.minus(from);
        double length = chord.length();
        Point step = handle.minus(from);
        return length > 0
                && Math.abs(chord.cross(step)) <= within * length
                && chord.dot(step) >= 0
                && chord.dot(step) <= length * length;
    }
}
