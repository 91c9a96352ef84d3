package buildup.cli.drawing.job;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.label.Spread;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

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

    private OptionalDouble floor() {
        return section.stack().space().floor();
    }

    /** Each height with its words, to the right of {@code x}. */
    List<SceneItem> labels(TextMeasure measure, double x) {
        double from = floor().orElse(0);
        List<Spread.Wish> wishes = levels().stream()
                .map(level -> new Spread.Wish(
                        printer.bare(Figure.length(level.y() - from)) + "  "
                                + level.edges().stream().collect(Collectors.joining(", ")),
                        level.y(),
                        level.y()))
                .toList();
        return Spread.labels(measure, wishes, x, 1, Drafting.TEXT);
    }
}
