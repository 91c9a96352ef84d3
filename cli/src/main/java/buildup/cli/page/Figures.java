package buildup.cli.page;

import buildup.cli.report.Summary;
import buildup.cli.table.Html;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthUnit;
import java.util.List;

/** The figures of the whole, as the title block of a drawing holds them. */
record Figures(Answer answer, Answers known, String key) {
    static final FigurePrinter INCHES = new FigurePrinter(LengthUnit.INCH);
    static final FigurePrinter MILLIMETERS = new FigurePrinter(LengthUnit.MILLIMETER);

    String html() {
        List<Summary.Row> inches = Summary.rows(known, INCHES);
        List<Summary.Row> metric = Summary.rows(known, MILLIMETERS);
        StringBuilder html = new StringBuilder("<section class=\"figures\" aria-labelledby=\"" + key + "-figures\">\n"
                + "<h2 id=\"" + key + "-figures\">Figures</h2>\n<dl>\n");
        for (int i = 0; i < inches.size(); i++) {
            html.append("<div><dt>" + Html.text(inches.get(i).label()) + "</dt><dd>"
                    + Html.both(inches.get(i).value(), metric.get(i).value()) + "</dd></div>\n");
        }
        return html + "</dl>\n<p class=\"small\">" + Html.both(INCHES.legend(), MILLIMETERS.legend())
                + "</p>\n</section>\n";
    }
}
