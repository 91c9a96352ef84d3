package buildup.cli.page;

import buildup.cli.drawing.look.ElevationDrawing;
import buildup.cli.drawing.section.ScreenDrawing;
import buildup.cli.scene.Scene;
import buildup.cli.scene.TextMeasure;
import buildup.cli.table.Html;
import buildup.engine.Answers;
import buildup.engine.hold.order.OrderSheets;
import buildup.engine.hold.order.PutUp;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Step;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthUnit;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The drawings with what moves them: light, steps, and the card of the piece that is chosen. */
record Bench(Answers known, String key, TextMeasure measure) {
    private static final String NO_SCRIPTS = "<noscript><p class=\"small\">This browser runs no scripts: the front is"
            + " shown in the first light of the stack, and light and steps cannot be moved.</p></noscript>\n";

    private static final String SECTION_CAPTION = "<figcaption><ul class=\"key scripted\">"
            + sample("lit", "lit")
            + sample("shade", "turned away from the light")
            + sample("cast", "in cast shadow")
            + sample("sun", "ray past a casting edge")
            + "</ul>Seen from the end of the run, the room on the right. Grid in whole inches.</figcaption>";

    private static final String FRONT_CAPTION = "<figcaption><ul class=\"key\">"
            + sample("hatched", "in cast shadow")
            + sample("dashed", "turned away from the light")
            + "</ul>The front of a length of the run, both ends returned.</figcaption>";

    private static final String DARK = Stream.of("on", "member", "how", "dark", "of", "by")
            .map(head -> "<th role=\"columnheader\" scope=\"col\">" + head + "</th>")
            .collect(Collectors.joining(
                    "",
                    "<thead role=\"rowgroup\"><tr role=\"row\">",
                    "</tr></thead><tbody role=\"rowgroup\"></tbody>"));

    private static String sample(String kind, String meaning) {
        return "<li><span class=\"sample " + kind + "\"></span>" + meaning + "</li>";
    }

    String html(ScreenDrawing drawing) {
        return "<section class=\"bench\" aria-labelledby=\"" + key + "-bench\">\n<h2 id=\"" + key
                + "-bench\">Section and front</h2>\n" + NO_SCRIPTS
                + "<div class=\"controls\">\n" + new Lamplight(known, key).html() + steps() + "</div>\n"
                + "<div class=\"pictures\">\n"
                + figure("section", svg(drawing.scene()), SECTION_CAPTION)
                + "<div class=\"card scripted\" id=\"" + key
                + "-card\" aria-live=\"polite\"><p>Touch a piece in the section,"
                + " or its name in the list of pieces, to see it in both.</p></div>\n"
                + figure("front", front(), FRONT_CAPTION)
                + "</div>\n<section class=\"dark scripted\" aria-labelledby=\"" + key + "-dark\"><h3 id=\"" + key
                + "-dark\">Dark under this light</h3>\n<table role=\"table\" aria-labelledby=\"" + key + "-dark\">"
                + DARK
                + "</table></section>\n</section>\n";
    }

    private static String figure(String kind, String svg, String caption) {
        return "<figure class=\"" + kind + "\"><div class=\"drawing\">" + svg + "</div>\n" + caption + "</figure>\n";
    }

    private String steps() {
        List<Step> all = known.section().steps();
        List<Step> steps = StackData.stages(known.section());
        StringBuilder html = new StringBuilder("<div class=\"steps scripted\" role=\"group\" aria-labelledby=\"" + key
                + "-steps\">\n<h3 id=\"" + key + "-steps\">Step by step</h3>\n<ol>\n");
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            int number = all.indexOf(step);
            html.append("<li><button type=\"button\" class=\"step\" id=\"" + key + "-step-" + (i + 1)
                    + "\" aria-pressed=\"" + (i == steps.size() - 1) + "\" data-in=\""
                    + says(number, step, LengthUnit.INCH)
                    + "\" data-mm=\"" + says(number, step, LengthUnit.MILLIMETER) + "\"><b>" + (number + 1) + "</b> "
                    + Html.name(known.section().name(step.body())) + "</button></li>\n");
        }
        return html + "</ol>\n<p class=\"stepsays\"></p>\n</div>\n";
    }

    private String says(int number, Step step, LengthUnit unit) {
        FigurePrinter printer = new FigurePrinter(unit);
        Section section = known.section();
        return Html.text("Step " + (number + 1) + " of " + section.steps().size() + ", " + section.name(step.body())
                + ": height " + printer.print(Figure.length(step.height())) + ", projection "
                + printer.print(Figure.length(step.projection()))
                + ", top at " + printer.print(Figure.length(step.top())) + ". " + goesUp(step.body(), printer));
    }

    /** The way of a piece into place and the rows that are driven then; of a bench unit, with its last piece. */
    private String goesUp(int body, FigurePrinter printer) {
        List<PutUp> order = known.order().steps();
        for (int i = 0; i < order.size(); i++) {
            int step = i;
            if (order.get(i).unit().last() == body) {
                List<String> rows = known.order().driving().stream()
                        .filter(row -> row.step() == step)
                        .map(row -> row.fixed().fastening().name())
                        .toList();
                return (order.get(i).goes() ? "It comes " : "It cannot go in: ")
                        + printer.print(OrderSheets.how(order.get(i)))
                        + (rows.isEmpty() ? "." : "; then " + String.join(", ", rows) + ".");
            }
        }
        return "It is joined on the bench.";
    }

    private String front() {
        return known.lights().stream()
                .findFirst()
                .map(first -> svg(ElevationDrawing.of(known.section(), first, measure)))
                .orElse("");
    }

    private String svg(Scene scene) {
        return new PagePicture(key).svg(scene);
    }
}
