package buildup.cli.drawing.room;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.Paper;
import buildup.cli.drawing.paper.PaperPage;
import buildup.cli.drawing.sheet.Block;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.About;
import buildup.cli.scene.Group;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Pattern;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.engine.room.run.Job;
import buildup.engine.room.sticks.CutList;
import buildup.engine.room.stock.End;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Stick;
import buildup.engine.room.stock.StickPiece;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every stick with the pieces that it is cut into, all to one scale in their length; below them a label for each piece. */
public final class SticksDrawing {
    /** The longest stick on the sheet, in. */
    private static final double WIDEST = 10;

    /** A stick that is cut to length only, and the least and the whole height of one that is ripped. */
    private static final double HIGH = 0.32;

    private static final double LEAST = 0.26;
    private static final double RIPPED = 0.6;
    private static final double GAP = 0.24;
    private static final double MARGIN = 0.3;
    private static final double INSET = 0.03;

    /** As many as a line under the longest stick holds. */
    private static final int IDS_IN_A_LINE = 15;

    /** Left of the sticks: how wide their strips are. */
    private static final double WIDTHS = 0.75;

    private static final Pattern WASTE = new Pattern(45, 0.07, true, 0.005, List.of());

    private final CutList list;
    private final Job job;
    private final TextMeasure measure;
    private final double scale;
    private final List<SceneItem> items = new ArrayList<>();
    private double y;

    /** @param widest the longest stick is on the sheet, in */
    private SticksDrawing(Job job, CutList list, TextMeasure measure, double widest) {
        this.list = list;
        this.job = job;
        this.measure = measure;
        int longest = list.sticks().stream().mapToInt(Stick::length).max().orElse(1);
        this.scale = Math.min(widest / LengthSteps.inches(longest), 1);
    }

    /** The sticks of a job. */
    public static Scene of(Job job, CutList list, TextMeasure measure) {
        return new SticksDrawing(job, list, measure, WIDEST).scene();
    }

    /** The same on pages, a stick and a label never across two of them. */
    public static List<PaperPage> pages(Job job, CutList list, PageFrame frame) {
        SticksDrawing drawing =
                new SticksDrawing(job, list, frame.measure(), Math.min(WIDEST, Paper.width(frame) - WIDTHS));
        List<Block> sticks = new ArrayList<>();
        for (int i = 0; i < list.sticks().size(); i++) {
            List<SceneItem> drawn = drawing.stick(i + 1, list.sticks().get(i));
            Block block = Block.of(new Group("stick-" + (i + 1), drawn));
            // all in one line on the left, where widths of strips stand beside some of them
            Box box = new Box(
                    -WIDTHS,
                    block.box().bottom(),
                    block.box().face(),
                    block.box().top());
            sticks.add(new Block(block.group(), box));
        }
        return Paper.flowing(frame, "Sticks and labels", drawing.scaleWords() + " in length", flow -> {
            flow.blocks(List.of(Block.of(drawing.legend())), GAP);
            sticks.forEach(stick -> flow.blocks(List.of(Paper.fitted(frame, stick)), GAP));
            flow.labels(new PieceCards(job, list, frame.measure()).blocks());
        });
    }

    private String scaleWords() {
        return "1 : " + Math.max(1, Math.round(1 / scale));
    }

    private Scene scene() {
        String title = job.section().stack().title();
        Group legend = legend();
        items.add(legend);
        y = legend.box().bottom() - GAP;
        for (int i = 0; i < list.sticks().size(); i++) {
            items.add(new Group("stick-" + (i + 1), stick(i + 1, list.sticks().get(i))));
        }
        y -= GAP;
        items.addAll(new PieceCards(job, list, measure).items(y));
        return PictureSheet.around(
                title + ", sticks",
                list.sticks().size() + " sticks with the pieces that each is cut into, and a label for each piece.",
                items,
                MARGIN);
    }

    private Group legend() {
        return new Legend(measure, Drafting.TEXT)
                .title(job.section().stack().title())
                .text("Sticks, drawn " + scaleWords()
                        + " in their length; widths are not to scale. Lengths lie with their wall side up, and"
                        + " are told from long point to long point, in "
                        + Drafting.units(job.section().stack())
                        + ". On the labels: the miter with the side to which the saw is swung, and the bevel, as the piece"
                        + " lies on a saw whose blade tilts to the left.")
                .sample(
                        "cut away",
                        at -> waste(new Box(at.x(), at.y(), at.x() + 3 * Drafting.TEXT, at.y() + Drafting.TEXT)))
                .group();
    }

    private List<SceneItem> stick(int number, Stick stick) {
        List<SceneItem> drawn = new ArrayList<>();
        String from = stick.origin().word();
        y -= Drafting.TEXT + 0.06;
        String words = number + ":  " + stick.supply().name() + ", "
                + stick.supply().wood() + ", " + stickLength(stick) + ", " + from;
        drawn.add(Label.of(measure, words, new Point(0, y), Drafting.TEXT, Label.Anchor.START));
        y -= 0.07;
        double top = y;
        for (Stick.Strip strip : stick.strips()) {
            double high = strip.ripped()
                    ? Math.max(
                            LEAST,
                            RIPPED
                                    * LengthSteps.inches(strip.width())
                                    / stick.supply().width())
                    : HIGH;
            drawn.addAll(strip(stick, strip, new Box(0, y - high, length(stick.length()), y)));
            y -= high;
        }
        if (stick.strips().get(0).ripped()) {
            double left = stick.supply().width()
                    - stick.strips().stream()
                            .mapToDouble(strip -> LengthSteps.inches(strip.width()))
                            .sum();
            double high = Math.max(0.07, RIPPED * left / stick.supply().width());
            drawn.addAll(waste(new Box(0, y - high, length(stick.length()), y)));
            y -= high;
        }
        drawn.add(new Path(CutPiece.ring(new Box(0, y, length(stick.length()), top)), true, LineStyle.OUTLINE));
        drawn.addAll(shortOnes(stick));
        y -= GAP - 0.08;
        return drawn;
    }

    /** Under the stick: the pieces that are drawn too short to carry their letters, in the order in which they lie. */
    private List<SceneItem> shortOnes(Stick stick) {
        List<String> ids = stick.strips().stream()
                .flatMap(strip -> strip.pieces().stream())
                .filter(lie -> name(lie.piece(), new Box(length(lie.from()), 0, length(lie.to()), LEAST - 2 * INSET))
                        .isEmpty())
                .map(lie -> lie.piece().id())
                .toList();
        List<SceneItem> lines = new ArrayList<>();
        for (int i = 0; i < ids.size(); i += IDS_IN_A_LINE) {
            y -= Drafting.TEXT + 0.06;
            String words = (i == 0 ? "too short for their letters, from the left: " : "")
                    + String.join(", ", ids.subList(i, Math.min(ids.size(), i + IDS_IN_A_LINE)));
            lines.add(Label.of(measure, words, new Point(0, y), Drafting.TEXT, Label.Anchor.START));
        }
        return About.of(Subject.DIMENSIONS, lines);
    }

    private String stickLength(Stick stick) {
        LengthUnit unit = job.section().stack().lengths().bareUnit();
        return new FigurePrinter(unit).print(LengthSteps.stick(stick.length()));
    }

    private double length(int steps) {
        return LengthSteps.inches(steps) * scale;
    }

    private List<SceneItem> strip(Stick stick, Stick.Strip strip, Box box) {
        List<SceneItem> drawn = new ArrayList<>();
        double at = 0;
        for (Stick.LaidPiece lie : strip.pieces()) {
            Box own = new Box(length(lie.from()), box.bottom() + INSET, length(lie.to()), box.top() - INSET);
            drawn.addAll(gap(at, own.back(), box));
            // face for back, what is longer on the room side is drawn longer on the other
            int way = lie.turned() ? -1 : 1;
            List<Segment> ring = CutPiece.ring(
                    own,
                    way * slant(lie.piece().leftOnStick()),
                    way * slant(lie.piece().rightOnStick()));
            drawn.addAll(CutPiece.items(Optional.of(title(lie.piece())), ring));
            drawn.addAll(About.of(Subject.DIMENSIONS, name(lie.piece(), own)));
            at = own.face();
        }
        double rest = length(strip.rest());
        double to = length(stick.length() - list.shop().trim());
        if (list.keeps(strip)) {
            drawn.addAll(gap(at, to - rest, box));
            drawn.addAll(About.of(Subject.DIMENSIONS, rest(strip, new Box(to - rest, box.bottom(), to, box.top()))));
            at = to;
        }
        drawn.addAll(gap(at, box.face(), box));
        if (strip.ripped()) {
            drawn.add(new Path(CutPiece.ring(box), true, LineStyle.DIMENSION));
            drawn.addAll(About.of(Subject.DIMENSIONS, List.of(ripped(strip, box))));
        }
        return drawn;
    }

    /** Left of the stick: how wide the strip is. */
    private SceneItem ripped(Stick.Strip strip, Box box) {
        String width = Drafting.size(job.section().stack(), LengthSteps.inches(strip.width()));
        Point middle = new Point(
                -0.08 - measure.width(width, Drafting.TEXT) / 2, box.middle().y());
        return Label.centered(measure, width, middle, Drafting.TEXT, false);
    }

    private double slant(End end) {
        return end.slant() * scale;
    }

    private static String title(StickPiece piece) {
        return piece.id() + ", " + piece.course() + ", " + piece.stretch();
    }

    /** Its label and its length, or as much of them as there is room for. */
    private List<SceneItem> name(StickPiece piece, Box box) {
        double from = box.back() + Math.abs(slant(piece.leftOnStick()));
        double to = box.face() - Math.abs(slant(piece.rightOnStick()));
        double room = to - from;
        Point middle = new Point((from + to) / 2, box.middle().y());
        String length = Drafting.size(job.section().stack(), piece.inches());
        for (String words : List.of(piece.id() + "   " + length, piece.id())) {
            if (measure.width(words, Drafting.TEXT) + 2 * Drafting.AIR < room) {
                return List.of(Label.centered(measure, words, middle, Drafting.TEXT, false));
            }
        }
        boolean upright = measure.width(piece.id(), Drafting.TEXT) < box.height() && Drafting.TEXT < room;
        return upright ? List.of(Label.centered(measure, piece.id(), middle, Drafting.TEXT, true)) : List.of();
    }

    private List<SceneItem> rest(Stick.Strip strip, Box box) {
        String words = "offcut " + Drafting.size(job.section().stack(), LengthSteps.inches(strip.rest()));
        boolean fits = measure.width(words, Drafting.TEXT) + 2 * Drafting.AIR < box.width();
        Point middle = box.middle();
        return fits ? List.of(Label.centered(measure, words, middle, Drafting.TEXT, false)) : List.of();
    }

    /** Wood between two pieces, before the first and behind the last. */
    private static List<SceneItem> gap(double from, double to, Box box) {
        return to - from < 0.02 ? List.of() : waste(new Box(from, box.bottom(), to, box.top()));
    }

    private static List<SceneItem> waste(Box box) {
        List<Segment> ring = CutPiece.ring(box);
        return List.of(
                new Hatch(ring, WASTE, new Point(box.back(), box.bottom())),
                new About(Subject.TRIM, List.of(new Path(ring, true, LineStyle.EXTENSION))));
    }
}
