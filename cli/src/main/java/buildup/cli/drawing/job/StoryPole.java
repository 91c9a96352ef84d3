package buildup.cli.drawing.job;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.Paper;
import buildup.cli.drawing.paper.PaperPage;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A pole with the height of every piece on it, from the floor where there is one, at full size. Where it has no mark for a
 * long way it is left out: paper put together from many sheets is no better a measure than a tape.
 */
record StoryPole(Section section, TextMeasure measure, FigurePrinter printer) {
    private static final double WIDE = 1.5;
    private static final double GAP = 0.1;

    /** More without a mark is left out, in. */
    private static final double LONGEST_BARE = 36;

    /** Beyond a mark the pole goes on at least so far, to the line from which the rest is measured, in. */
    private static final double BEYOND = 2;

    /** Half the height of a zigzag of a break. */
    private static final double BREAK = 0.12;

    /**
     * A stretch of the pole.
     *
     * @param low whether it begins above what is left out; {@code high} whether it ends below
     */
    private record Stretch(double from, double to, boolean low, boolean high) {}

    List<PaperPage> pages(PageFrame frame, Notices notices) {
        Heights heights = new Heights(section, false, printer);
        List<Stretch> stretches = stretches(marks(heights));
        List<SceneItem> items = new ArrayList<>();
        stretches.forEach(stretch -> items.addAll(drawn(stretch)));
        List<Heights.Level> more = new ArrayList<>();
        floor().ifPresent(floor -> more.add(new Heights.Level(floor, List.of("floor"))));
        for (int i = 1; i < stretches.size(); i++) {
            more.addAll(
                    leftOut(heights, stretches.get(i - 1).to(), stretches.get(i).from()));
        }
        List<Segment> across = new ArrayList<>();
        heights.levels().forEach(level -> across.add(level(level.y())));
        items.add(new Path(across, false, LineStyle.TICK));
        List<Segment> lines = new ArrayList<>();
        more.forEach(level -> lines.add(level(level.y())));
        if (!lines.isEmpty()) {
            items.add(new Path(lines, false, LineStyle.DIMENSION));
        }
        items.addAll(heights.labels(measure, WIDE + GAP, Paper.partWidth(frame), more));
        items.add(heights.from(measure, items));
        Box box = Box.around(items.stream().map(SceneItem::box).toList());
        return Paper.tooMany(frame, box, notices)
                ? List.of()
                : Paper.fullSize(frame, ShopSheet.STORY_POLE.title(), items, flow -> {
                    flow.lines(section.stack().title(), Drafting.TITLE);
                    flow.lines(
                            "A story pole at full size, " + Drafting.units(section.stack()) + ". " + heights.from()
                                    + " Every line across is an edge of a piece: put the parts together on a straight"
                                    + " stick, and carry the lines to the wall."
                                    + (stretches.size() == 1
                                            ? ""
                                            : " Where nothing is marked the pole is left out: measure from line to line as"
                                                    + " the words at the break say."),
                            Drafting.TEXT);
                });
    }

    private OptionalDouble floor() {
        return section.stack().space().floor();
    }

    /** The heights that are marked, and the floor, from below up. */
    private List<Double> marks(Heights heights) {
        List<Double> marks = new ArrayList<>();
        floor().ifPresent(marks::add);
        heights.levels().forEach(level -> marks.add(level.y()));
        marks.sort(null);
        return marks;
    }

    private List<Stretch> stretches(List<Double> marks) {
        List<Stretch> stretches = new ArrayList<>();
        double from = marks.get(0);
        boolean low = false;
        for (int i = 1; i < marks.size(); i++) {
            double below = marks.get(i - 1);
            double above = marks.get(i);
            if (above - below > LONGEST_BARE) {
                stretches.add(new Stretch(from, round(below + BEYOND, true), low, true));
                from = round(above - BEYOND, false);
                low = true;
            }
        }
        stretches.add(new Stretch(from, marks.get(marks.size() - 1), low, false));
        return stretches;
    }

    /** A height that is a whole number of inches or centimeters from where heights are told from. */
    private double round(double y, boolean up) {
        double step = printer.metric() ? 1 / 2.54 : 1;
        double from = floor().orElse(0);
        double steps = (y - from) / step;
        return from + step * (up ? Math.ceil(steps) : Math.floor(steps));
    }

    private static Line level(double y) {
        return new Line(new Point(0, y), new Point(WIDE, y));
    }

    private static List<SceneItem> drawn(Stretch stretch) {
        if (!stretch.low() && !stretch.high()) {
            return List.of(new Path(
                    Outline.rectangle(new Box(0, stretch.from(), WIDE, stretch.to()))
                            .segments(),
                    true,
                    LineStyle.OUTLINE));
        }
        double low = stretch.low() ? stretch.from() - BEYOND / 4 : stretch.from();
        double high = stretch.high() ? stretch.to() + BEYOND / 4 : stretch.to();
        List<SceneItem> items = new ArrayList<>();
        List<Segment> edges = new ArrayList<>();
        edges.add(new Line(new Point(0, low), new Point(0, high)));
        edges.add(new Line(new Point(WIDE, low), new Point(WIDE, high)));
        if (!stretch.low()) {
            edges.add(level(low));
        }
        if (!stretch.high()) {
            edges.add(level(high));
        }
        items.add(new Path(edges, false, LineStyle.OUTLINE));
        if (stretch.low()) {
            items.add(zigzag(low));
        }
        if (stretch.high()) {
            items.add(zigzag(high));
        }
        return items;
    }

    private static SceneItem zigzag(double y) {
        List<Point> points = List.of(
                new Point(0, y),
                new Point(0.4 * WIDE, y),
                new Point(0.46 * WIDE, y + BREAK),
                new Point(0.54 * WIDE, y - BREAK),
                new Point(0.6 * WIDE, y),
                new Point(WIDE, y));
        List<Segment> lines = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            lines.add(new Line(points.get(i - 1), points.get(i)));
        }
        return new Path(lines, false, LineStyle.BREAK);
    }

    /** The lines on both sides of what is left out, each with how far the other is. */
    private List<Heights.Level> leftOut(Heights heights, double below, double above) {
        String apart = printer.bare(Figure.length(above - below));
        return List.of(
                new Heights.Level(
                        below, List.of("measure from here: " + apart + " up to the line at " + heights.told(above))),
                new Heights.Level(
                        above, List.of("measure from here: " + apart + " down to the line at " + heights.told(below))));
    }
}
