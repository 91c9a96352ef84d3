package buildup.engine.look.view;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/** A stretch of a body's segment on which the key runs one way: between its ends, seams and grazing points. */
final class Sweep {
    /** How two stretches lie to each other over all keys that they share. */
    enum Order {
        NEARER,
        FARTHER,
        /** On one straight line. */
        LEVEL,
        /** They may pass each other, or are not straight. */
        UNKNOWN
    }

    private static final List<Double> WHOLE = List.of(0.0, 1.0);

    private static final double HALF_TURN = Viewpoint.Near.TURN / 2;

    private final Viewpoint view;
    private final Segment segment;
    private final int body;
    private final double start;
    private final double end;
    private final double low;
    private final double high;
    /** The ends of its segment and how long the way between them is, in: asked for whenever two stretches are compared. */
    private final double fromX;

    private final double fromY;
    private final double toX;
    private final double toY;
    private final double length;
    private final boolean straight;

    private Sweep(Viewpoint view, Segment segment, int body, double start, double end, double low, double high) {
        this.view = view;
        this.segment = segment;
        this.body = body;
        this.start = start;
        this.end = end;
        this.low = low;
        this.high = high;
        this.straight = segment instanceof Line;
        this.fromX = segment.from().x();
        this.fromY = segment.from().y();
        this.toX = segment.to().x();
        this.toY = segment.to().y();
        this.length = Math.sqrt((toX - fromX) * (toX - fromX) + (toY - fromY) * (toY - fromY));
    }

    Viewpoint view() {
        return view;
    }

    Segment segment() {
        return segment;
    }

    int body() {
        return body;
    }

    /** Its places on the segment, t. */
    double start() {
        return start;
    }

    double end() {
        return end;
    }

    /** The keys between which it lies. */
    double low() {
        return low;
    }

    double high() {
        return high;
    }

    /**
     * How it lies to another. Of two straight segments that do not pass each other one lies wholly to one side of the
     * other's line, and a segment that faces the viewpoint has it on its right.
     */
    Order against(Sweep other) {
        if (!straight || !other.straight) {
            return Order.UNKNOWN;
        }
        Order here = sideOf(other);
        if (here != Order.UNKNOWN) {
            return here;
        }
        return switch (other.sideOf(this)) {
            case NEARER -> Order.FARTHER;
            case FARTHER -> Order.NEARER;
            default -> Order.UNKNOWN;
        };
    }

    /** Nearer where all of another line lies on the left of this one, farther where all of it lies on its right. */
    private Order sideOf(Sweep other) {
        double from = left(other.fromX, other.fromY);
        double to = left(other.toX, other.toY);
        double least = Math.min(from, to);
        double most = Math.max(from, to);
        double rounding = Tolerance.COINCIDENT * length;
        if (least >= -rounding) {
            return most > Tolerance.SNAP * length ? Order.NEARER : most <= rounding ? Order.LEVEL : Order.UNKNOWN;
        }
        return most <= rounding && least < -Tolerance.SNAP * length ? Order.FARTHER : Order.UNKNOWN;
    }

    /** How far a place lies to the left of the way along this line, times the length of that way. */
    private double left(double x, double y) {
        return (toX - fromX) * (y - fromY) - (toY - fromY) * (x - fromX);
    }

    /** The stretches of a segment that face the viewpoint (key falling along the walk), edge-on ones left out. */
    static List<Sweep> facing(Viewpoint view, Segment segment, int body) {
        if (segment instanceof Line line && !view.mayFace(line)) {
            return List.of();
        }
        List<Double> cuts = cuts(view, segment);
        if (segment instanceof Line && cuts.size() == 2) {
            return whole(view, segment, body);
        }
        List<Sweep> facing = new ArrayList<>();
        for (int i = 0; i + 1 < cuts.size(); i++) {
            double start = cuts.get(i);
            double end = cuts.get(i + 1);
            if (end - start <= Tolerance.EDGE_ON) {
                continue;
            }
            double first = view.key(segment.at(start));
            double last = view.key(segment.at(end));
            if (Math.abs(first - last) > HALF_TURN) {
                // one of them lies on the seam, and has two keys: its own is the one on the side of the stretch
                double middle = view.key(segment.at((start + end) / 2));
                first = beside(view, first, middle);
                last = beside(view, last, middle);
            }
            if (first - last > Tolerance.EDGE_ON) {
                facing.add(new Sweep(view, segment, body, start, end, last, first));
            }
        }
        return facing;
    }

    /** Of a straight segment on no seam, which faces the viewpoint with all of it or not at all. */
    private static List<Sweep> whole(Viewpoint view, Segment segment, int body) {
        double first = view.key(segment.from());
        double last = view.key(segment.to());
        if (Math.abs(first - last) > HALF_TURN) {
            // one end lies on the seam
            double middle = view.key(segment.at(0.5));
            first = beside(view, first, middle);
            last = beside(view, last, middle);
        }
        return first - last > Tolerance.EDGE_ON
                ? List.of(new Sweep(view, segment, body, 0, 1, last, first))
                : List.of();
    }

    private static double beside(Viewpoint view, double key, double middle) {
        boolean turns = view instanceof Viewpoint.Near;
        return turns && key - middle > HALF_TURN
                ? key - Viewpoint.Near.TURN
                : turns && middle - key > HALF_TURN ? key + Viewpoint.Near.TURN : key;
    }

    /** Sorted t at which the run of the key may turn, 0 and 1 included. */
    private static List<Double> cuts(Viewpoint view, Segment segment) {
        List<Double> seams = view.seams(segment);
        if (segment instanceof Line && seams.isEmpty()) {
            return WHOLE;
        }
        List<Double> cuts = new ArrayList<>(WHOLE);
        cuts.addAll(seams);
        if (segment instanceof Arc arc) {
            for (double angle : view.grazing(arc)) {
                double t = arc.atAngle(angle);
                if (t > 0 && t < 1) {
                    cuts.add(t);
                }
            }
        }
        cuts.sort(null);
        return cuts;
    }

    /** The t at which the ray of a key meets this stretch. */
    double at(double key) {
        if (key >= high) {
            return start;
        }
        if (key <= low) {
            return end;
        }
        Line ray = view.ray(key);
        Point way = ray.to().minus(ray.from());
        double t = segment instanceof Line line ? onLine(line, ray.from(), way) : onArc((Arc) segment, ray.from(), way);
        return Math.max(start, Math.min(end, t));
    }

    private static double onLine(Line line, Point from, Point way) {
        Point along = line.to().minus(line.from());
        return from.minus(line.from()).cross(way) / along.cross(way);
    }

    /** Of the two meetings of ray and circle, the one nearest the stretch. */
    private double onArc(Arc arc, Point from, Point way) {
        Point toCenter = arc.center().minus(from);
        double along = toCenter.dot(way);
        double off = way.cross(toCenter);
        double half = Math.sqrt(Math.max(0, (arc.radius() - Math.abs(off)) * (arc.radius() + Math.abs(off))));
        double first = arc.atAngle(
                from.plus(way.times(along - half)).minus(arc.center()).angle());
        double second = arc.atAngle(
                from.plus(way.times(along + half)).minus(arc.center()).angle());
        return outside(first) <= outside(second) ? first : second;
    }

    private double outside(double t) {
        return Math.max(0, Math.max(start - t, t - end));
    }

    double depth(double key) {
        return view.depth(segment.at(at(key)));
    }
}
