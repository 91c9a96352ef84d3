package buildup.profiles.outline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Places at which two outlines come near each other: at a corner of one, or where an arc is tangent. */
public final class NearPoints {
    /** Approaches of two outlines nearer than this to each other are at one place, in. */
    public static final double ONE_PLACE = 4 * Tolerance.TOUCHING;

    /**
     * A place of approach.
     *
     * @param at the corner of either, or the foot on an arc
     * @param onFirst the point of the first outline there; {@code at} itself or the nearest to it
     * @param onSecond the same of the second
     */
    public record NearPoint(Point at, Point onFirst, Point onSecond) {
        /** From the one to the other, in. */
        public double distance() {
            return onFirst.distance(onSecond);
        }
    }

    private NearPoints() {}

    /** One for each place at which they come within touching, the nearest first taken. */
    public static List<NearPoint> of(Outline a, Outline b) {
        return of(a, b, Tolerance.TOUCHING);
    }

    /** The same for places nearer than {@code within}, in. */
    public static List<NearPoint> of(Outline a, Outline b, double within) {
        List<NearPoint> kept = new ArrayList<>();
        for (NearPoint one : all(a, b, within)) {
            if (kept.stream().noneMatch(other -> other.at.near(one.at, ONE_PLACE))) {
                kept.add(one);
            }
        }
        return kept;
    }

    /** Every approach nearer than {@code within}, in, also several at one place, the nearest first. */
    public static List<NearPoint> all(Outline a, Outline b, double within) {
        List<NearPoint> found = new ArrayList<>();
        for (Stroke first : a.strokes()) {
            if (!first.segment().box().near(b.box(), within)) {
                continue;
            }
            for (Stroke second : b.strokes()) {
                if (first.segment().box().near(second.segment().box(), within)) {
                    meet(first.segment(), second.segment(), found);
                }
            }
        }
        found.removeIf(one -> one.distance() >= within);
        found.sort(Comparator.comparingDouble((NearPoint one) -> Math.rint(one.distance() / Tolerance.SNAP))
                .thenComparingDouble(one -> one.at.y())
                .thenComparingDouble(one -> one.at.x()));
        return found;
    }

    private static void meet(Segment a, Segment b, List<NearPoint> out) {
        fromFirst(a.from(), b, out);
        fromSecond(b.from(), a, out);
        if (a instanceof Arc arc) {
            feet(arc, b).forEach(p -> fromFirst(p, b, out));
        } else if (b instanceof Arc arc) {
            feet(arc, a).forEach(p -> fromSecond(p, a, out));
        }
    }

    private static void fromFirst(Point p, Segment second, List<NearPoint> out) {
        out.add(new NearPoint(p, p, second.at(second.nearest(p))));
    }

    private static void fromSecond(Point p, Segment first, List<NearPoint> out) {
        out.add(new NearPoint(p, first.at(first.nearest(p)), p));
    }

    /** The points of an arc at which its normal goes through the nearest of the other segment. */
    private static List<Point> feet(Arc arc, Segment other) {
        Point way;
        if (other instanceof Line line) {
            way = line.direction(0).left();
        } else {
            way = ((Arc) other).center().minus(arc.center()).unit();
        }
        List<Point> feet = new ArrayList<>();
        if (way.length() > 0) {
            for (Point spoke : List.of(way, way.times(-1))) {
                double t = arc.atAngle(spoke.angle());
                if (t > 0 && t < 1) {
                    feet.add(arc.at(t));
                }
            }
        }
        return feet;
    }
}
