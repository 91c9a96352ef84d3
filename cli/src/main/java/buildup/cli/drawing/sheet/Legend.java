package buildup.cli.drawing.sheet;

import buildup.cli.drawing.draft.WoodDrawing;
import buildup.cli.drawing.draft.Words;
import buildup.cli.scene.About;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Title, lines of text and samples with their meanings, from the top down, all in one size of letter. */
public final class Legend {
    /** The name of the group that holds it. */
    public static final String GROUP = "legend";

    /** Widest line, in letters' sizes. */
    private static final double WIDTH = 46;

    private static final String ROOM = "wall, floor or ceiling";

    private final TextMeasure measure;
    private final double size;
    private final List<SceneItem> items = new ArrayList<>();
    private double y;

    public Legend(TextMeasure measure, double size) {
        this.measure = measure;
        this.size = size;
    }

    /** Adds a title and gives the legend itself back. */
    public Legend title(String text) {
        return lines(text, 1.7 * size);
    }

    /** Adds lines of text, broken to the width, and gives the legend itself back. */
    public Legend text(String text) {
        return lines(text, size);
    }

    private Legend lines(String text, double high) {
        for (String line : Words.lines(measure, text, high, WIDTH * size, 3)) {
            y -= 1.45 * high;
            items.add(Label.of(measure, line, new Point(0, y), high, Label.Anchor.START));
        }
        return this;
    }

    /**
     * Adds a line with a sample and what it means.
     *
     * @param drawn gives the sample for a place, its lower left corner; it may take 3 sizes by 1
     */
    public Legend sample(String meaning, Function<Point, List<SceneItem>> drawn) {
        y -= 1.6 * size;
        items.addAll(drawn.apply(new Point(0, y)));
        items.add(Label.of(measure, meaning, new Point(3.6 * size, y + 0.12 * size), size, Label.Anchor.START));
        return this;
    }

    /**
     * Adds the light hatches of what is no trim.
     *
     * @param smaller so many times smaller the picture will be made
     */
    public Legend kinds(Set<WoodDrawing.Look> looks, int smaller) {
        looks.stream()
                .filter(look -> look != WoodDrawing.Look.TRIM)
                .forEach(look -> sample(look == WoodDrawing.Look.ROOM ? ROOM : look.word(), at -> {
                    List<Segment> ring = Outline.rectangle(new Box(at.x(), at.y(), at.x() + 3 * size, at.y() + size))
                            .segments();
                    List<SceneItem> items = new ArrayList<>(look.light(
                            Optional.empty(),
                            Optional.empty(),
                            ring,
                            at.plus(new Point(1.5 * size, size / 2)),
                            smaller));
                    items.add(look.edge(ring, true));
                    return items;
                }));
        return this;
    }

    /** Adds a line with a stroke of a style and what it means. */
    public Legend line(String meaning, LineStyle style) {
        return sample(meaning, at -> List.of(stroke(at, style, size)));
    }

    /** The stroke of such a line, for a sample that shows more than it. */
    public static SceneItem stroke(Point at, LineStyle style, double size) {
        double y = at.y() + size / 2;
        return new Path(List.of(new Line(new Point(at.x(), y), new Point(at.x() + 3 * size, y))), false, style);
    }

    /** What it holds, from the top down. */
    public Group group() {
        return new Group(GROUP, About.of(Subject.NOTES, items));
    }
}
