package buildup.cli.drawing.label;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.PictureView;
import buildup.cli.scene.About;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Numbers in rings beside marks on a section, on wood too, clear of each other and of the marks. */
public final class MarkNumbers {
    private static final int DIRECTIONS = 24;

    /** From a mark to the middle of its ring, in radii of the ring. */
    private static final List<Double> DISTANCES =
            List.of(1.3, 1.7, 2.2, 3.0, 4.0, 5.5, 7.5, 10.0, 14.0, 20.0, 28.0, 40.0, 56.0);

    /** From here on a leader says which mark is meant, in radii. */
    private static final double LED = 2;

    /** What it costs, in inches, to stand with the ring on an edge. */
    private static final double ON_EDGE = 0.15;

    private final Clearances clearances;
    private final TextMeasure measure;
    private final double radius;
    private final double size;
    private final List<Point> marks = new ArrayList<>();
    private final List<SceneItem> items = new ArrayList<>();

    /** @param size of the texts of the picture, in; the rings are a little wider */
    public MarkNumbers(PictureView view, TextMeasure measure, double size) {
        this.clearances = Clearances.of(view);
        this.measure = measure;
        this.radius = 0.7 * size;
        this.size = 0.8 * size;
    }

    /** Keeps numbers off a mark's straight lines. */
    public void keepClear(Path mark) {
        for (Segment segment : mark.segments()) {
            if (segment instanceof Line line) {
                clearances.addLine(line);
            }
        }
    }

    /** Keeps numbers off the place of a mark: a ring on it would hide it from the leader of its own number. */
    public void keepClear(Point mark) {
        marks.add(mark);
    }

    /**
     * Sets a number beside its mark, as near as can be.
     *
     * @param subject what the mark is about
     */
    public void set(int number, Subject subject, Point mark) {
        List<Point> places = DISTANCES.stream()
                .flatMap(distance -> IntStream.range(0, DIRECTIONS)
                        .mapToObj(i -> mark.plus(Point.towards(2 * Math.PI * (i + 0.5) / DIRECTIONS)
                                .times(distance * radius))))
                .toList();
        Point place = BestPlace.<Point, Point>among(
                        places, Double.MAX_VALUE, mark::distance, (at, known) -> free(mark, at))
                .map(BestPlace::place)
                .orElse(mark);
        clearances.addText(box(place));
        double far = mark.distance(place);
        if (far > LED * radius) {
            Line leader = leader(mark, place);
            items.add(new About(subject, Leaders.drawn(leader)));
            clearances.addLine(leader);
        }
        items.add(new About(subject, ringed(number, place)));
    }

    private Line leader(Point mark, Point place) {
        return new Line(place.towards(mark, radius / mark.distance(place)), mark);
    }

    private Optional<BestPlace<Point>> free(Point mark, Point at) {
        boolean led = mark.distance(at) > LED * radius;
        boolean onMark = box(at).holds(mark, 0)
                || others(mark).anyMatch(other -> box(at).grown(Drafting.AIR).holds(other, 0));
        if (onMark || !clearances.takesTag(box(at)) || (led && !clearances.takesLine(leader(mark, at)))) {
            return Optional.empty();
        }
        double cost = mark.distance(at)
                + (clearances.holdsEdge(box(at)) ? ON_EDGE : 0)
                + (led ? clearances.crossedLines(leader(mark, at)) * radius : 0);
        return Optional.of(new BestPlace<>(at, cost));
    }

    /** The marks of other numbers; another may lie at the same place, and want a leader there. */
    private Stream<Point> others(Point mark) {
        long same =
                marks.stream().filter(other -> other.near(mark, Tolerance.SNAP)).count();
        return marks.stream().filter(other -> same > 1 || !other.near(mark, Tolerance.SNAP));
    }

    private Box box(Point at) {
        return Box.of(at, at).grown(radius);
    }

    /** How large a ring is, in. */
    public double radius() {
        return radius;
    }

    /** A number in its ring. */
    public List<SceneItem> ringed(int number, Point at) {
        return Caption.ringed(measure, String.valueOf(number), at, radius, size, false);
    }

    /** What has been set. */
    public List<SceneItem> items() {
        return List.copyOf(items);
    }
}
