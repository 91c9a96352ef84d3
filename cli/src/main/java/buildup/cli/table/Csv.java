package buildup.cli.table;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Writes a table for a spreadsheet: RFC 4180, its lines ended by CR LF, the headings in the first. A cell with a figure
 * holds the figure, not its printed form.
 */
public final class Csv {
    private static final String LINE_END = "\r\n";

    /** Enough for a 64th of an inch, exactly. */
    private static final int DECIMALS = 6;

    /** Signs that begin a formula, then their wide forms. */
    private static final String FORMULA = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

    private Csv() {}

    /** Headings, each with its unit, and rows; the title is left out. */
    public static String write(Table table) {
        StringBuilder text = new StringBuilder();
        line(text, table.columns().stream().map(Csv::heading).toList());
        table.rows().forEach(row -> line(text, row.stream().map(Csv::cell).toList()));
        return text.toString();
    }

    /** The title in a line of its own, then the table. */
    public static String titled(Table table) {
        StringBuilder text = new StringBuilder();
        line(text, List.of(inert(Display.plain(table.title()))));
        return text.append(write(table)).toString();
    }

    /** Nothing but the end of a line, between one table and the next. */
    public static String between() {
        return LINE_END;
    }

    private static String heading(Table.TextColumn column) {
        return column.unit().isEmpty() ? column.heading() : (column.heading() + " " + column.unit()).strip();
    }

    private static String cell(TableCell cell) {
        return cell.value().isEmpty()
                ? inert(Display.plain(cell.text()))
                : number(cell.value().getAsDouble());
    }

    /**
     * A spreadsheet would take such a name for a formula and run it (OWASP, CSV injection), some also behind blanks or
     * when it begins with the wide form of the sign; behind a quote it is text.
     */
    private static String inert(String text) {
        String bare = text.stripLeading();
        return !bare.isEmpty() && FORMULA.indexOf(bare.charAt(0)) >= 0 ? "'" + text : text;
    }

    private static String number(double value) {
        String fixed = String.format(Locale.ROOT, "%." + DECIMALS + "f", value + 0.0);
        return fixed.replaceFirst("\\.?0+$", "");
    }

    private static void line(StringBuilder text, List<String> cells) {
        text.append(cells.stream().map(Csv::quoted).collect(Collectors.joining(",")))
                .append(LINE_END);
    }

    private static String quoted(String cell) {
        return cell.chars().anyMatch(letter -> letter == ',' || letter == '"')
                ? '"' + cell.replace("\"", "\"\"") + '"'
                : cell;
    }
}
