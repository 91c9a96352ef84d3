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

    /** Stands for no front at all. */
    static final int NONE = -1;

    private final Viewpoint view;
    private final Segment segment;
    private final int body;
    private final double start;
    private final double end;
    private final double low;
    private final double high;
    /** The ends of its segment: asked for whenever two stretches are compared. */
    private final double fromX;

    private final double fromY;
    private final double toX;
    private final double toY;
    private final boolean straight;
    /** Whether it has met another one of which it was not plain which is nearer. */
    private boolean doubtful;

    /** Its highest front in the view, {@link #NONE} while it has none. */
    private int front = NONE;

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

    /** Whether what is seen of it has to be asked of each front before it: those that it met did not plainly win or lose. */
    boolean doubtful() {
        return doubtful;
    }

    /** Says that it met another of which it is not plain which is nearer. */
    void doubt() {
        doubtful = true;
    }

    /** The number of its highest front in the view it was made for, {@link #NONE} when nothing is seen of it. */
    int front() {
        return front;
    }

    /**
     * Says which is its highest front.
     *
     * @return the one before, below it
     */
    int nextFront(int highest) {
        int before = front;
        front = highest;
        return before;
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
        double alongX = toX - fromX;
        double alongY = toY - fromY;
        // how far the ends of the other lie to the left of the way along this line, times the length of that way
        double from = alongX * (other.fromY - fromY) - alongY * (other.fromX - fromX);
        double to = alongX * (other.toY - fromY) - alongY * (other.toX - fromX);
        // no less than the length, and no root to take
        double surely = Tolerance.SNAP * (Math.abs(alongX) + Math.abs(alongY));
        if (Math.abs(from) > surely && Math.abs(to) > surely) {
            return from > 0 != to > 0 ? Order.UNKNOWN : from > 0 ? Order.NEARER : Order.FARTHER;
        }
        return sideOf(from, to, Math.sqrt(alongX * alongX + alongY * alongY));
    }

    /** @param from, to how far two ends lie to the left, times the length of the line */
    private static Order sideOf(double from, double to, double length) {
        double rounding = Tolerance.COINCIDENT * length;
        double plain = Tolerance.SNAP * length;
        if (from >= -rounding && to >= -rounding) {
            if (from > plain || to > plain) {
                return Order.NEARER;
            }
            return from <= rounding && to <= rounding ? Order.LEVEL : Order.UNKNOWN;
        }
        boolean right = from <= rounding && to <= rounding;
        return right && (from < -plain || to < -plain) ? Order.FARTHER : Order.UNKNOWN;
    }

    /** The stretches of a segment that face the viewpoint (key falling along the walk), edge-on ones left out. */
    static List<Sweep> facing(Viewpoint view, Segment segment, int body) {
        List<Sweep> facing = new ArrayList<>(2);
        facing(view, segment, body, facing);
        return facing;
    }

    /** Adds those stretches to a list. */
    static void facing(Viewpoint view, Segment segment, int body, List<Sweep> facing) {
        if (segment instanceof Line line) {
            if (!view.mayFace(line)) {
                return;
            }
            double first = view.key(line.from());
            double last = view.key(line.to());
            if (!view.acrossSeam(first, last)) {
                whole(view, line, body, first, last, facing);
                return;
            }
        }
        List<Double> seams = view.seams(segment);
        if (segment instanceof Line line && seams.isEmpty()) {
            besideSeam(view, line, body, facing);
            return;
        }
        List<Double> cuts = cuts(view, segment, seams);
        for (int i = 0; i + 1 < cuts.size(); i++) {
            double start = cuts.get(i);
            double end = cuts.get(i + 1);
            if (end - start <= Tolerance.EDGE_ON) {
                continue;
            }
            double first = view.key(segment.at(start));
            double last = view.key(segment.at(end));
            if (view.acrossSeam(first, last)) {
                // one of them lies on the seam, and has two keys: its own is the one on the side of the stretch
                double middle = view.key(segment.at((start + end) / 2));
                first = beside(view, first, middle);
                last = beside(view, last, middle);
            }
            if (first - last > Tolerance.EDGE_ON) {
                facing.add(new Sweep(view, segment, body, start, end, last, first));
            }
        }
    }

    /** Of a straight segment across no seam, which faces the viewpoint with all of it or not at all. */
    private static void whole(Viewpoint view, Line line, int body, double first, double last, List<Sweep> facing) {
        if (first - last > Tolerance.EDGE_ON) {
            facing.add(new Sweep(view, line, body, 0, 1, last, first));
        }
    }

    /** Of a straight segment across no seam, an end of which may lie on one and has two keys then. */
    private static void besideSeam(Viewpoint view, Line line, int body, List<Sweep> facing) {
        double middle = view.key(line.at(0.5));
        whole(
                view,
                line,
                body,
                beside(view, view.key(line.from()), middle),
                beside(view, view.key(line.to()), middle),
                facing);
    }

    private static double beside(Viewpoint view, double key, double middle) {
        if (!view.acrossSeam(key, middle)) {
            return key;
        }
        return key > middle ? key - Viewpoint.Near.TURN : key + Viewpoint.Near.TURN;
    }

    /** Sorted t at which the run of the key may turn, 0 and 1 included. */
    private static List<Double> cuts(Viewpoint view, Segment segment, List<Double> seams) {
        List<Double> cuts = new ArrayList<>();
        cuts.add(0.0);
        cuts.add(1.0);
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
        double t;
        if (straight) {
            t = view.onLine(key, fromX, fromY, toX, toY);
        } else {
            Line ray = view.ray(key);
            t = onArc((Arc) segment, ray.from(), ray.to().minus(ray.from()));
        }
        return Math.max(start, Math.min(end, t));
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
