package buildup.cli.table;

import buildup.cli.table.Table.Align;
import buildup.cli.table.Table.TextColumn;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/** Writes a table as plain text. Cells that do not fit go on in the next line of their own column. */
public final class TextTable {
    private static final String BETWEEN = "  ";

    /** A column of words is not made narrower than this while figures could give way instead. */
    private static final int NARROWEST_WORDS = 6;

    private final Table table;
    private final int[] widths;

    private TextTable(Table table, int width) {
        this.table = table;
        this.widths = widths(table, width);
    }

    /**
     * The table in lines that end with "\n" and are no wider than that; headings left out where all are empty.
     *
     * @param width in display columns; at least four for each column of the table
     */
    public static String write(Table table, int width) {
        StringBuilder text = new StringBuilder();
        Display.wrap(table.title(), width).forEach(line -> line(text, line));
        TextTable writer = new TextTable(table, width);
        if (table.columns().stream().anyMatch(column -> !column.heading().isEmpty())) {
            writer.row(text, table.columns().stream().map(TextColumn::heading).toList());
            writer.row(text, Arrays.stream(writer.widths).mapToObj("-"::repeat).toList());
        }
        table.rows()
                .forEach(row ->
                        writer.row(text, row.stream().map(TableCell::text).toList()));
        return text.toString();
    }

    /** As wide as the cells ask; headings in several lines only where the width calls for it. */
    private static int[] widths(Table table, int width) {
        int room = width - BETWEEN.length() * (table.columns().size() - 1);
        int[] widths = natural(table, Display::width);
        if (Arrays.stream(widths).sum() > room) {
            widths = natural(table, TextTable::longestWord);
        }
        int tooMuch = Arrays.stream(widths).sum() - room;
        int[] whole = tooMuch > 0 ? words(table) : widths;
        for (int i = 0; i < tooMuch; i++) {
            widths[givesFirst(table, widths, whole)]--;
        }
        return widths;
    }

    private static int[] natural(Table table, ToIntFunction<String> ofHeading) {
        return IntStream.range(0, table.columns().size())
                .map(i -> Math.max(
                        ofHeading.applyAsInt(table.columns().get(i).heading()),
                        table.rows().stream()
                                .mapToInt(row -> Display.width(
                                        Display.plain(row.get(i).text()).strip()))
                                .max()
                                .orElse(0)))
                .toArray();
    }

    /** How wide each column must be, so that no word in it is broken. */
    private static int[] words(Table table) {
        return IntStream.range(0, table.columns().size())
                .map(i -> Math.max(
                        longestWord(table.columns().get(i).heading()),
                        table.rows().stream()
                                .mapToInt(row ->
                                        longestWord(Display.plain(row.get(i).text())))
                                .max()
                                .orElse(0)))
                .toArray();
    }

    private static int longestWord(String text) {
        return Arrays.stream(text.split(" ", -1)).mapToInt(Display::width).max().orElse(0);
    }

    /** Of columns of words the widest whose words stay whole, else the widest that can still give way, else any. */
    private static int givesFirst(Table table, int[] widths, int[] whole) {
        int first = 0;
        int best = -1;
        for (int i = 0; i < widths.length; i++) {
            boolean gives = table.columns().get(i).align() == Align.LEFT && widths[i] > NARROWEST_WORDS;
            int rank = !gives ? 0 : widths[i] > whole[i] ? 2 : 1;
            if (rank > best || (rank == best && widths[i] > widths[first])) {
                first = i;
                best = rank;
            }
        }
        return first;
    }

    private void row(StringBuilder text, List<String> cells) {
        List<List<String>> wrapped = new ArrayList<>();
        int lines = 0;
        for (int i = 0; i < widths.length; i++) {
            wrapped.add(Display.wrap(cells.get(i), widths[i]));
            lines = Math.max(lines, wrapped.get(i).size());
        }
        for (int line = 0; line < lines; line++) {
            List<String> parts = new ArrayList<>();
            for (int i = 0; i < widths.length; i++) {
                List<String> own = wrapped.get(i);
                parts.add(Display.padded(
                        line < own.size() ? own.get(line) : "",
                        widths[i],
                        table.columns().get(i).align()));
            }
            line(text, String.join(BETWEEN, parts));
        }
    }

    private static void line(StringBuilder text, String line) {
        text.append(line.stripTrailing()).append('\n');
    }
}
