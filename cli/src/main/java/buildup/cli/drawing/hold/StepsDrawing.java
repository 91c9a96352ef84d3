package buildup.cli.drawing.hold;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.PictureView;
import buildup.cli.drawing.draft.WoodDrawing;
import buildup.cli.drawing.draft.Words;
import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.Paper;
import buildup.cli.drawing.paper.PaperPage;
import buildup.cli.drawing.sheet.Block;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.About;
import buildup.cli.scene.Area;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.cli.scene.Tone;
import buildup.engine.hold.order.Driving;
import buildup.engine.hold.order.OrderSheets;
import buildup.engine.hold.order.PutUp;
import buildup.engine.hold.order.PuttingUp;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How a stack goes up: a small section for each step, in rows. What is new is hatched and heavily edged, its way in is an
 * arrow, and the nails of the step are drawn; what cannot go in has a cross in place of the arrow's end.
 */
public final class StepsDrawing {
    /** The widest that a small section and a row of them are, in of paper. */
    private static final double PANEL = 2.35;

    private static final double TALLEST = 3;
    private static final double ROW = 10.3;
    private static final double GAP = 0.3;

    /** Words stay clear of those beside them in another font too. */
    private static final double WORDS = (PANEL + GAP / 2) / (1 + PictureSheet.WIDER);

    /** A way is drawn no longer than this, in of paper. */
    private static final double LONGEST = 0.9;

    private static final double BARB = 0.05;
    private static final double HEAD = 0.04;
    private static final double SMALL = 0.11;
    private static final int MOST_LINES = 5;

    private final Section section;
    private final PuttingUp order;
    private final TextMeasure measure;
    private final PictureView view;
    private final WoodDrawing wood;
    private final FigurePrinter printer;

    private StepsDrawing(Section section, PuttingUp order, TextMeasure measure) {
        this.section = section;
        this.order = order;
        this.measure = measure;
        PictureView whole = PictureView.of(section);
        this.view = whole.scaled(Math.min(
                PANEL / whole.window().width(), TALLEST / whole.window().height()));
        this.wood = WoodDrawing.of(section, view);
        this.printer = Drafting.printer(section.stack());
    }

    /** The strip of steps; its words are in the unit of the document. */
    public static Scene of(Section section, PuttingUp order, TextMeasure measure) {
        return new StepsDrawing(section, order, measure).scene();
    }

    /** The same on pages, as many steps beside each other as there is room for. */
    public static List<PaperPage> pages(Section section, PuttingUp order, PageFrame frame) {
        StepsDrawing drawing = new StepsDrawing(section, order, frame.measure());
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < order.steps().size(); i++) {
            blocks.add(Paper.fitted(frame, Block.of(drawing.panel(i))));
        }
        return Paper.flowing(frame, "Step by step", "1 : " + drawing.smaller(), flow -> {
            flow.blocks(List.of(Block.of(drawing.legend())), GAP);
            flow.blocks(blocks, GAP);
        });
    }

    private long smaller() {
        return Math.max(1, Math.round(1 / view.scale()));
    }

    private Scene scene() {
        int across = Math.max(1, (int) Math.floor((ROW + GAP) / (PANEL + GAP)));
        List<Group> panels = new ArrayList<>();
        for (int i = 0; i < order.steps().size(); i++) {
            panels.add(panel(i));
        }
        List<SceneItem> items = new ArrayList<>();
        double top = 0;
        for (int first = 0; first < panels.size(); first += across) {
            List<Group> row = panels.subList(first, Math.min(panels.size(), first + across));
            // a piece may come down from above its section
            double head = view.window().top();
            top -= row.stream().mapToDouble(panel -> panel.box().top()).reduce(head, Math::max) - head;
            double low = top;
            for (int i = 0; i < row.size(); i++) {
                Group placed = row.get(i)
                        .moved(
                                i * (PANEL + GAP) - view.window().back(),
                                top - view.window().top());
                items.add(placed);
                low = Math.min(low, placed.box().bottom());
            }
            top = low - GAP;
        }
        Group legend = legend();
        items.add(legend.moved(-legend.box().back(), top - legend.box().top()));
        return PictureSheet.around(
                section.stack().title() + ", step by step",
                "Small sections in the order of putting up, with the way of each piece and its nails.",
                items,
                2 * Drafting.TEXT);
    }

    private Group panel(int step) {
        PutUp now = order.steps().get(step);
        Set<Integer> before = new HashSet<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            if (section.body(i).standing()) {
                before.add(i);
            }
        }
        order.steps()
                .subList(0, step)
                .forEach(earlier -> before.addAll(earlier.unit().bodies()));
        List<SceneItem> items = new ArrayList<>();
        for (WoodDrawing.Layer layer : wood.layers()) {
            if (before.contains(layer.number())) {
                // of one look, whatever it is: only what goes up in the step is told apart
                layer.areas().forEach(area -> items.add(unnamed(area, Tone.STANDING)));
                items.addAll(layer.part(styled(layer.edges(), LineStyle.NAILER)));
            }
        }
        for (WoodDrawing.Layer layer : wood.layers()) {
            if (now.unit().bodies().contains(layer.number())) {
                layer.areas().forEach(area -> items.add(unnamed(area, Tone.TRIM)));
                items.addAll(layer.part(layer.hatches()));
                items.addAll(layer.part(styled(layer.edges(), LineStyle.NAIL)));
            }
        }
        order.driving().stream()
                .filter(row -> row.step() == step)
                .forEach(row ->
                        items.add(new Path(SectionMarks.nail(row.fixed(), HEAD, view.scale()), false, LineStyle.NAIL)));
        items.addAll(About.of(Subject.SEQUENCE, arrow(now)));
        double under = items.stream()
                .mapToDouble(item -> item.box().bottom())
                .reduce(view.window().bottom(), Math::min);
        items.addAll(About.of(Subject.SEQUENCE, words(step, now, under)));
        return new Group("step-" + (step + 1), items);
    }

    /** A piece is drawn in many steps, and a name stands for one thing. */
    private static SceneItem unnamed(SceneItem item, Tone tone) {
        return item instanceof Area area ? new Area(Optional.empty(), area.title(), area.ring(), tone) : item;
    }

    private static List<SceneItem> styled(List<SceneItem> edges, LineStyle style) {
        return edges.stream()
                .<SceneItem>map(
                        item -> item instanceof Path path ? new Path(path.segments(), path.closed(), style) : item)
                .toList();
    }

    /** From where it comes to the middle of its place, with a bend if it has one. */
    private List<SceneItem> arrow(PutUp step) {
        if (step.way().isEmpty()) {
            return List.of();
        }
        Box box = Box.around(step.unit().bodies().stream()
                .map(body -> section.body(body).outline().box())
                .toList());
        Point end = box.middle().times(view.scale());
        List<Point> moves = step.way().get().moves().stream()
                .map(move -> shortened(move.times(view.scale())))
                .toList();
        List<Point> stops = new ArrayList<>(List.of(end));
        for (int i = moves.size() - 1; i >= 0; i--) {
            stops.add(0, stops.get(0).minus(moves.get(i)));
        }
        List<Segment> way = new ArrayList<>();
        for (int i = 0; i + 1 < stops.size(); i++) {
            if (stops.get(i).distance(stops.get(i + 1)) > Drafting.AIR) {
                // no farther than half way to the section beside it
                Boxes.within(new Line(stops.get(i), stops.get(i + 1)), cell()).ifPresent(way::add);
            }
        }
        if (way.isEmpty()) {
            return List.of();
        }
        Point along = end.minus(way.get(way.size() - 1).from()).unit();
        way.addAll(step.goes() ? SectionMarks.barbs(end, along, BARB) : cross(end));
        return List.of(new Path(way, false, LineStyle.CASING), new Path(way, false, LineStyle.FALL));
    }

    private Box cell() {
        Box window = view.window();
        return new Box(
                window.back() - GAP / 2,
                window.bottom() - LONGEST,
                window.back() + PANEL + GAP / 2,
                window.top() + LONGEST);
    }

    private static Point shortened(Point move) {
        return move.length() > LONGEST ? move.unit().times(LONGEST) : move;
    }

    private static List<Segment> cross(Point at) {
        double arm = 0.08;
        return List.of(
                new Line(at.plus(new Point(-arm, -arm)), at.plus(new Point(arm, arm))),
                new Line(at.plus(new Point(-arm, arm)), at.plus(new Point(arm, -arm))));
    }

    /** @param under the lowest that is drawn, in of paper */
    private List<SceneItem> words(int step, PutUp now, double under) {
        List<SceneItem> items = new ArrayList<>();
        double y = under - 1.6 * Drafting.TEXT;
        String name = now.unit().name(section);
        for (String line : Words.lines(measure, (step + 1) + "  " + name, Drafting.TEXT, WORDS, 2)) {
            items.add(at(line, y, Drafting.TEXT));
            y -= 1.4 * Drafting.TEXT;
        }
        List<String> said = new ArrayList<>(List.of(printer.print(OrderSheets.how(now))));
        for (Driving row : order.driving()) {
            if (row.step() == step) {
                said.add((row.bench() ? "on the bench: " : "")
                        + row.fixed().fastening().name()
                        + (row.before().isPresent()
                                ? ", before " + section.name(row.before().getAsInt())
                                : ""));
            }
        }
        for (String sentence : said) {
            for (String line : Words.lines(measure, sentence, SMALL, WORDS, MOST_LINES)) {
                items.add(at(line, y, SMALL));
                y -= 1.4 * SMALL;
            }
        }
        return items;
    }

    private Label at(String text, double y, double size) {
        return Label.of(measure, text, new Point(view.window().back(), y), size, Label.Anchor.START);
    }

    private Group legend() {
        return new Legend(measure, Drafting.TEXT)
                .title(section.stack().title())
                .text("Step by step, drawn about 1 : " + smaller()
                        + ". Hatched: what goes up in the step. Arrow: its way in; a cross where it cannot go in. Sizes in "
                        + Drafting.units(section.stack()) + ".")
                .group();
    }
}
