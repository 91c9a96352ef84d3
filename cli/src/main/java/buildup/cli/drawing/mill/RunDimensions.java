package buildup.cli.drawing.mill;

import buildup.cli.drawing.draft.DimensionAxis;
import buildup.cli.drawing.draft.Drafting;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.List;

/** Dimensions beside a single profile, where each has its place. */
record RunDimensions(TextMeasure measure, FigurePrinter printer) {
    private static final double TICK = 0.035;

    /** From a dimension line to the middle of a text that has no room on it, in. */
    private static final double OFF_LINE = 0.12 + Drafting.FIGURES / 2;

    /**
     * One dimension with its extension lines.
     *
     * @param axis along which it is measured
     * @param level where its line runs, across the axis
     * @param edge of the wood on the same side
     */
    List<SceneItem> of(DimensionAxis axis, double from, double to, double level, double edge) {
        String text = printer.bare(Figure.length(to - from));
        double half = measure.width(text, Drafting.FIGURES) / 2 + Drafting.AIR;
        double middle = (from + to) / 2;
        boolean inside = to - from > 2 * half + 2 * Drafting.EXTENSION_PAST;
        List<Segment> lines = new ArrayList<>();
        if (inside) {
            lines.add(axis.line(from, middle - half, level));
            lines.add(axis.line(middle + half, to, level));
        } else {
            lines.add(axis.line(from, to, level));
        }
        List<Segment> extensions = new ArrayList<>();
        List<Segment> ticks = new ArrayList<>();
        double away = Math.signum(level - edge);
        for (double end : List.of(from, to)) {
            extensions.add(axis.other()
                    .line(edge + away * Drafting.EXTENSION_GAP, level + away * Drafting.EXTENSION_PAST, end));
            Point tick = axis.point(end, level);
            ticks.add(new Line(tick.minus(new Point(TICK, TICK)), tick.plus(new Point(TICK, TICK))));
        }
        return List.of(
                new Path(extensions, false, LineStyle.EXTENSION),
                new Path(lines, false, LineStyle.DIMENSION),
                new Path(ticks, false, LineStyle.TICK),
                Label.centered(
                        measure,
                        text,
                        axis.point(middle, level + (inside ? 0 : away * OFF_LINE)),
                        Drafting.FIGURES,
                        axis == DimensionAxis.UPRIGHT));
    }
}
