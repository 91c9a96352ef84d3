package buildup.profiles.trace;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Soundness;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.trace.fit.Corners;
import buildup.profiles.trace.fit.Fitting;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes an outline with named members of a ring of curves, and measures how far the points lie from it. */
final class Finishing {
    /** The finest step of a rule. */
    private static final double FINEST = 64;

    /** A round of a longer turn is a bead, a shorter one an ovolo; radians. */
    private static final double BEAD = Math.toRadians(120);

    private Finishing() {}

    static Optional<Traced> of(Fitting fitting) {
        Optional<List<Segment>> segments = Corners.segments(fitting.curves(), fitting.kinds(), fitting.starts())
                .map(Finishing::tidy)
                .map(Finishing::fromBack);
        if (segments.isEmpty()) {
            return Optional.empty();
        }
        List<Stroke> strokes = named(segments.get());
        boolean sound = Soundness.faults(strokes).isEmpty();
        return sound ? Optional.of(measured(Outline.closed(strokes), fitting)) : Optional.empty();
    }

    /** Coordinates that lie on a step of the rule but for rounding are put on it. */
    private static List<Segment> tidy(List<Segment> segments) {
        return segments.stream()
                .map(segment -> segment instanceof Arc arc
                        ? new Arc(tidy(arc.from()), tidy(arc.to()), tidy(arc.center()), arc.counterclockwise())
                        : (Segment) new Line(tidy(segment.from()), tidy(segment.to())))
                .toList();
    }

    /** From the lower end of the back on, as profile words go. */
    private static List<Segment> fromBack(List<Segment> ring) {
        int start = 0;
        for (int i = 1; i < ring.size(); i++) {
            Point best = ring.get(start).from();
            Point p = ring.get(i).from();
            boolean further = p.x() < best.x() - Tolerance.SNAP;
            start = further || (p.x() <= best.x() + Tolerance.SNAP && p.y() < best.y()) ? i : start;
        }
        List<Segment> turned = new ArrayList<>(ring);
        Collections.rotate(turned, -start);
        return turned;
    }

    private static Point tidy(Point p) {
        return new Point(tidy(p.x()), tidy(p.y()));
    }

    private static double tidy(double size) {
        double step = Math.rint(size * FINEST) / FINEST;
        return Math.abs(step - size) <= Tolerance.COINCIDENT ? step + 0.0 : size;
    }

    private static List<Stroke> named(List<Segment> segments) {
        Box box = Box.around(segments.stream().map(Segment::box).toList());
        List<String> plain = new ArrayList<>();
        for (int i = 0; i < segments.size(); i++) {
            plain.add(name(segments, i, box));
        }
        Map<String, Integer> used = new HashMap<>();
        List<Stroke> strokes = new ArrayList<>();
        boolean half = false;
        for (int i = 0; i < segments.size(); i++) {
            String name = plain.get(i);
            // both halves of a cyma are one member
            half = name.startsWith("cyma") && !half && i > 0 && plain.get(i - 1).equals(name);
            int times = used.merge(name, half ? 0 : 1, Integer::sum);
            strokes.add(new Stroke(segments.get(i), times <= 1 ? name : name + "-" + times));
        }
        return strokes;
    }

    private static String name(List<Segment> segments, int i, Box box) {
        if (segments.get(i) instanceof Line line) {
            return name(line, box);
        }
        Arc arc = (Arc) segments.get(i);
        for (int other : List.of(i - 1, i + 1)) {
            if (other >= 0
                    && other < segments.size()
                    && segments.get(other) instanceof Arc next
                    && ogee(arc, next, other > i)) {
                Arc outermost = arc.at(0.5).x() > next.at(0.5).x() ? arc : next;
                return outermost.counterclockwise() ? "cyma-reversa" : "cyma-recta";
            }
        }
        if (!arc.counterclockwise()) {
            return Math.abs(arc.sweep()) > BEAD ? "scotia" : "cove";
        }
        return arc.sweep() > BEAD ? "bead" : "ovolo";
    }

    /** Whether two arcs are one double curve: bent opposite ways, alike, going over into each other. */
    private static boolean ogee(Arc arc, Arc other, boolean follows) {
        double alike = arc.radius() / other.radius();
        Point out = follows ? arc.direction(1) : other.direction(1);
        Point in = follows ? other.direction(0) : arc.direction(0);
        return arc.counterclockwise() != other.counterclockwise()
                && alike > 0.8
                && alike < 1.25
                && out.near(in, Tolerance.SAME_DIRECTION);
    }

    private static String name(Line line, Box box) {
        boolean upright = Tolerance.same(line.from().x(), line.to().x());
        boolean level = Tolerance.same(line.from().y(), line.to().y());
        if (upright && Tolerance.same(line.from().x(), box.back())) {
            return "back";
        }
        if (level && Tolerance.same(line.from().y(), box.bottom())) {
            return "bottom";
        }
        if (level && Tolerance.same(line.from().y(), box.top())) {
            return "top";
        }
        if (upright && Tolerance.same(line.from().x(), box.face())) {
            return "face";
        }
        return upright || level ? "fillet" : "chamfer";
    }

    private static Traced measured(Outline outline, Fitting fitting) {
        List<Stroke> strokes = outline.strokes();
        List<List<Point>> on = new ArrayList<>();
        strokes.forEach(stroke -> on.add(new ArrayList<>()));
        List<Point> all = fitting.points().stream().flatMap(List::stream).toList();
        Point farthest = all.get(0);
        double far = 0;
        double sum = 0;
        for (Point p : all) {
            int best = nearest(strokes, p);
            double off = strokes.get(best).segment().distance(p);
            on.get(best).add(p);
            sum += off * off;
            if (off > far) {
                far = off;
                farthest = p;
            }
        }
        List<Traced.Fit> members = new ArrayList<>();
        for (int i = 0; i < strokes.size(); i++) {
            members.add(fit(strokes.get(i), on.get(i)));
        }
        return new Traced(outline, all, members, farthest, far, Math.sqrt(sum / all.size()), fitting.noise());
    }

    private static Traced.Fit fit(Stroke stroke, List<Point> on) {
        Segment segment = stroke.segment();
        double largest = 0;
        double squares = 0;
        double[] along = new double[on.size() + 2];
        along[1] = segment.length();
        for (int i = 0; i < on.size(); i++) {
            double off = segment.distance(on.get(i));
            largest = Math.max(largest, off);
            squares += off * off;
            along[i + 2] = segment.nearest(on.get(i)) * segment.length();
        }
        Arrays.sort(along);
        int widest = 0;
        for (int i = 1; i + 1 < along.length; i++) {
            widest = along[i + 1] - along[i] > along[widest + 1] - along[widest] ? i : widest;
        }
        double unseen = along[widest + 1] - along[widest];
        Point middle = segment.at((along[widest] + along[widest + 1]) / 2 / segment.length());
        return new Traced.Fit(
                stroke.member(), on.size(), largest, Math.sqrt(squares / Math.max(1, on.size())), unseen, middle);
    }

    private static int nearest(List<Stroke> strokes, Point p) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < strokes.size(); i++) {
            double off = strokes.get(i).segment().distance(p);
            if (off < least) {
                least = off;
                best = i;
            }
        }
        return best;
    }
}
