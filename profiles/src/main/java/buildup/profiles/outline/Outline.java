package buildup.profiles.outline;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * A closed ring of true segments, walked counterclockwise with the wood on the left, each labeled with its member.
 * Made by {@link #closed}; a reader of user input asks {@link Soundness} first.
 */
public final class Outline {
    private final List<Stroke> strokes;
    private final Box box;
    /** Worked out when it is first asked for: a search asks for those of the same outlines again and again. */
    private double area = Double.NaN;

    private Optional<Point> centroid = Optional.empty();
    private List<Point> chords = List.of();

    private Outline(List<Stroke> strokes) {
        this.strokes = List.copyOf(strokes);
        Box around = this.strokes.get(0).segment().box();
        for (Stroke stroke : this.strokes) {
            around = around.with(stroke.segment().box());
        }
        this.box = around;
    }

    /**
     * The outline of a closed walk. Strokes shorter than {@link Tolerance#COINCIDENT} are dropped and a clockwise walk
     * is turned round; each stroke must begin where the one before it ends.
     *
     * @throws IllegalArgumentException if the walk is not closed or holds no area
     */
    public static Outline closed(List<Stroke> walk) {
        List<Stroke> kept = new ArrayList<>(walk.stream()
                .filter(stroke -> stroke.segment().length() > Tolerance.COINCIDENT)
                .toList());
        for (int i = 0; i < kept.size(); i++) {
            Point end = kept.get(i).segment().to();
            Point next = kept.get((i + 1) % kept.size()).segment().from();
            if (!end.near(next, Tolerance.SNAP)) {
                throw new IllegalArgumentException("walk leaves " + end + " and goes on from " + next);
            }
        }
        double area = twiceArea(kept);
        if (Math.abs(area) <= Tolerance.COINCIDENT) {
            throw new IllegalArgumentException("walk of " + walk.size() + " strokes closes no area");
        }
        return new Outline(area > 0 ? kept : reversed(kept));
    }

    /** A rectangle with the members back, face, bottom and top. */
    public static Outline rectangle(Box box) {
        Point low = new Point(box.back(), box.bottom());
        Point lowFace = new Point(box.face(), box.bottom());
        Point highFace = new Point(box.face(), box.top());
        Point high = new Point(box.back(), box.top());
        return closed(List.of(
                new Stroke(new Line(low, lowFace), "bottom"),
                new Stroke(new Line(lowFace, highFace), "face"),
                new Stroke(new Line(highFace, high), "top"),
                new Stroke(new Line(high, low), "back")));
    }

    private static double twiceArea(List<Stroke> strokes) {
        return strokes.stream()
                .mapToDouble(stroke -> stroke.segment().twiceArea())
                .sum();
    }

    private static List<Stroke> reversed(List<Stroke> strokes) {
        List<Stroke> back = new ArrayList<>();
        strokes.forEach(stroke -> back.add(stroke.reversed()));
        Collections.reverse(back);
        return back;
    }

    /** Its segments with the names of their members, counterclockwise, each ending where the next one starts. */
    public List<Stroke> strokes() {
        return strokes;
    }

    /** The same without the names. */
    public List<Segment> segments() {
        return strokes.stream().map(Stroke::segment).toList();
    }

    /** The least distance of a place from its walk, in: above 0 within the wood too. */
    public double distance(Point p) {
        return strokes.stream()
                .mapToDouble(stroke -> stroke.segment().distance(p))
                .min()
                .orElseThrow();
    }

    /** The least box round it, true for arcs too, in. */
    public Box box() {
        return box;
    }

    /** Exact area in square inches (Green's theorem over the true segments). */
    public double area() {
        if (Double.isNaN(area)) {
            area = enclosed();
        }
        return area;
    }

    private double enclosed() {
        // measured from a corner of its own: an outline far from the origin loses no digits
        Motion home = Motion.shift(-box.back(), -box.bottom());
        return strokes.stream()
                        .mapToDouble(stroke -> stroke.segment().moved(home).twiceArea())
                        .sum()
                / 2;
    }

    /** The center of its area, in, exact for arcs. */
    public Point centroid() {
        Point known = centroid.orElseGet(this::center);
        if (centroid.isEmpty()) {
            centroid = Optional.of(known);
        }
        return known;
    }

    private Point center() {
        Motion home = Motion.shift(-box.back(), -box.bottom());
        double twiceArea = 0;
        Point moment = Point.ORIGIN;
        for (Stroke stroke : strokes) {
            Segment segment = stroke.segment().moved(home);
            twiceArea += segment.twiceArea();
            moment = moment.plus(segment.moment());
        }
        return moment.times(2 / twiceArea).plus(new Point(box.back(), box.bottom()));
    }

    /** The length of all its segments, in, exact for arcs. */
    public double perimeter() {
        return strokes.stream().mapToDouble(stroke -> stroke.segment().length()).sum();
    }

    /** The same outline moved, counterclockwise also when the motion mirrors it. */
    public Outline moved(Motion motion) {
        if (motion.equals(Motion.NONE)) {
            return this;
        }
        List<Stroke> moved =
                strokes.stream().map(stroke -> stroke.moved(motion)).toList();
        return new Outline(motion.mirrors() ? reversed(moved) : moved);
    }

    /** The straight strokes of one member, in walking order. */
    public List<Line> straights(String member) {
        return strokes.stream()
                .filter(stroke -> stroke.member().equals(member))
                .map(Stroke::segment)
                .filter(Line.class::isInstance)
                .map(Line.class::cast)
                .toList();
    }

    /** The names of its members, each once, in the order of the walk. */
    public List<String> members() {
        return strokes.stream().map(Stroke::member).distinct().toList();
    }

    /** The ring of vertices within {@link Tolerance#CHORD} of the curve, first vertex not repeated. */
    public List<Point> chords() {
        if (chords.isEmpty()) {
            chords = List.copyOf(flattened(Tolerance.CHORD));
        }
        return chords;
    }

    /** The ring of vertices within {@code chordError} of the curve, first vertex not repeated. */
    public List<Point> flattened(double chordError) {
        List<Point> ring = new ArrayList<>();
        for (Stroke stroke : strokes) {
            List<Point> points = stroke.segment().flattened(chordError);
            ring.addAll(points.subList(0, points.size() - 1));
        }
        return ring;
    }

    /** Whether {@code p} lies within the wood: counted by crossings of a level ray with the true segments' chords. */
    public boolean holds(Point p) {
        return box.holds(p, 0) && isInside(chords(), p);
    }

    /** Whether {@code p} lies within the wood or touches it. */
    public boolean takes(Point p) {
        return box.holds(p, Tolerance.TOUCHING)
                && (holds(p)
                        || strokes.stream().anyMatch(stroke -> stroke.segment().distance(p) < Tolerance.TOUCHING));
    }

    /** Whether a closed walk, its first point not repeated, goes round a place: counted by crossings of a level ray. */
    public static boolean isInside(List<Point> ring, Point p) {
        boolean inside = false;
        for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
            Point a = ring.get(i);
            Point b = ring.get(j);
            if (a.y() > p.y() != b.y() > p.y() && p.x() < (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) + a.x()) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Whether the outline is four level and upright lines. */
    public boolean isRectangle() {
        if (strokes.size() != 4) {
            return false;
        }
        for (Stroke stroke : strokes) {
            if (!(stroke.segment() instanceof Line line)
                    || !(Tolerance.same(line.from().x(), line.to().x())
                            || Tolerance.same(line.from().y(), line.to().y()))) {
                return false;
            }
        }
        return true;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Outline outline && strokes.equals(outline.strokes);
    }

    @Override
    public int hashCode() {
        return strokes.hashCode();
    }

    @Override
    public String toString() {
        return "Outline" + strokes;
    }
}
