package buildup.cli.drawing.paper;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Words;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * The rows of ruled cells at the foot of every page: what the job is, what the page shows, which page it is.
 *
 * @param rows from the top down; a cell of the last one will say which page it is
 */
public record TitleStrip(List<List<TitleCell>> rows) {
    /** Height of a row, in. */
    static final double ROW = 0.36;

    private static final double PAD = 0.05;
    private static final double CAPTION = Drafting.SMALLEST;

    /** Copies the lists. */
    public TitleStrip {
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** How high the strip is, in of paper. */
    double height() {
        return ROW * rows.size();
    }

    /** The same with more cells at the end of its last row. */
    TitleStrip with(List<TitleCell> more) {
        List<List<TitleCell>> all = new ArrayList<>(rows);
        List<TitleCell> last = new ArrayList<>(all.remove(all.size() - 1));
        last.addAll(more);
        all.add(last);
        return new TitleStrip(all);
    }

    /** The strip drawn into a box of its height. */
    List<SceneItem> items(TextMeasure measure, Box box) {
        List<SceneItem> items = new ArrayList<>();
        items.add(new Path(Outline.rectangle(box).segments(), true, LineStyle.RULE));
        double top = box.top();
        for (List<TitleCell> row : rows) {
            double shares = row.stream().mapToDouble(TitleCell::share).sum();
            double left = box.back();
            for (TitleCell cell : row) {
                double wide = box.width() * cell.share() / shares;
                if (left > box.back()) {
                    items.add(rule(new Point(left, top - ROW), new Point(left, top)));
                }
                items.addAll(cell(measure, cell, left + PAD, top, wide - 2 * PAD));
                left += wide;
            }
            top -= ROW;
            if (top > box.bottom() + PAD) {
                items.add(rule(new Point(box.back(), top), new Point(box.face(), top)));
            }
        }
        return items;
    }

    private static SceneItem rule(Point from, Point to) {
        return new Path(List.of(new Line(from, to)), false, LineStyle.RULE);
    }

    private static List<SceneItem> cell(TextMeasure measure, TitleCell cell, double left, double top, double wide) {
        List<SceneItem> items = new ArrayList<>();
        double caption = top - 0.03 - CAPTION * Label.CAPITALS;
        Words.lines(measure, cell.caption(), CAPTION, wide, 1)
                .forEach(line ->
                        items.add(Label.of(measure, line, new Point(left, caption), CAPTION, Label.Anchor.START)));
        // a long name is set smaller before it is cut
        double size = measure.width(cell.text(), Drafting.TEXT) <= wide ? Drafting.TEXT : CAPTION;
        double baseline = top - ROW + 0.07;
        Words.lines(measure, cell.text(), size, wide, 1)
                .forEach(line ->
                        items.add(Label.of(measure, line, new Point(left, baseline), size, Label.Anchor.START)));
        return items;
    }
}
