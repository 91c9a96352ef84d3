package buildup.cli.page;

import buildup.cli.report.SectionTables;
import buildup.cli.report.TextReport;
import buildup.cli.table.Html;
import buildup.cli.table.HtmlTable;
import buildup.cli.table.Table;
import buildup.engine.Answers;
import buildup.engine.section.compose.Section;
import buildup.shared.figure.FigurePrinter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Every table of the report that has rows, and the way to each. */
record Tables(Answers known, String key) {
    String html() {
        return html(
                key,
                new SectionTables(known, FigurePrinter.INCHES).all(),
                new SectionTables(known, FigurePrinter.MILLIMETERS).all(),
                numbers(known.section()),
                List.of(TextReport.CAUTION));
    }

    /**
     * Tables, the way to each, and what is to be said below them.
     *
     * @param metric the same tables in metric units, or once more where only one unit is told
     * @param numbers of what is called by name
     */
    static String html(
            String key, List<Table> inches, List<Table> metric, Map<String, Integer> numbers, List<String> below) {
        StringBuilder way = new StringBuilder();
        for (int i = 0; i < inches.size(); i++) {
            if (!inches.get(i).rows().isEmpty()) {
                String head = Html.both(
                        Title.of(inches.get(i).title()).head(),
                        Title.of(metric.get(i).title()).head());
                way.append("<li><a href=\"#" + id(key, i) + "\">" + head + "</a></li>\n");
            }
        }
        return "<section class=\"tables\" aria-labelledby=\"" + key + "-tables\">\n<h2 id=\"" + key
                + "-tables\">All tables</h2>\n<nav aria-labelledby=\"" + key + "-tables\"><ul>\n" + way
                + "</ul></nav>\n"
                + each(key, inches, metric, numbers) + "</section>\n<footer>"
                + below.stream()
                        .map(sentence -> "<p>" + Html.text(sentence) + "</p>")
                        .collect(Collectors.joining("\n"))
                + "</footer>\n";
    }

    private static String id(String key, int i) {
        return key + "-table-" + (i + 1);
    }

    /** The tables alone, each under its title. */
    static String each(String key, List<Table> inches, List<Table> metric, Map<String, Integer> numbers) {
        StringBuilder html = new StringBuilder();
        for (int i = 0; i < inches.size(); i++) {
            if (!inches.get(i).rows().isEmpty()) {
                String id = id(key, i);
                Title title = Title.of(inches.get(i).title());
                Title other = Title.of(metric.get(i).title());
                String head = Html.both(title.head(), other.head());
                html.append("<section class=\"table\"><h3 id=\"" + id + "\">" + head + "</h3>\n");
                if (!title.rest().isEmpty()) {
                    html.append("<p class=\"small\">" + Html.both(title.rest(), other.rest()) + "</p>\n");
                }
                html.append(HtmlTable.write(inches.get(i), metric.get(i), id, numbers) + "</section>\n");
            }
        }
        return html.toString();
    }

    /** Numbers of the pieces by their names. */
    static Map<String, Integer> numbers(Section section) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            if (section.body(i).piece()) {
                numbers.put(section.name(i), i);
            }
        }
        return numbers;
    }

    /** A title is a few words, often in capitals, and then how to read the table. */
    private record Title(String head, String rest) {
        static Title of(String title) {
            int end = title.length();
            for (String mark : List.of("; ", ": ", " in the order", " along the")) {
                int at = title.indexOf(mark);
                end = at > 0 ? Math.min(end, at) : end;
            }
            String rest = title.substring(end).replaceFirst("^[;:]", "").strip();
            return new Title(title.substring(0, end), rest);
        }
    }
}
