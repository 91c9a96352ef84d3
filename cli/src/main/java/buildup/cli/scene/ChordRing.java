package buildup.cli.scene;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** A closed ring of chords, asked where it lies along level and upright lines; inside is what an odd count encloses. */
public final class ChordRing {
    private final List<Point> points;
    private final Box box;
    private final List<Line> chords;
    /** Of the chords, by height and by distance from the wall. */
    private final Bands level;

    private final Bands upright;

    /** A stretch of a line, from less to more. */
    public record Span(double from, double to) {
        /** How long the span is, in of paper. */
        public double length() {
            return to - from;
        }
    }

    private ChordRing(List<Point> points) {
        this.points = List.copyOf(points);
        this.box = Box.around(points.stream().map(p -> Box.of(p, p)).toList());
        this.chords = Line.ring(points);
        this.level = Bands.of(
                chords,
                line -> Math.min(line.from().y(), line.to().y()),
                line -> Math.max(line.from().y(), line.to().y()));
        this.upright = Bands.of(
                chords,
                line -> Math.min(line.from().x(), line.to().x()),
                line -> Math.max(line.from().x(), line.to().x()));
    }

    /** The ring of a closed walk, its chords at most {@code chordError} inches off. */
    public static ChordRing of(List<? extends Segment> walk, double chordError) {
        List<Point> points = new ArrayList<>();
        for (Segment segment : walk) {
            List<Point> chords = segment.flattened(chordError);
            points.addAll(chords.subList(0, chords.size() - 1));
        }
        return new ChordRing(points);
    }

    /** The corners, in the order of the walk. */
    public List<Point> points() {
        return points;
    }

    /** The box round all of them. */
    public Box box() {
        return box;
    }

    /** The chords, each from one point to the next; the last point's is the first. */
    public List<Line> chords() {
        return chords;
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
        for (int number : (level ? this.level : upright).at(at)) {
            Point a = chords.get(number).from();
            Point b = chords.get(number).to();
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

    /** Whether a point lies in it. */
    public boolean holds(Point p) {
        return level(p.y()).stream().anyMatch(span -> span.from() <= p.x() && p.x() <= span.to());
    }

    /** Whether the ring's inside and a box share more than an edge. */
    public boolean meets(Box other) {
        if (!box.near(other, 0)) {
            return false;
        }
        if (holds(other.middle())) {
            return true;
        }
        return crosses(other);
    }

    /** Whether the ring's edge passes through a box. */
    public boolean crosses(Box other) {
        return anyNear(other, line -> Boxes.crosses(other, line.from(), line.to()));
    }

    /**
     * Whether any chord answers a question, asking at least those that meet a box, each once. The order is that of the
     * bands that they lie in.
     */
    public boolean anyNear(Box other, Predicate<Line> question) {
        int lowest = level.band(other.bottom());
        int highest = level.band(other.top());
        int nearest = upright.band(other.back());
        int farthest = upright.band(other.face());
        boolean byHeight = highest - lowest <= farthest - nearest;
        Bands bands = byHeight ? level : upright;
        int from = byHeight ? lowest : nearest;
        int to = byHeight ? highest : farthest;
        for (int band = from; band <= to; band++) {
            for (int number : bands.in(band)) {
                if (!bands.isMet(number, band, from) && question.test(chords.get(number))) {
                    return true;
                }
            }
        }
        return false;
    }
}
