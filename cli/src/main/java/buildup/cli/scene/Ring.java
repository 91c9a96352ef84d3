package buildup.cli.scene;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;

/** A closed ring of chords, asked where it lies along level and upright lines; inside is what an odd count encloses. */
public record Ring(List<Point> points, Box box) {
    /** A stretch of a line, from less to more. */
    public record Span(double from, double to) {
        public double length() {
            return to - from;
        }
    }

    public Ring {
        points = List.copyOf(points);
    }

    /** The ring of a closed walk, its chords at most {@code chordError} inches off. */
    public static Ring of(List<? extends Segment> walk, double chordError) {
        List<Point> points = new ArrayList<>();
        for (Segment segment : walk) {
            List<Point> chords = segment.flattened(chordError);
            points.addAll(chords.subList(0, chords.size() - 1));
        }
        return new Ring(
                points, Box.around(points.stream().map(p -> Box.of(p, p)).toList()));
    }

    /** The chords, each from one point to the next. */
    public List<Line> chords() {
        List<Line> chords = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            chords.add(new Line(points.get(i), points.get((i + 1) % points.size())));
        }
        return List.copyOf(chords);
    }

    /** The stretches of the level line at height {@code y} that lie inside. */
    public List<Span> level(double y) {
        return spans(y, true);
    }

    /** The stretches of the upright line at {@code x} that lie inside. */
    public List<Span> upright(double x) {
        return spans(x, false);
    }

    private List<Span> spans(double at, boolean level) {
        if (at < (level ? box.bottom() : box.back()) || at >= (level ? box.top() : box.face())) {
            return List.of();
        }
        List<Double> crossings = new ArrayList<>();
        for (int i = 0, j = points.size() - 1; i < points.size(); j = i++) {
            Point a = points.get(j);
            Point b = points.get(i);
            double across = level ? a.y() : a.x();
            double acrossEnd = level ? b.y() : b.x();
            // half open: a corner that the line passes through counts once, one that it only touches not or twice
            if (across > at != acrossEnd > at) {
                Point p = a.towards(b, (at - across) / (acrossEnd - across));
                crossings.add(level ? p.x() : p.y());
            }
        }
        crossings.sort(null);
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            if (crossings.get(i + 1) > crossings.get(i)) {
                spans.add(new Span(crossings.get(i), crossings.get(i + 1)));
            }
        }
        return spans;
    }

    public boolean holds(Point p) {
        return level(p.y()).stream().anyMatch(span -> span.from() <= p.x() && p.x() <= span.to());
    }

    /** Whether the ring's inside and a box share more than an edge. */
    public boolean meets(Box other) {
        if (!box.near(other, 0)) {
            return false;
        }
        if (holds(new Point((other.back() + other.face()) / 2, (other.bottom() + other.top()) / 2))) {
            return true;
        }
        return crosses(other);
    }

    /** Whether the ring's edge passes through a box. */
    public boolean crosses(Box other) {
        for (int i = 0, j = points.size() - 1; i < points.size(); j = i++) {
            if (Boxes.crosses(other, points.get(j), points.get(i))) {
                return true;
            }
        }
        return false;
    }
}
