package buildup.cli.drawing.mill;

import buildup.cli.drawing.draft.DimensionAxis;
import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Words;
import buildup.cli.scene.Area;
import buildup.cli.scene.Group;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Pattern;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.cli.scene.Tone;
import buildup.engine.mill.quote.Quoted;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One profile of a quote, as it is run, full size, with its two sizes and what it is called. */
record QuoteProfile(int number, Quoted quoted, TextMeasure measure, FigurePrinter printer) {
    private static final Pattern HATCH = new Pattern(45, 0.11, false, 0.005, List.of());
    private static final double AWAY = 0.3;
    private static final double TICK = 0.035;

    Group group() {
        Outline outline = lying();
        Box box = outline.box();
        List<Segment> ring = outline.strokes().stream().map(Stroke::segment).toList();
        List<SceneItem> items = new ArrayList<>();
        items.add(new Area(Optional.empty(), Optional.of(quoted.item().name()), ring, Tone.TRIM));
        items.add(new Hatch(ring, HATCH, Point.ORIGIN));
        items.add(new Path(ring, true, LineStyle.OUTLINE));
        items.addAll(dimension(DimensionAxis.LEVEL, box.back(), box.face(), box.bottom() - AWAY, box.bottom()));
        items.addAll(dimension(DimensionAxis.UPRIGHT, box.bottom(), box.top(), box.face() + AWAY, box.face()));
        double y = Box.around(items.stream().map(SceneItem::box).toList()).bottom() - Drafting.AIR;
        double wide = Math.max(box.width() + AWAY, 2.4);
        for (String text :
                List.of(quoted.item().name(), quoted.item().wood().name() + ", " + printer.print(quantity()))) {
            for (String line : Words.lines(measure, text, Drafting.TEXT, wide, 2)) {
                y -= 1.45 * Drafting.TEXT;
                items.add(Label.of(measure, line, new Point(box.back(), y), Drafting.TEXT, Label.Anchor.START));
            }
        }
        return new Group("profile-" + number, items);
    }

    private Figure quantity() {
        return Figure.of(Quantity.RUN, quoted.item().feet().doubleValue()).rounded(Rounding.decimals(2));
    }

    /** The longer side level, which takes the least of the sheet's height, and the face up. */
    private Outline lying() {
        Outline run = quoted.item().profile().asRun();
        Outline laid = run.box().height() > run.box().width() ? run.moved(Motion.turn(90)) : run;
        return laid.moved(Motion.shift(-laid.box().back(), -laid.box().bottom()));
    }

    private List<SceneItem> dimension(DimensionAxis run, double from, double to, double level, double edge) {
        String text = printer.bare(Figure.length(to - from));
        double half = measure.width(text, Drafting.FIGURES) / 2 + Drafting.AIR;
        double middle = (from + to) / 2;
        boolean inside = to - from > 2 * half + 2 * Drafting.EXTENSION_PAST;
        List<Segment> lines = new ArrayList<>();
        if (inside) {
            lines.add(run.line(from, middle - half, level));
            lines.add(run.line(middle + half, to, level));
        } else {
            lines.add(run.line(from, to, level));
        }
        List<Segment> extensions = new ArrayList<>();
        List<Segment> ticks = new ArrayList<>();
        double away = Math.signum(level - edge);
        for (double end : List.of(from, to)) {
            extensions.add(run.other()
                    .line(edge + away * Drafting.EXTENSION_GAP, level + away * Drafting.EXTENSION_PAST, end));
            Point tick = run.point(end, level);
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
                        run.point(middle, level + aside),
                        Drafting.FIGURES,
                        run == DimensionAxis.UPRIGHT));
    }
}
