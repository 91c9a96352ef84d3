package buildup.cli.drawing.sheet;

import buildup.cli.drawing.draft.Words;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.cli.table.Table;
import buildup.cli.table.TableCell;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/** A table on a sheet, its first column as wide as the others leave. */
public final class SheetTable {
    private static final double SIZE = 0.12;
    private static final double BETWEEN = 0.22;
    private static final double LINE = 1.6 * SIZE;

    private SheetTable() {}

    /** From the origin to the right and down. */
    public static List<SceneItem> items(Table table, TextMeasure measure, double width) {
        double[] widths = widths(table, measure, width);
        List<SceneItem> items = new ArrayList<>();
        double y = -LINE;
        items.add(Label.of(measure, table.title(), new Point(0, y), SIZE, Label.Anchor.START));
        List<String> headings =
                table.columns().stream().map(Table.TextColumn::heading).toList();
        if (!String.join("", headings).isEmpty()) {
            y -= 1.1 * LINE;
            row(items, table, headings, widths, y, measure);
        }
        y -= 0.4 * LINE;
        items.add(new Path(List.of(new Line(new Point(0, y), new Point(width, y))), false, LineStyle.RULE));
        for (List<TableCell> cells : table.rows()) {
            y -= LINE;
            row(items, table, cells.stream().map(TableCell::text).toList(), widths, y, measure);
        }
        return items;
    }

    private static double[] widths(Table table, TextMeasure measure, double width) {
        double[] widths = new double[table.columns().size()];
        double left = width;
        for (int i = 1; i < widths.length; i++) {
            widths[i] = measure.width(table.columns().get(i).heading(), SIZE);
            for (List<TableCell> row : table.rows()) {
                widths[i] = Math.max(widths[i], measure.width(row.get(i).text(), SIZE));
            }
            left -= widths[i] + BETWEEN;
        }
        widths[0] = Math.max(10 * SIZE, left);
        return widths;
    }

    private static void row(
            List<SceneItem> items, Table table, List<String> texts, double[] widths, double y, TextMeasure measure) {
        double x = 0;
        for (int i = 0; i < widths.length; i++) {
            boolean right = table.columns().get(i).align() == Table.Align.RIGHT;
            Point at = new Point(right ? x + widths[i] : x, y);
            for (String line : Words.lines(measure, texts.get(i), SIZE, widths[i] + Tolerance.SAME_SIZE, 1)) {
                items.add(Label.of(measure, line, at, SIZE, right ? Label.Anchor.END : Label.Anchor.START));
            }
            x += widths[i] + BETWEEN;
        }
    }
}
