package buildup.cli.table;

import buildup.cli.table.Table.Align;
import buildup.cli.table.Table.TextColumn;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Writes a table for a web page, its sizes in inches and in millimeters. The roles are spelled out, since a narrow page
 * lays the cells of a row one after the other, and browsers then forget that they were a table.
 */
public final class HtmlTable {
    /** Headings of columns in which something is called by its name. */
    private static final Set<String> NAMED = Set.of("piece", "nailer", "on", "over", "by");

    private final Table inches;
    private final Table millimeters;
    private final Map<String, Integer> numbers;
    private final StringBuilder html = new StringBuilder();

    private HtmlTable(Table inches, Table millimeters, Map<String, Integer> numbers) {
        this.inches = inches;
        this.millimeters = millimeters;
        this.numbers = numbers;
    }

    /**
     * The table without its title, which stands over it.
     *
     * @param inches, millimeters the same table in both units
     * @param labelledBy the id of what stands over it
     * @param numbers of what is called by name: a row bears the number of the first that it names, as
     *     {@code data-piece}
     */
    public static String write(Table inches, Table millimeters, String labelledBy, Map<String, Integer> numbers) {
        return new HtmlTable(inches, millimeters, numbers).table(labelledBy);
    }

    private String table(String labelledBy) {
        html.append("<table role=\"table\" aria-labelledby=\"" + Html.text(labelledBy) + "\">\n");
        if (headed()) {
            head();
        }
        html.append("<tbody role=\"rowgroup\">\n");
        for (int i = 0; i < inches.rows().size(); i++) {
            row(inches.rows().get(i), millimeters.rows().get(i));
        }
        return html.append("</tbody>\n</table>\n").toString();
    }

    /** Whether any column says what it holds; where none does, each row begins with what it is about. */
    private boolean headed() {
        return inches.columns().stream().anyMatch(column -> !column.heading().isEmpty());
    }

    private void head() {
        html.append("<thead role=\"rowgroup\">\n<tr role=\"row\">");
        for (int i = 0; i < inches.columns().size(); i++) {
            TextColumn column = inches.columns().get(i);
            html.append(
                    column.heading().isEmpty()
                            ? "<td role=\"cell\"></td>"
                            : "<th role=\"columnheader\" scope=\"col\"" + side(column) + ">"
                                    + Html.both(column.heading(), metric(i)) + "</th>");
        }
        html.append("</tr>\n</thead>\n");
    }

    private void row(List<TableCell> cells, List<TableCell> metric) {
        OptionalInt naming = IntStream.range(0, cells.size())
                .filter(i -> names(i) && numbers.containsKey(cells.get(i).text()))
                .findFirst();
        html.append("<tr role=\"row\"");
        naming.ifPresent(
                i -> html.append(" data-piece=\"" + numbers.get(cells.get(i).text()) + "\""));
        html.append(">");
        for (int i = 0; i < cells.size(); i++) {
            TextColumn column = inches.columns().get(i);
            boolean head = headed() ? naming.isPresent() && naming.getAsInt() == i : i == 0;
            html.append((head ? "<th role=\"rowheader\" scope=\"row\"" : "<td role=\"cell\"") + side(column));
            if (!column.heading().isEmpty()) {
                html.append(" data-head=\"" + Html.text(column.heading()) + "\"");
                if (!metric(i).equals(column.heading())) {
                    html.append(" data-metric=\"" + Html.text(metric(i)) + "\"");
                }
            }
            html.append(">" + content(i, cells.get(i), metric.get(i)) + (head ? "</th>" : "</td>"));
        }
        html.append("</tr>\n");
    }

    private String metric(int column) {
        return millimeters.columns().get(column).heading();
    }

    private String content(int column, TableCell cell, TableCell metric) {
        return names(column) && !cell.text().isEmpty() ? Html.name(cell.text()) : Html.both(cell.text(), metric.text());
    }

    /** A figure may stand under one of these words too, as in "moves by". */
    private boolean names(int column) {
        TextColumn named = inches.columns().get(column);
        return named.align() == Align.LEFT && NAMED.contains(named.heading());
    }

    private static String side(TextColumn column) {
        return column.align() == Align.RIGHT ? " class=\"right\"" : "";
    }
}
