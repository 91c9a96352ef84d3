package buildup.cli.drawing.sheet;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Words;
import buildup.cli.drawing.label.Caption;
import buildup.cli.scene.About;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.cli.table.Table;
import buildup.cli.table.TableCell;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The list of pieces: letter, name, profile, blank, kind, height, projection; the one put up first stands first. */
public final class PieceTable {
    private static final double ROW = 0.2;
    private static final double LINE = 0.16;
    private static final double GAP = 0.16;

    private static final double WIDEST = 2.1;

    /** Columns of words; the rest are of sizes. */
    private static final int WORDS = 4;

    private static final List<String> HEAD = List.of("", "piece", "profile", "kind", "blank", "height", "projection");

    private final TextMeasure measure;
    private final List<List<List<String>>> rows = new ArrayList<>();

    private PieceTable(TextMeasure measure) {
        this.measure = measure;
    }

    /** Nothing when there is no piece. */
    public static Optional<Block> of(Section section, TextMeasure measure) {
        PieceTable table = new PieceTable(measure);
        for (int i = 0; i < section.bodies().size(); i++) {
            Body body = section.body(i);
            String letter = Section.letter(i);
            body.placed().ifPresent(placed -> table.rows.add(table.row(letter, placed, section.stack())));
        }
        return table.rows.isEmpty()
                ? Optional.empty()
                : Optional.of(Block.of(new Group("pieces-list", About.of(Subject.NOTES, table.items()))));
    }

    /** The same as a table that is broken to a page. */
    public static Table table(Section section) {
        List<List<TableCell>> rows = new ArrayList<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            String letter = Section.letter(i);
            section.body(i)
                    .placed()
                    .ifPresent(placed -> rows.add(whole(letter, placed, section.stack()).stream()
                            .map(TableCell::of)
                            .toList()));
        }
        return new Table(
                "Pieces, the one put up first on top",
                Table.columns("", "piece", "profile", "kind", ">blank", ">height", ">projection"),
                rows);
    }

    private static List<String> whole(String letter, Placed placed, Stack stack) {
        List<String> cells = new ArrayList<>(List.of(
                letter,
                placed.name(),
                placed.piece().stock().name(),
                placed.piece().kind().word()));
        cells.addAll(sizes(placed, stack));
        return cells;
    }

    private static List<String> sizes(Placed placed, Stack stack) {
        Box box = placed.outline().box();
        return List.of(
                Drafting.size(stack, placed.blankThickness()) + " x " + Drafting.size(stack, placed.blankWidth()),
                Drafting.size(stack, box.height()),
                Drafting.size(stack, box.face()));
    }

    private List<List<String>> row(String letter, Placed placed, Stack stack) {
        List<List<String>> cells = new ArrayList<>(List.of(
                List.of(letter),
                cell(placed.name()),
                cell(placed.piece().stock().name()),
                List.of(placed.piece().kind().word())));
        sizes(placed, stack).forEach(size -> cells.add(List.of(size)));
        return cells;
    }

    private List<String> cell(String text) {
        return Words.lines(measure, text, Drafting.TEXT, WIDEST, 2);
    }

    private List<SceneItem> items() {
        double[] lefts = lefts();
        List<SceneItem> items = new ArrayList<>();
        for (int column = 0; column < HEAD.size(); column++) {
            items.addAll(cell(List.of(HEAD.get(column)), column, lefts, 0));
        }
        double right = lefts[HEAD.size()] - GAP;
        double y = -0.07;
        items.add(rule(0, right, y));
        for (List<List<String>> row : rows) {
            int lines = row.stream().mapToInt(List::size).max().orElse(1);
            double baseline = y - ROW + 0.045;
            items.addAll(Caption.ringed(
                    measure,
                    row.get(0).get(0),
                    new Point(Drafting.SMALL_RING, baseline + Drafting.TEXT * Label.CAPITALS / 2),
                    false));
            for (int column = 1; column < row.size(); column++) {
                items.addAll(cell(row.get(column), column, lefts, baseline));
            }
            y -= ROW + (lines - 1) * LINE;
        }
        items.add(rule(0, right, y - 0.03));
        return items;
    }

    private List<SceneItem> cell(List<String> lines, int column, double[] lefts, double baseline) {
        List<SceneItem> items = new ArrayList<>();
        boolean words = column < WORDS;
        double x = words ? lefts[column] : lefts[column + 1] - GAP;
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isEmpty()) {
                items.add(Label.of(
                        measure,
                        lines.get(i),
                        new Point(x, baseline - i * LINE),
                        Drafting.TEXT,
                        words ? Label.Anchor.START : Label.Anchor.END));
            }
        }
        return items;
    }

    /** The left edge of each column, and of the one that would follow. */
    private double[] lefts() {
        double[] widths = new double[HEAD.size()];
        Arrays.setAll(widths, column -> measure.width(HEAD.get(column), Drafting.TEXT));
        widths[0] = 2 * Drafting.SMALL_RING;
        for (List<List<String>> row : rows) {
            for (int column = 1; column < row.size(); column++) {
                for (String line : row.get(column)) {
                    widths[column] = Math.max(widths[column], measure.width(line, Drafting.TEXT));
                }
            }
        }
        double[] lefts = new double[HEAD.size() + 1];
        for (int column = 0; column < widths.length; column++) {
            double wider = column > 0 ? PictureSheet.WIDER * widths[column] : 0;
            lefts[column + 1] = lefts[column] + widths[column] + wider + GAP;
        }
        return lefts;
    }

    private static SceneItem rule(double from, double to, double y) {
        return new Path(List.of(new Line(new Point(from, y), new Point(to, y))), false, LineStyle.RULE);
    }
}
