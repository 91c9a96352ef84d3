package buildup.cli.page;

import buildup.cli.table.Html;
import buildup.engine.Answers;
import buildup.engine.judge.along.FigureCurve;
import buildup.engine.judge.along.FigureCurve.Break;
import buildup.engine.judge.along.FigureCurve.Place;
import buildup.engine.judge.along.Turning;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A slider for each free size, and below it what is asked of the stack as curves against that size. */
record Curves(Answers known, String key) {
    private static final String ALONE =
            "<p class=\"small\">Each size alone, all others as they are now. The dashed line is"
                    + " the limit; the figure at a size is that of a report of the stack with that size.</p>\n";

    String html() {
        List<String> without = known.curves().without();
        Map<String, List<FigureCurve>> sizes = known.curves().drawn().stream()
                .collect(Collectors.groupingBy(FigureCurve::place, LinkedHashMap::new, Collectors.toList()));
        if (sizes.isEmpty() && without.isEmpty()) {
            return "";
        }
        StringBuilder html = new StringBuilder("<section class=\"curves\" aria-labelledby=\"" + key
                + "-curves\">\n<h2 id=\"" + key + "-curves\">Free sizes</h2>\n" + (sizes.isEmpty() ? "" : ALONE));
        int number = 0;
        for (Map.Entry<String, List<FigureCurve>> size : sizes.entrySet()) {
            html.append(size(key + "-curve-" + ++number, size.getKey(), size.getValue()));
        }
        return html + without(without) + "</section>\n";
    }

    /** The sizes without a slider, so that nobody looks for theirs. */
    private static String without(List<String> places) {
        return places.isEmpty()
                ? ""
                : "<p class=\"small\">Free too, without a slider: " + Html.text(String.join(", ", places))
                        + ". Sliders are for sizes on a scale, six at most; 'search' tries all that is free.</p>\n";
    }

    private static String size(String id, String place, List<FigureCurve> curves) {
        List<FigureCurve> moved =
                curves.stream().filter(curve -> !curve.isFlat()).toList();
        String still = curves.stream()
                .filter(FigureCurve::isFlat)
                .map(curve -> "'" + curve.rule().text() + "'")
                .collect(Collectors.joining(", "));
        String head = "<section class=\"curve\" aria-labelledby=\"" + id + "\">\n<h3 id=\"" + id + "\">"
                + Html.name(place) + "</h3>\n";
        String foot =
                still.isEmpty() ? "" : "<p class=\"small\">It changes nothing for " + Html.text(still) + ".</p>\n";
        if (moved.isEmpty()) {
            return head + foot + "</section>\n";
        }
        FigureCurve first = moved.get(0);
        int last = first.places().size() - 1;
        StringBuilder html = new StringBuilder(head + "<p class=\"scripted\"><input type=\"range\" id=\"" + id
                + "-size\" min=\"0\" max=\"" + last + "\" step=\"1\" value=\"" + first.now() + "\" aria-labelledby=\""
                + id
                + "\"></p>\n<p class=\"at\">" + typed(first, first.now()) + "</p>\n<div class=\"drawings\">\n");
        moved.forEach(curve -> html.append("<figure><figcaption>")
                .append(Html.text(curve.rule().text()))
                .append(": <span class=\"value\">")
                .append(value(curve, curve.now()))
                .append("</span></figcaption>\n<div class=\"drawing\">")
                .append(new CurvePicture(curve).svg())
                .append("</div>\n")
                .append(changes(curve))
                .append("</figure>\n"));
        return html + "</div>\n" + foot + "<details><summary>All places</summary>\n" + table(id, moved)
                + "</details>\n</section>\n";
    }

    /** Where the rule turns, and where the curve breaks. */
    private static String changes(FigureCurve curve) {
        List<String> lines = new ArrayList<>();
        for (Turning turn : curve.turns()) {
            String met = turn.metAbove() == turn.metBelow()
                    ? "is met just there"
                    : "is met " + (turn.metAbove() ? "above" : "below");
            lines.add(said(printer -> printer.print(turn.at()) + ": the rule " + met
                    + (turn.shop().isEmpty()
                            ? ""
                            : "; nearest size on a rule "
                                    + print(printer, curve.scale(), turn.shop().getAsDouble()))));
        }
        for (Break there : curve.breaks()) {
            lines.add(said(printer -> exact(printer, curve.scale(), there.at()) + ": " + how(printer, curve, there)));
        }
        return lines.isEmpty() ? "" : "<ul>" + String.join("\n", lines) + "</ul>\n";
    }

    private static String said(Function<FigurePrinter, String> words) {
        return "<li>" + Html.both(words.apply(FigurePrinter.INCHES), words.apply(FigurePrinter.MILLIMETERS)) + "</li>";
    }

    private static String how(FigurePrinter printer, FigureCurve curve, Break there) {
        return switch (there.how()) {
            case LEAPS ->
                "it leaps from " + figure(printer, curve, there.before()) + " to "
                        + figure(printer, curve, there.after());
            case BENDS -> "another piece or edge decides from here, at " + figure(printer, curve, there.after());
            case BEGINS -> "there is such a figure from here on, " + figure(printer, curve, there.after());
            case ENDS -> "there is none from here on; it was " + figure(printer, curve, there.before());
        };
    }

    private static String table(String id, List<FigureCurve> curves) {
        StringBuilder html = new StringBuilder("<table role=\"table\" class=\"places\" aria-labelledby=\"" + id
                + "\">\n<thead role=\"rowgroup\"><tr role=\"row\"><th role=\"columnheader\" scope=\"col\">size</th>");
        curves.forEach(curve -> html.append("<th role=\"columnheader\" scope=\"col\">")
                .append(Html.text(curve.rule().text()))
                .append("</th>"));
        html.append("</tr></thead>\n<tbody role=\"rowgroup\">\n");
        FigureCurve first = curves.get(0);
        for (int i = 0; i < first.places().size(); i++) {
            html.append("<tr role=\"row\"" + (i == first.now() ? " class=\"now\"" : "")
                    + "><th role=\"rowheader\" scope=\"row\" data-head=\"size\">" + typed(first, i) + "</th>");
            for (FigureCurve curve : curves) {
                html.append(cell(curve, i));
            }
            html.append("</tr>\n");
        }
        return html + "</tbody></table>\n";
    }

    private static String cell(FigureCurve curve, int i) {
        Place place = curve.places().get(i);
        CurvePicture picture = new CurvePicture(curve);
        String spot = place.figure().isEmpty()
                ? ""
                : " data-x=\"" + picture.x(place.at()) + "\" data-y=\""
                        + picture.y(place.figure().getAsDouble()) + "\"";
        return "<td role=\"cell\" data-head=\"" + Html.text(curve.rule().text()) + "\"" + spot + ">" + value(curve, i)
                + "</td>";
    }

    private static String typed(FigureCurve curve, int i) {
        return Html.text(curve.places().get(i).typed()) + (i == curve.now() ? " (now)" : "");
    }

    private static String value(FigureCurve curve, int i) {
        Place place = curve.places().get(i);
        return Html.both(
                        figure(FigurePrinter.INCHES, curve, place.figure()),
                        figure(FigurePrinter.MILLIMETERS, curve, place.figure()))
                + (curve.held() && !place.met() ? " <b>not met</b>" : "");
    }

    private static String figure(FigurePrinter printer, FigureCurve curve, OptionalDouble figure) {
        return figure.isPresent() ? print(printer, curve.rule().figure().quantity(), figure.getAsDouble()) : "none";
    }

    /** Where something turns, to what tells it from the next size on a rule. */
    private static String exact(FigurePrinter printer, Quantity quantity, double value) {
        return printer.print(Figure.of(quantity, value).rounded(Rounding.FINE));
    }

    static String print(FigurePrinter printer, Quantity quantity, double value) {
        return printer.print(Figure.of(quantity, value));
    }
}
