package buildup.cli.drawing.mill;

import buildup.cli.drawing.draft.DimensionAxis;
import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Grid;
import buildup.cli.scene.Area;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.cli.scene.Tone;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A profile as it is run, full size, on a grid, with its two sizes and its radii.
 *
 * @param run the outline, flat on its back
 * @param name what a screen reader says
 * @param room from side to side, in
 */
public record RunProfile(Outline run, String name, double room, TextMeasure measure, FigurePrinter printer) {
    private static final double AWAY = 0.4;
    private static final double TICK = 0.035;

    /** Grid beyond the wood. */
    private static final double BEYOND = 0.25;

    /** How far a radius may stand from its curve, the nearest first. */
    private static final List<Double> ASIDE = List.of(0.1, 0.16, 0.22, 0.3, 0.4, 0.5);

    /** The picture, its lower left corner near the origin. */
    public List<SceneItem> items() {
        Outline outline = lying();
        Box box = outline.box();
        List<Segment> ring = outline.segments();
        List<SceneItem> sizes = new ArrayList<>();
        sizes.addAll(dimension(DimensionAxis.LEVEL, box.back(), box.face(), box.bottom() - AWAY, box.bottom()));
        sizes.addAll(dimension(DimensionAxis.UPRIGHT, box.bottom(), box.top(), box.face() + AWAY, box.face()));
        List<SceneItem> radii = radii(outline, sizes);
        List<Box> texts =
                radii.stream().map(SceneItem::box).map(text -> text.grown(0.02)).toList();
        List<SceneItem> items = new ArrayList<>();
        items.add(new Area(Optional.empty(), Optional.of(name), ring, Tone.TRIM));
        items.addAll(Grid.of(printer.metric()).over(box.grown(BEYOND), texts));
        items.add(new Path(ring, true, LineStyle.OUTLINE));
        items.addAll(sizes);
        items.addAll(radii);
        return items;
    }

    /** Each radius beside its curve in the air, where there is a free place for it. */
    private List<SceneItem> radii(Outline outline, List<SceneItem> sizes) {
        List<Point> points = outline.flattened(Tolerance.CHORD);
        List<SceneItem> labels = new ArrayList<>();
        for (Stroke stroke : outline.strokes()) {
            if (stroke.segment() instanceof Arc arc) {
                String text = "R " + printer.bare(Figure.length(arc.radius()));
                List<SceneItem> taken = new ArrayList<>(labels);
                taken.addAll(sizes);
                label(arc, text, outline, points, taken).ifPresent(labels::add);
            }
        }
        return labels;
    }

    private Optional<SceneItem> label(
            Arc arc, String text, Outline outline, List<Point> points, List<SceneItem> taken) {
        Point middle = arc.at(0.5);
        Point from = arc.center().minus(middle);
        Point toAir = from.times((arc.counterclockwise() ? -1 : 1) / arc.radius());
        for (double aside : ASIDE) {
            double half = measure.width(text, Drafting.TEXT) / 2;
            Point at = middle.plus(toAir.times(aside))
                    .plus(new Point(Math.signum(toAir.x()) * half * Math.abs(toAir.x()), 0));
            Label label = Label.centered(measure, text, at, Drafting.TEXT, false);
            Box place = label.box().grown(2 * Drafting.AIR);
            boolean free = taken.stream().noneMatch(one -> Boxes.overlap(one.box(), place))
                    && outline.strokes().stream().noneMatch(stroke -> meets(stroke.segment(), place))
                    && !Outline.isInside(points, at);
            if (free) {
                return Optional.of(label);
            }
        }
        return Optional.empty();
    }

    /** Whether a segment comes into a place, looked at as finely as a text is high. */
    private static boolean meets(Segment segment, Box place) {
        int steps = Math.max(2, (int) Math.ceil(segment.length() / (Drafting.TEXT / 4)));
        for (int i = 0; i <= steps; i++) {
            Point p = segment.at((double) i / steps);
            if (p.x() > place.back() && p.x() < place.face() && p.y() > place.bottom() && p.y() < place.top()) {
                return true;
            }
        }
        return false;
    }

    /** The longer side level, the face up, unless the page is too narrow for it. */
    private Outline lying() {
        boolean high = run.box().height() > run.box().width();
        boolean level = Math.max(run.box().width(), run.box().height()) + AWAY + 2 * BEYOND + 0.3 <= room;
        Outline laid = high == level ? run.moved(Motion.turn(90)) : run;
        return laid.moved(Motion.shift(-laid.box().back(), -laid.box().bottom()));
    }

    private List<SceneItem> dimension(DimensionAxis axis, double from, double to, double level, double edge) {
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
        double aside = inside ? 0 : away * (0.12 + Drafting.FIGURES / 2);
        return List.of(
                new Path(extensions, false, LineStyle.EXTENSION),
                new Path(lines, false, LineStyle.DIMENSION),
                new Path(ticks, false, LineStyle.TICK),
                Label.centered(
                        measure,
                        text,
                        axis.point(middle, level + aside),
                        Drafting.FIGURES,
                        axis == DimensionAxis.UPRIGHT));
    }
}
