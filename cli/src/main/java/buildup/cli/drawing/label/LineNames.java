package buildup.cli.drawing.label;

import buildup.cli.scene.About;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Names of lines that run out of a picture, each where its line leaves the frame: beside it, above it or below it. */
public final class LineNames {
    /** Ends of lines of one name that lie closer than this share one text, in sizes of the text. */
    private static final double TOGETHER = 2;

    /** From one row of texts above or below the frame to the next, in sizes. */
    private static final double PITCH = 1.5;

    private final TextMeasure measure;
    private final Box frame;
    private final double size;
    private final List<Box> taken = new ArrayList<>();
    private final List<Beside> beside = new ArrayList<>();
    private final List<Ending> above = new ArrayList<>();
    private final List<Ending> below = new ArrayList<>();

    private record Beside(Spread.Wish wish, Subject subject) {}

    private record Ending(String name, Subject subject, double x) {}

    /**
     * Starts with no lines.
     *
     * @param frame that the lines end at, in of paper
     * @param size of the texts, in
     */
    public LineNames(TextMeasure measure, Box frame, double size) {
        this.measure = measure;
        this.frame = frame;
        this.size = size;
    }

    /** Keeps names above and below the frame off something drawn there. */
    public void keepClear(Box drawn) {
        taken.add(drawn);
    }

    /**
     * Adds lines of one name; each ends where it leaves the frame to the right, above or below.
     *
     * @param subject what the lines are about
     */
    public void add(String name, Subject subject, List<Line> lines) {
        List<Point> ends = lines.stream().map(Line::to).toList();
        List<Spread.Wish> own = new ArrayList<>();
        for (double y :
                sorted(ends.stream().filter(this::isBeside).map(Point::y).toList())) {
            int last = own.size() - 1;
            if (last >= 0 && y - own.get(last).high() < TOGETHER * size) {
                own.set(last, new Spread.Wish(name, own.get(last).low(), y));
            } else {
                own.add(new Spread.Wish(name, y, y));
            }
        }
        own.forEach(wish -> beside.add(new Beside(wish, subject)));
        above.addAll(level(
                name,
                subject,
                ends.stream().filter(end -> !isBeside(end) && end.y() > frame.top() - Tolerance.TOUCHING)));
        below.addAll(level(
                name,
                subject,
                ends.stream().filter(end -> !isBeside(end) && end.y() < frame.bottom() + Tolerance.TOUCHING)));
    }

    private List<Ending> level(String name, Subject subject, Stream<Point> ends) {
        List<Ending> endings = new ArrayList<>();
        for (double x : sorted(ends.map(Point::x).toList())) {
            if (endings.isEmpty() || x - endings.get(endings.size() - 1).x() > TOGETHER * size) {
                endings.add(new Ending(name, subject, x));
            }
        }
        return endings;
    }

    private static List<Double> sorted(List<Double> places) {
        return places.stream().sorted().toList();
    }

    private boolean isBeside(Point end) {
        return end.x() > frame.face() - Tolerance.TOUCHING;
    }

    /** The names, none on another. */
    public List<SceneItem> items() {
        List<Beside> ordered = beside.stream()
                .sorted(Comparator.comparingDouble(one -> one.wish().middle()))
                .toList();
        List<List<SceneItem>> led =
                Spread.led(measure, ordered.stream().map(Beside::wish).toList(), frame.face(), size);
        List<SceneItem> items = new ArrayList<>();
        for (int i = 0; i < led.size(); i++) {
            items.add(new About(ordered.get(i).subject(), led.get(i)));
        }
        List<Box> all = new ArrayList<>(taken);
        items.forEach(item -> all.add(item.box()));
        items.addAll(rows(above, 1, all));
        items.addAll(rows(below, -1, all));
        return items;
    }

    /**
     * Texts that begin at their lines' ends, in as many rows as they need. From right to left: the leader up to a farther
     * row then passes texts only that begin to the right of it.
     *
     * @param way 1 above the frame, -1 below
     * @param taken what stands there already; what is set is added
     */
    private List<SceneItem> rows(List<Ending> endings, int way, List<Box> taken) {
        List<SceneItem> items = new ArrayList<>();
        double edge = way > 0 ? frame.top() : frame.bottom();
        double first = way > 0 ? size / 2 : -size / 2 - size * Label.CAPITALS;
        for (Ending ending : endings.stream()
                .sorted(Comparator.comparingDouble(Ending::x).reversed())
                .toList()) {
            Label label = at(ending, edge + first);
            int row = 0;
            while (overlaps(taken, label.box().grown(size / 4))) {
                row++;
                label = at(ending, edge + first + way * row * PITCH * size);
            }
            taken.add(label.box());
            items.addAll(About.of(ending.subject(), List.of(label)));
            if (row > 0) {
                Line leader = new Line(
                        new Point(ending.x(), edge),
                        new Point(ending.x(), label.at().y()));
                items.addAll(About.of(ending.subject(), List.of(new Path(List.of(leader), false, LineStyle.LEADER))));
                taken.add(leader.box());
            }
        }
        return items;
    }

    private static boolean overlaps(List<Box> taken, Box box) {
        return taken.stream().anyMatch(other -> Boxes.overlap(other, box));
    }

    private Label at(Ending ending, double y) {
        return Label.of(measure, ending.name(), new Point(ending.x() + size / 2, y), size, Label.Anchor.START);
    }
}
