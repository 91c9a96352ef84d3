package buildup.cli.compare;

import buildup.cli.table.Html;
import buildup.cli.table.HtmlTable;
import buildup.cli.table.Table;
import buildup.cli.tell.BesideTables;
import buildup.shared.figure.FigurePrinter;
import java.util.List;
import java.util.Map;

/** A comparison as markup, in both units: in words, and every figure side by side. */
public final class ComparisonHtml {
    private ComparisonHtml() {}

    /** What changes from a to b, as a list. */
    public static String words(Comparison comparison) {
        List<String> inches = ChangeWords.of(comparison, FigurePrinter.INCHES);
        List<String> metric = ChangeWords.of(comparison, FigurePrinter.MILLIMETERS);
        if (inches.isEmpty()) {
            return "<p>No figure changed.</p>\n";
        }
        StringBuilder html = new StringBuilder("<ul>\n");
        for (int i = 0; i < inches.size(); i++) {
            html.append("<li>" + Html.both(inches.get(i), metric.get(i)) + "</li>\n");
        }
        return html + "</ul>\n";
    }

    /** Which stack is A and which is B, what changes from A to B in words, and every figure of both. */
    public static String beside(Comparison comparison) {
        List<Table> inches = new BesideTables(FigurePrinter.INCHES).of(comparison.sheets());
        List<Table> metric = new BesideTables(FigurePrinter.MILLIMETERS).of(comparison.sheets());
        StringBuilder html =
                new StringBuilder("<p>A is " + Html.name(comparison.a().title()) + " ("
                        + Html.name(comparison.a().file()) + "), B is "
                        + Html.name(comparison.b().title()) + " ("
                        + Html.name(comparison.b().file()) + ").</p>\n" + verdicts(comparison) + "<p>"
                        + Html.text(ComparisonText.differing(comparison)) + " From A to B:</p>\n" + words(comparison)
                        + "<details class=\"tables\"><summary>Every figure side by side</summary>\n");
        for (int i = 0; i < inches.size(); i++) {
            String id = "beside-" + (i + 1);
            html.append("<h3 id=\"" + id + "\">"
                    + Html.both(inches.get(i).title(), metric.get(i).title()) + "</h3>\n"
                    + HtmlTable.write(inches.get(i), metric.get(i), id, Map.of()));
        }
        return html + "</details>\n";
    }

    private static String verdicts(Comparison comparison) {
        List<Table> inches = VerdictsBeside.of(comparison, FigurePrinter.INCHES);
        List<Table> metric = VerdictsBeside.of(comparison, FigurePrinter.MILLIMETERS);
        StringBuilder html = new StringBuilder();
        for (int i = 0; i < inches.size(); i++) {
            String id = "verdicts-" + (i + 1);
            html.append("<h3 id=\"" + id + "\">" + Html.text(inches.get(i).title()) + "</h3>\n"
                    + HtmlTable.write(inches.get(i), metric.get(i), id, Map.of()));
        }
        return html.toString();
    }
}
