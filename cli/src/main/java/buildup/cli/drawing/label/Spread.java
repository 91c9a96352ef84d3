package buildup.cli.drawing.label;

import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/** Texts beside a picture, one under the other, each tied to the stretch of height that it speaks of. */
public final class Spread {
    /** From one text to the next, in sizes. */
    private static final double PITCH = 1.5;

    /** A text that far from level with its stretch is led to, in sizes, and stands this far off then. */
    private static final double LEVEL = 0.3;

    private static final double LED = 2.4;

    /** From a bracket to its text, in sizes. */
    private static final double BRACKET = 2.4;

    private Spread() {}

    /** How far from its bracket a text begins, in. */
    public static double beside(double size) {
        return BRACKET * size;
    }

    /** A text and the stretch it belongs to. */
    public record Wish(String text, double low, double high) {
        /** The middle of the stretch. */
        public double middle() {
            return (low + high) / 2;
        }
    }

    /**
     * Texts one above another, each joined by a bracket to the stretch it belongs to.
     *
     * @param wishes from low to high; a text may have several lines, of which the first is led to
     * @param x where the brackets stand
     * @param side 1 for texts to the right of it, -1 to the left
     */
    public static List<SceneItem> labels(TextMeasure measure, List<Wish> wishes, double x, int side, double size) {
        // set from low to high, so that the last line of a text comes first
        List<Wish> lines = new ArrayList<>();
        List<Integer> heads = new ArrayList<>();
        for (Wish wish : wishes) {
            List<String> said = new ArrayList<>(wish.text.lines().toList());
            Collections.reverse(said);
            said.forEach(line -> lines.add(new Wish(line, wish.low, wish.high)));
            heads.add(lines.size() - 1);
        }
        List<Double> places = places(lines, PITCH * size);
        List<SceneItem> items = new ArrayList<>();
        double tick = 0.35 * size;
        double start = x + side * BRACKET * size;
        for (int i = 0; i < wishes.size(); i++) {
            Wish wish = wishes.get(i);
            double y = places.get(heads.get(i));
            List<Segment> bracket = List.of(
                    new Line(new Point(x - side * tick, wish.low), new Point(x, wish.low)),
                    new Line(new Point(x, wish.low), new Point(x, wish.high)),
                    new Line(new Point(x, wish.high), new Point(x - side * tick, wish.high)));
            items.add(new Path(bracket, false, LineStyle.DIMENSION));
            items.add(new Path(
                    List.of(new Line(new Point(x, wish.middle()), new Point(start - side * tick, y))),
                    false,
                    LineStyle.LEADER));
            for (int line = heads.get(i); line > (i == 0 ? -1 : heads.get(i - 1)); line--) {
                items.add(Label.of(
                        measure,
                        lines.get(line).text,
                        new Point(start, places.get(line) - size * Label.CAPITALS / 2),
                        size,
                        side > 0 ? Label.Anchor.START : Label.Anchor.END));
            }
        }
        return items;
    }

    /** Texts alone, to the right of {@code x}, as near to their heights as they can be. */
    public static List<Label> besides(TextMeasure measure, List<Wish> wishes, double x, double size) {
        List<Double> places = places(wishes, PITCH * size);
        List<Label> items = new ArrayList<>();
        for (int i = 0; i < wishes.size(); i++) {
            Point at = new Point(x, places.get(i) - size * Label.CAPITALS / 2);
            items.add(Label.of(measure, wishes.get(i).text, at, size, Label.Anchor.START));
        }
        return items;
    }

    /**
     * Texts to the right of {@code x}, each led to from the middle of its stretch where not all stand level with theirs.
     */
    public static List<List<SceneItem>> led(TextMeasure measure, List<Wish> wishes, double x, double size) {
        List<Double> places = places(wishes, PITCH * size);
        boolean moved = IntStream.range(0, places.size())
                .anyMatch(i -> Math.abs(places.get(i) - wishes.get(i).middle()) > LEVEL * size);
        double start = x + (moved ? LED : 0.5) * size;
        List<Label> labels = besides(measure, wishes, start, size);
        List<List<SceneItem>> items = new ArrayList<>();
        for (int i = 0; i < wishes.size(); i++) {
            Line leader = new Line(new Point(x, wishes.get(i).middle()), new Point(start - size / 3, places.get(i)));
            items.add(
                    moved
                            ? List.of(labels.get(i), new Path(List.of(leader), false, LineStyle.LEADER))
                            : List.of(labels.get(i)));
        }
        return items;
    }

    /** As near to each stretch's middle as the texts above and below allow: groups that would overlap share the room. */
    private static List<Double> places(List<Wish> wishes, double pitch) {
        List<double[]> groups = new ArrayList<>();
        for (Wish wish : wishes) {
            // sum of the places wished for, less what each is above the group's first; and how many there are
            double[] group = {wish.middle(), 1};
            while (!groups.isEmpty()) {
                double[] below = groups.get(groups.size() - 1);
                double belowLow = below[0] / below[1];
                double low = group[0] / group[1];
                if (low - belowLow >= pitch * below[1]) {
                    break;
                }
                groups.remove(groups.size() - 1);
                group = new double[] {below[0] + group[0] - group[1] * below[1] * pitch, below[1] + group[1]};
            }
            groups.add(group);
        }
        List<Double> places = new ArrayList<>();
        for (double[] group : groups) {
            for (int i = 0; i < group[1]; i++) {
                places.add(group[0] / group[1] + i * pitch);
            }
        }
        return places;
    }
}
