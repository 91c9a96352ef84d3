package buildup.cli.drawing.job;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Words;
import buildup.cli.drawing.label.Spread;
import buildup.cli.scene.Label;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The heights of the pieces of a stack, each once however many edges lie there.
 *
 * @param seenOnly whether nailers are left out, which nobody sees from the front
 */
record Heights(Section section, boolean seenOnly, FigurePrinter printer) {
    /**
     * A height and what lies there.
     *
     * @param y over the datum, in
     */
    record Level(double y, List<String> edges) {
        Level {
            edges = List.copyOf(edges);
        }
    }

    /** From below up. */
    List<Level> levels() {
        List<Level> all = new ArrayList<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            if (seenOnly ? section.body(i).trim() : section.body(i).inStack()) {
                Box box = section.body(i).outline().box();
                all.add(new Level(box.bottom(), List.of(section.name(i) + " bottom")));
                all.add(new Level(box.top(), List.of(section.name(i) + " top")));
            }
        }
        all.sort(Comparator.comparingDouble(Level::y));
        List<Level> merged = new ArrayList<>();
        for (Level level : all) {
            int last = merged.size() - 1;
            if (last >= 0 && level.y() - merged.get(last).y() < Tolerance.TOUCHING) {
                List<String> edges = new ArrayList<>(merged.get(last).edges());
                edges.addAll(level.edges());
                merged.set(last, new Level(merged.get(last).y(), edges));
            } else {
                merged.add(level);
            }
        }
        return merged;
    }

    /** Where heights are told from. */
    String from() {
        return floor().isPresent() ? "Heights over the floor." : "Heights over the datum.";
    }

    /** The same below a picture, which may stand on a page of its own. */
    SceneItem from(TextMeasure measure, List<SceneItem> picture) {
        Box box = Box.around(picture.stream().map(SceneItem::box).toList());
        Point below = new Point(box.back(), box.bottom() - 2 * Drafting.TEXT);
        return Label.of(measure, from(), below, Drafting.TEXT, Label.Anchor.START);
    }

    private OptionalDouble floor() {
        return section.stack().space().floor();
    }

    /** Words of so many lines are read beside a height. */
    private static final int MOST_LINES = 4;

    /** However narrow the page, words are so wide, in. */
    private static final double LEAST = 1.5;

    /** Each height with its words, to the right of {@code x}, no farther than {@code right} where there is room. */
    List<SceneItem> labels(TextMeasure measure, double x, double right) {
        return labels(measure, x, right, List.of());
    }

    /**
     * The same among other heights.
     *
     * @param more each with what lies there
     */
    List<SceneItem> labels(TextMeasure measure, double x, double right, List<Level> more) {
        double room = Math.max(LEAST, right - x - Spread.beside(Drafting.TEXT));
        List<Spread.Wish> wishes = Stream.concat(levels().stream(), more.stream())
                .sorted(Comparator.comparingDouble(Level::y))
                .map(level -> new Spread.Wish(
                        String.join("\n", Words.lines(measure, words(level), Drafting.TEXT, room, MOST_LINES)),
                        level.y(),
                        level.y()))
                .toList();
        return Spread.labels(measure, wishes, x, 1, Drafting.TEXT);
    }

    private String words(Level level) {
        return told(level.y()) + "  " + String.join(", ", level.edges());
    }

    /** A height as it is told. */
    String told(double y) {
        return printer.bare(Figure.length(y - floor().orElse(0)));
    }
}
