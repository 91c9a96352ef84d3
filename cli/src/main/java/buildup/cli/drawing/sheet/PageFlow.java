package buildup.cli.drawing.sheet;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Words;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.cli.table.Table;
import buildup.cli.table.TableCell;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

/**
 * Lines, tables and pictures from the top of a page down, and on the next page where one is full. Places are counted from the
 * upper left corner of each page, inches, up above 0.
 */
public final class PageFlow {
    /** From line to line, in sizes of the text; and closer, where a few lines would have a page of their own. */
    private static final double LEADING = 1.45;

    private static final double CLOSER = 1.25;

    /** So much of a page is hardly worth it. */
    private static final double HARDLY = 0.16;

    private static final double TABLE_TEXT = 0.12;
    private static final double BETWEEN = 0.2;
    private static final double BESIDE = 0.4;
    private static final int MOST_LINES = 30;

    /** The narrowest that a column is made, in. */
    private static final double LEAST = 0.5;

    private final TextMeasure measure;
    private final double width;
    private final double height;
    private final double leading;
    private final List<List<SceneItem>> pages = new ArrayList<>();
    private double y;
    private boolean fits = true;

    /** An empty page of that size between its margins. */
    public PageFlow(TextMeasure measure, double width, double height) {
        this(measure, width, height, LEADING);
    }

    private PageFlow(TextMeasure measure, double width, double height, double leading) {
        this.measure = measure;
        this.width = width;
        this.height = height;
        this.leading = leading;
        pages.add(new ArrayList<>());
    }

    /** Pages with what is written on them; with lines closer together where the last one would hold hardly anything. */
    public static PageFlow written(TextMeasure measure, double width, double height, Consumer<PageFlow> written) {
        PageFlow flow = new PageFlow(measure, width, height);
        written.accept(flow);
        if (flow.pages.size() == 1 || -flow.y > HARDLY * height) {
            return flow;
        }
        PageFlow closer = new PageFlow(measure, width, height, CLOSER);
        written.accept(closer);
        return closer.pages.size() < flow.pages.size() ? closer : flow;
    }

    /** Whether everything so far was small enough for a page. */
    public boolean fits() {
        return fits;
    }

    /** What stands on each page. */
    public List<List<SceneItem>> pages() {
        return pages.stream().map(List::copyOf).toList();
    }

    /** Leaves so much free, unless the page has just begun. */
    public void gap(double high) {
        y -= y < 0 ? high * leading / LEADING : 0;
    }

    /** A text, in as many lines as it takes. */
    public void lines(String text, double size) {
        for (String line : Words.lines(measure, text, size, width, MOST_LINES)) {
            room(leading * size);
            y -= leading * size;
            add(Label.of(measure, line, new Point(0, y), size, Label.Anchor.START));
        }
    }

    /** Two texts, one at each edge, in one line. */
    public void edges(String left, String right, double size) {
        room(leading * size);
        y -= leading * size;
        if (!left.isEmpty()) {
            add(Label.of(measure, left, new Point(0, y), size, Label.Anchor.START));
        }
        if (!right.isEmpty()) {
            add(Label.of(measure, right, new Point(width, y), size, Label.Anchor.END));
        }
    }

    /** Blocks from left to right, in as many rows as it takes; each stays whole. */
    public void blocks(List<Block> blocks, double gap) {
        List<Block> row = new ArrayList<>();
        double left = 0;
        for (Block block : blocks) {
            fits = fits && block.width() <= width && block.height() <= height;
            if (!row.isEmpty() && left + block.width() > width) {
                row(row, gap);
                row.clear();
                left = 0;
            }
            row.add(block);
            left += block.width() + BESIDE;
        }
        row(row, gap);
    }

    /** Blocks of one size edge to edge, as sheets of labels are printed that are cut apart. */
    public void labels(List<Block> blocks) {
        int across = Math.max(1, (int) Math.floor(
                width / blocks.stream().mapToDouble(Block::width).max().orElse(width)));
        for (int first = 0; first < blocks.size(); first += across) {
            row(blocks.subList(first, Math.min(blocks.size(), first + across)), 0, 0);
        }
    }

    /** A block at the head of the page to the right of what stands there. Whether there was room for it. */
    public boolean beside(Block block) {
        double right = Scene.leaves(pages.get(pages.size() - 1)).stream()
                        .map(SceneItem::box)
                        .filter(box -> box.top() > -block.height() - BETWEEN)
                        .mapToDouble(Box::face)
                        .max()
                        .orElse(0)
                + BESIDE;
        boolean room = block.height() <= -y && right + block.width() <= width;
        if (room) {
            add(block.at(width - block.width(), 0));
        }
        return room;
    }

    private void row(List<Block> row, double gap) {
        row(row, gap, BESIDE);
    }

    private void row(List<Block> row, double gap, double beside) {
        double high = row.stream().mapToDouble(Block::height).max().orElse(0);
        room(high);
        double left = 0;
        for (Block block : row) {
            add(block.at(left, y));
            left += block.width() + beside;
        }
        y -= high + gap;
    }

    /** A table, its heading on the page of its first row, and repeated where it goes on on the next page. */
    public void table(Table table) {
        double[] widths = widths(table);
        List<String> headings =
                table.columns().stream().map(Table.TextColumn::heading).toList();
        List<List<String>> head = wrapped(headings, widths);
        List<List<List<String>>> rows = table.rows().stream()
                .map(cells -> wrapped(cells.stream().map(TableCell::text).toList(), widths))
                .toList();
        int title = Words.lines(measure, table.title(), TABLE_TEXT, width, MOST_LINES)
                .size();
        double first = rows.stream().limit(1).mapToDouble(this::high).sum();
        room((title * leading + 0.5) * TABLE_TEXT + high(head) + Math.max(first, 2 * leading * TABLE_TEXT));
        lines(table.title(), TABLE_TEXT);
        heading(table, head, widths);
        for (List<List<String>> row : rows) {
            if (-y + high(row) > height) {
                turn();
                heading(table, head, widths);
            }
            row(table, row, widths);
        }
    }

    private void heading(Table table, List<List<String>> head, double[] widths) {
        if (head.stream().flatMap(List::stream).anyMatch(text -> !text.isEmpty())) {
            row(table, head, widths);
        }
        y -= 0.5 * TABLE_TEXT;
        double right = BETWEEN * (widths.length - 1) + Arrays.stream(widths).sum();
        add(new Path(List.of(new Line(new Point(0, y), new Point(right, y))), false, LineStyle.RULE));
    }

    private void row(Table table, List<List<String>> cells, double[] widths) {
        double x = 0;
        for (int i = 0; i < widths.length; i++) {
            boolean right = table.columns().get(i).align() == Table.Align.RIGHT;
            for (int line = 0; line < cells.get(i).size(); line++) {
                Point at = new Point(right ? x + widths[i] : x, y - (line + 1) * leading * TABLE_TEXT);
                add(Label.of(
                        measure,
                        cells.get(i).get(line),
                        at,
                        TABLE_TEXT,
                        right ? Label.Anchor.END : Label.Anchor.START));
            }
            x += widths[i] + BETWEEN;
        }
        y -= high(cells);
    }

    private double high(List<List<String>> cells) {
        return leading * TABLE_TEXT * cells.stream().mapToInt(List::size).max().orElse(1);
    }

    private List<List<String>> wrapped(List<String> texts, double[] widths) {
        List<List<String>> cells = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) {
            cells.add(Words.lines(measure, texts.get(i), TABLE_TEXT, widths[i] + Tolerance.SNAP, MOST_LINES));
        }
        return cells;
    }

    /** As wide as the longest text of each column; what is too much is taken from the widest ones, made alike. */
    private double[] widths(Table table) {
        double[] widths = new double[table.columns().size()];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = measure.width(table.columns().get(i).heading(), TABLE_TEXT);
            for (List<TableCell> row : table.rows()) {
                widths[i] = Math.max(widths[i], measure.width(row.get(i).text(), TABLE_TEXT));
            }
        }
        double most = most(widths, width - BETWEEN * (widths.length - 1));
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.min(widths[i], Math.max(LEAST, most));
        }
        return widths;
    }

    /** What no column may exceed for all of them to fit. */
    private static double most(double[] widths, double room) {
        double[] sorted = widths.clone();
        Arrays.sort(sorted);
        double left = room;
        for (int i = 0; i < sorted.length; i++) {
            double each = left / (sorted.length - i);
            if (sorted[i] > each) {
                return each;
            }
            left -= sorted[i];
        }
        return Double.POSITIVE_INFINITY;
    }

    /** A line to be written on, behind its words; the words and the line stay together. */
    public void toWrite(String words) {
        room(2.4 * leading * Drafting.TEXT);
        y -= 2.2 * leading * Drafting.TEXT;
        Label label = Label.of(measure, words, new Point(0, y), Drafting.TEXT, Label.Anchor.START);
        add(label);
        double from = label.width() + BETWEEN;
        add(new Path(
                List.of(new Line(new Point(from, y - 0.03), new Point(from + 3.2, y - 0.03))), false, LineStyle.RULE));
    }

    /** Turns the page unless so much is free; so that what follows stays together. */
    public void room(double high) {
        if (!roomFor(high) && y < 0) {
            turn();
        }
    }

    /** Whether so much is free on the page. */
    public boolean roomFor(double high) {
        return -y + high <= height;
    }

    /** How much is free on the page. */
    public double left() {
        return height + y;
    }

    private void turn() {
        pages.add(new ArrayList<>());
        y = 0;
    }

    private void add(SceneItem item) {
        pages.get(pages.size() - 1).add(item);
    }
}
