package buildup.profiles.trace.fit;

import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Where neighboring curves of a ring pass into each other: corners where they cross, tangent points where bound. */
public final class Corners {
    /** Long enough a piece of an endless line to find where it crosses others, in. */
    private static final double PIECE = 1;

    private Corners() {}

    /** How one curve of a ring meets the one before it. */
    public enum Kind {
        /** They cross. */
        CORNER,
        /** They touch, and the walk goes on. */
        SMOOTH,
        /** The two touch, and the walk turns right back. */
        CUSP
    }

    /**
     * The place where {@code b} takes over from {@code a}; nothing when they never meet.
     *
     * @param near about where the points say it is
     */
    public static Optional<Point> of(Curve a, Curve b, Kind kind, Point near) {
        return kind == Kind.CORNER ? crossing(a, b, near) : Optional.of(touching(a, b, kind));
    }

    private static Point touching(Curve a, Curve b, Kind kind) {
        if (a instanceof Curve.Round one && b instanceof Curve.Round other) {
            double apart = one.bend() - (kind == Kind.CUSP ? -other.bend() : other.bend());
            Point way = one.center().minus(other.center()).unit().times(Math.signum(apart));
            return one.center().minus(way.times(one.bend()));
        }
        return a instanceof Curve.Straight line ? line.foot(((Curve.Round) b).center()) : touching(b, a, kind);
    }

    private static Optional<Point> crossing(Curve a, Curve b, Point near) {
        return Crossings.ofCurves(piece(a, near), piece(b, near)).stream()
                .min(Comparator.comparingDouble(p -> p.distance(near)));
    }

    private static Segment piece(Curve curve, Point near) {
        Point foot = curve.foot(near);
        return curve instanceof Curve.Round round
                ? round.between(foot, round.center().times(2).minus(foot))
                : curve.between(foot, foot.plus(curve.heading(foot).times(PIECE)));
    }

    /** How sharply the walk turns from one curve into the next near a place, radians, 0 to pi. */
    public static double turn(Curve a, Curve b, Point near) {
        Point out = a.heading(near);
        Point in = b.heading(near);
        return Math.abs(Math.atan2(out.cross(in), out.dot(in)));
    }

    /**
     * The true segments of a ring of curves, each from where the one before it ends; nothing when two neighbors do not
     * meet.
     *
     * @param kinds how each curve meets the one before it
     * @param near about where each curve begins
     */
    public static Optional<List<Segment>> segments(List<Curve> curves, List<Kind> kinds, List<Point> near) {
        int n = curves.size();
        List<Point> starts = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Optional<Point> start = of(curves.get((i + n - 1) % n), curves.get(i), kinds.get(i), near.get(i));
            if (start.isEmpty()) {
                return Optional.empty();
            }
            starts.add(start.get());
        }
        List<Segment> segments = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            segments.add(curves.get(i).between(starts.get(i), starts.get((i + 1) % n)));
        }
        return Optional.of(segments);
    }
}
