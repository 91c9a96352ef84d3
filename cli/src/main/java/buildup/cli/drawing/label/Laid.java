package buildup.cli.drawing.label;

import buildup.cli.drawing.draft.DimensionAxis;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import java.util.List;
import java.util.stream.Stream;

/**
 * A dimension on a place of the picture.
 *
 * @param textAt middle of the caption along the run
 * @param line from end to end, the short tail to a caption beside it included
 * @param drawn what is left of the line beside the caption
 * @param cost the less it costs, the better it reads
 */
record Laid(
        Dimension measure,
        Caption caption,
        double textAt,
        Line line,
        List<Line> drawn,
        List<Line> extensions,
        double cost) {
    /** Half the width of a tick. */
    private static final double TICK = 0.035;

    Laid {
        drawn = List.copyOf(drawn);
        extensions = List.copyOf(extensions);
    }

    DimensionAxis run() {
        return measure.run();
    }

    double level() {
        return run().across(line.from());
    }

    Box textBox() {
        return run().box(textAt, level(), caption.width(), caption.height());
    }

    /** The strokes across its two ends. */
    Stream<Line> ticks() {
        return Stream.of(measure.start(), measure.end())
                .map(along -> run().point(along, level()))
                .map(end -> new Line(end.minus(new Point(TICK, TICK)), end.plus(new Point(TICK, TICK))));
    }

    Laid costing(double sum) {
        return new Laid(measure, caption, textAt, line, drawn, extensions, sum);
    }
}
