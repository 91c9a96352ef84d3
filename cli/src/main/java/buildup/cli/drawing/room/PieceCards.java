package buildup.cli.drawing.room;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Words;
import buildup.cli.drawing.sheet.Block;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.engine.room.run.Course;
import buildup.engine.room.run.Job;
import buildup.engine.room.run.Saw;
import buildup.engine.room.sticks.CutList;
import buildup.engine.room.stock.End;
import buildup.engine.room.stock.StickPiece;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A label for each piece, to be cut apart and stuck on: what it is, where it goes, how long, and its two cuts drawn. */
final class PieceCards {
    private static final double WIDE = 2.55;
    private static final double HIGH = 1.6;
    private static final int IN_A_ROW = 4;
    private static final double PAD = 0.08;
    private static final double ID = 0.2;
    private static final double SMALL = 0.11;

    private static final double LINE = 0.145;

    /** How a short piece is held takes at most so many lines. */
    private static final int HOLD = 2;

    /** How a piece lies on the saw takes at most so many lines. */
    private static final int POSITION = 3;

    private static final String SQUARE = "square";

    /** The drawn piece. */
    private static final double SHAPE = 0.22;

    private final Job job;
    private final CutList list;
    private final TextMeasure measure;
    private final Map<String, Phrase> held;
    private final double high;

    PieceCards(Job job, CutList list, TextMeasure measure) {
        this.job = job;
        this.list = list;
        this.measure = measure;
        this.held = list.held();
        this.high = HIGH + (held.isEmpty() ? 0 : HOLD * LINE);
    }

    /** The labels in rows from there down, in the order of the courses. */
    List<SceneItem> items(double top) {
        List<SceneItem> items = new ArrayList<>();
        List<StickPiece> pieces = list.asCut();
        for (int number = 0; number < pieces.size(); number++) {
            double left = number % IN_A_ROW * WIDE;
            int row = number / IN_A_ROW;
            double down = top - row * high;
            items.add(group(number, pieces.get(number), new Box(left, down - high, left + WIDE, down)));
        }
        return items;
    }

    /** The labels one by one. */
    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        for (StickPiece piece : list.asCut()) {
            blocks.add(Block.of(group(blocks.size(), piece, new Box(0, 0, WIDE, high))));
        }
        return blocks;
    }

    private Group group(int number, StickPiece piece, Box box) {
        return new Group("label-" + (number + 1), card(piece, box));
    }

    private List<SceneItem> card(StickPiece piece, Box box) {
        List<SceneItem> items = new ArrayList<>();
        items.add(new Path(CutPiece.ring(box), true, LineStyle.EXTENSION));
        double left = box.back() + PAD;
        double right = box.face() - PAD;
        double y = box.top() - PAD - ID * Label.CAPITALS;
        items.add(Label.of(measure, piece.id(), new Point(left, y), ID, Label.Anchor.START));
        String length = Drafting.size(job.section().stack(), piece.inches());
        items.add(Label.of(measure, length, new Point(right, y), ID, Label.Anchor.END));
        y -= 0.17;
        String where = piece.course() + ", " + piece.stretch() + (piece.part().isEmpty() ? "" : ", " + piece.part());
        for (String line : Words.lines(measure, where, Drafting.TEXT, WIDE - 2 * PAD, 1)) {
            items.add(Label.of(measure, line, new Point(left, y), Drafting.TEXT, Label.Anchor.START));
        }
        y -= 0.08;
        Box shape = new Box(left, y - SHAPE, right, y);
        items.addAll(CutPiece.items(
                Optional.empty(), CutPiece.ring(shape, slant(piece, piece.left()), slant(piece, piece.right()))));
        y -= SHAPE + LINE;
        cut(items, piece.left(), new Point(left, y), Label.Anchor.START);
        cut(items, piece.right(), new Point(right, y), Label.Anchor.END);
        if (piece.gluedUp()) {
            // between the cuts, where a long name cannot push it off the label
            items.add(Label.of(measure, "glue first", new Point((left + right) / 2, y), SMALL, Label.Anchor.MIDDLE));
        }
        if (held.containsKey(piece.id())) {
            String how = Drafting.printer(job.section().stack()).bare(held.get(piece.id()));
            double line = box.bottom() + PAD + HOLD * LINE;
            for (String words : Words.lines(measure, how, SMALL, WIDE - 2 * PAD, HOLD)) {
                line -= LINE;
                items.add(Label.of(measure, words, new Point(left, line), SMALL, Label.Anchor.START));
            }
        }
        return items;
    }

    /** The cut at its true angle in plan; a scarf goes through the thickness. */
    private double slant(StickPiece piece, End end) {
        double deep = job.courses().stream()
                .filter(course -> course.body() == piece.body())
                .mapToDouble(course -> course.face() - course.back())
                .findFirst()
                .orElse(1);
        double thick = job.courses().stream()
                .filter(course -> course.body() == piece.body())
                .mapToDouble(Course::thickness)
                .findFirst()
                .orElse(1);
        return SHAPE * end.slant() / (end.bevel() > 0 && end.miter() == 0 && deep < thick ? thick : deep);
    }

    /** The cut in lines below its end: what for, the angles, how the piece lies, on which side of the blade it is kept. */
    private void cut(List<SceneItem> items, End end, Point at, Label.Anchor anchor) {
        double down = 0;
        for (String line : lines(end)) {
            items.add(Label.of(measure, line, at.minus(new Point(0, down)), SMALL, anchor));
            down += LINE;
        }
    }

    private List<String> lines(End end) {
        String joint = end.joint().word();
        if (end.setting().isEmpty()) {
            return joint.equals(SQUARE) ? List.of(joint) : List.of(joint, SQUARE);
        }
        Saw.Setting setting = end.setting().get();
        List<String> lines = new ArrayList<>(List.of(joint, FigurePrinter.INCHES.print(setting.angles())));
        String lies = FigurePrinter.INCHES.print(setting.position());
        lines.addAll(Words.lines(measure, lies, SMALL, WIDE / 2 - 1.5 * PAD, POSITION));
        lines.add("keep the " + setting.keep().word());
        return lines;
    }
}
