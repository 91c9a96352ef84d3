package buildup.cli.page;

import buildup.cli.table.Html;
import buildup.cli.table.Table;
import buildup.cli.table.TableCell;
import buildup.cli.tell.SheetTables;
import buildup.engine.Answers;
import buildup.engine.section.compose.SectionSheets;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.sheet.Sheet;
import java.util.List;

/** The figures of the whole, as the title block of a drawing holds them. */
record Figures(Answers known, String key) {
    String html() {
        List<List<TableCell>> inches = lines(FigurePrinter.INCHES);
        List<List<TableCell>> metric = lines(FigurePrinter.MILLIMETERS);
        StringBuilder html = new StringBuilder("<section class=\"figures\" aria-labelledby=\"" + key + "-figures\">\n"
                + "<h2 id=\"" + key + "-figures\">Figures</h2>\n<dl>\n");
        for (int i = 0; i < inches.size(); i++) {
            html.append("<div><dt>" + both(inches.get(i), metric.get(i), 0) + "</dt><dd>"
                    + both(inches.get(i), metric.get(i), 1) + "</dd></div>\n");
        }
        return html + "</dl>\n<p class=\"small\">"
                + Html.both(FigurePrinter.INCHES.legend(), FigurePrinter.MILLIMETERS.legend()) + "</p>\n</section>\n";
    }

    /** What each figure is called, and the figure. */
    private List<List<TableCell>> lines(FigurePrinter printer) {
        List<Sheet> whole = List.of(SectionSheets.totals(known.section()), SectionSheets.space(known.section()));
        return new SheetTables(printer)
                .of(whole).stream().map(Table::rows).flatMap(List::stream).toList();
    }

    private static String both(List<TableCell> inches, List<TableCell> metric, int cell) {
        return Html.both(inches.get(cell).text(), metric.get(cell).text());
    }
}
