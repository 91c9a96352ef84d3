package buildup.cli.page;

import buildup.cli.report.VerdictText;
import buildup.cli.table.Html;
import buildup.engine.judge.verdict.Ruling;
import buildup.engine.judge.verdict.Verdict;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import java.util.Locale;
import java.util.stream.Collectors;

/** The verdict on the page: the rows of the text report, in their order and words. */
record VerdictHtml(Verdict verdict, String key) {
    String html() {
        return "<section class=\"verdict\" aria-labelledby=\"" + key + "-verdict\">\n<h2 id=\"" + key
                + "-verdict\">Will it be right? <strong>" + Html.text(VerdictText.answer(verdict))
                + "</strong></h2>\n<dl>\n"
                + verdict.rulings().stream().map(VerdictHtml::row).collect(Collectors.joining())
                + trusted()
                + notAsked()
                + "</dl>\n</section>\n";
    }

    private static String row(Ruling ruling) {
        String answer = ruling.answer().name().toLowerCase(Locale.ROOT);
        return "<div class=\"" + answer + "\"><dt><span class=\"answer\">" + answer + "</span> "
                + Html.text(ruling.topic().word()) + "</dt><dd>" + both(ruling.because())
                + ruling.cure()
                        .map(cure -> "<span class=\"cure\">" + both(cure) + "</span>")
                        .orElse("")
                + "</dd></div>\n";
    }

    private static String both(Phrase phrase) {
        return Html.both(FigurePrinter.INCHES.print(phrase), FigurePrinter.MILLIMETERS.print(phrase));
    }

    private String trusted() {
        return verdict.trusted().isEmpty()
                ? ""
                : "<div class=\"trust\"><dt>on trust</dt><dd>"
                        + verdict.trusted().stream().map(VerdictHtml::both).collect(Collectors.joining("; "))
                        + "</dd></div>\n";
    }

    private String notAsked() {
        return verdict.notAsked().isEmpty()
                ? ""
                : "<div class=\"unasked\"><dt>not asked</dt><dd>"
                        + verdict.notAsked().stream()
                                .map(one -> Html.text(one.words()))
                                .collect(Collectors.joining(", "))
                        + "</dd></div>\n";
    }
}
