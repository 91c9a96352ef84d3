package buildup.cli.drawing.mill;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Scale;
import buildup.cli.drawing.label.Caption;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.trace.Traced;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Rounding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A tracing laid over the outline that was made of it, deviations exaggerated, the largest marked. */
public final class TraceDrawing {
    /** Where the outline is small, it is drawn so large, in. */
    private static final double LEAST_SIZE = 5;

    /** Enlargements that a rule still reads. */
    private static final List<Integer> SCALES = List.of(1, 2, 4, 8);

    /** The largest deviation is drawn about so long, in. */
    private static final double WHISKER = 0.3;

    private static final List<Integer> EXAGGERATED = List.of(100, 50, 20, 10, 5, 2, 1);
    private static final double MARGIN = 0.7;
    private static final double FOOT = 1.4;

    /** Narrower sheets would cut their captions. */
    private static final double LEAST_WIDTH = 6.5;

    private static final Phrase SIZES = Phrase.of(
            "{projection} projection x {height} height, drawn {scale} : 1; deviations {times} times as large");
    private static final Phrase FIT = Phrase.of("Largest deviation {largest}, in the ring; root mean square {rms}");
    private static final Phrase OF = Phrase.of("{members} members from {points} points");

    private final TextMeasure measure;
    private final Traced traced;
    private final FigurePrinter printer;
    private final int scale;
    private final Point shift;

    private TraceDrawing(Traced traced, TextMeasure measure, FigurePrinter printer) {
        Box box = traced.outline().box();
        double size = Math.max(box.width(), box.height());
        this.measure = measure;
        this.printer = printer;
        this.traced = traced;
        this.scale = SCALES.stream()
                .filter(times -> size * times >= LEAST_SIZE)
                .findFirst()
                .orElse(SCALES.get(SCALES.size() - 1));
        double spare = Math.max(0, LEAST_WIDTH - (box.width() * scale + 2 * MARGIN)) / 2;
        this.shift = new Point(MARGIN + spare - box.back() * scale, MARGIN + FOOT - box.bottom() * scale);
    }

    /** A fitted outline on the points it was fitted to, dimensioned. */
    public static Scene of(String name, Traced traced, TextMeasure measure, FigurePrinter printer) {
        return new TraceDrawing(traced, measure, printer).scene(name);
    }

    private Point placed(Point p) {
        return p.times(scale).plus(shift);
    }

    private Scene scene(String name) {
        Box box = traced.outline().box();
        double width = Math.max(LEAST_WIDTH, box.width() * scale + 2 * MARGIN);
        double height = box.height() * scale + 2 * MARGIN + FOOT + Drafting.TITLE;
        int times = EXAGGERATED.stream()
                .filter(by -> traced.largest() * scale * by <= WHISKER)
                .findFirst()
                .orElse(1);
        List<SceneItem> items = new ArrayList<>();
        items.add(new Path(outline(), true, LineStyle.NAILER));
        items.add(new Path(whiskers(times), false, LineStyle.EXTENSION));
        Point far = placed(traced.farthest());
        items.add(new Path(Caption.circle(far, Drafting.RING), true, LineStyle.LEADER));
        items.addAll(figures(name, times, width, height));
        return new Scene(
                name + ", traced",
                "The tracing of " + name + " over its outline, deviations " + times + " times as large.",
                width,
                height,
                items);
    }

    private List<Segment> outline() {
        Motion place = Motion.shift(shift.x(), shift.y());
        return Scale.of(traced.outline().segments(), scale).stream()
                .map(segment -> segment.moved(place))
                .toList();
    }

    /** From the outline to each point, so many times as far. */
    private List<Segment> whiskers(int times) {
        Outline outline = traced.outline();
        List<Segment> lines = new ArrayList<>();
        for (Point p : traced.points()) {
            Point foot = outline.strokes().stream()
                    .map(stroke -> stroke.segment().at(stroke.segment().nearest(p)))
                    .min(Comparator.comparingDouble(p::distance))
                    .orElse(p);
            lines.add(new Line(placed(foot), placed(foot).plus(p.minus(foot).times(times * scale))));
        }
        return lines;
    }

    private List<SceneItem> figures(String name, int times, double width, double height) {
        Box box = traced.outline().box();
        List<String> lines = List.of(
                printer.print(SIZES.with("projection", Figure.length(box.width()))
                        .with("height", Figure.length(box.height()))
                        .with("scale", Figure.count(scale))
                        .with("times", Figure.count(times))),
                printer.print(FIT.with("largest", finer(traced.largest())).with("rms", finer(traced.rms()))),
                printer.print(OF.with("members", Figure.count(traced.members().size()))
                        .with("points", Figure.count(traced.points().size()))));
        List<SceneItem> items = new ArrayList<>();
        items.add(Label.of(measure, name, new Point(width / 2, height - MARGIN), Drafting.TITLE, Label.Anchor.MIDDLE));
        for (int i = 0; i < lines.size(); i++) {
            items.add(Label.of(
                    measure,
                    lines.get(i),
                    new Point(width / 2, FOOT - 0.25 - 0.25 * i),
                    Drafting.FIGURES,
                    Label.Anchor.MIDDLE));
        }
        return items;
    }

    private static Figure finer(double deviation) {
        return Figure.length(deviation).rounded(Rounding.decimals(4));
    }
}
