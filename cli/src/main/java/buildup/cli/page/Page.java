package buildup.cli.page;

import buildup.cli.table.Html;
import buildup.cli.write.ShippedFont;
import buildup.engine.Answer;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The whole document round one stack, or round several beside each other. */
public final class Page {
    /**
     * The event that gives an open page something new. It is dispatched on {@code document}; its {@code detail} holds any
     * of {@code title} (text), {@code stacks} ({@link PageParts#html} of each, joined), {@code changed} (markup for the
     * block on top; empty takes it away) and {@code stale} (lines of text; none takes the mark away). What is left out
     * stays as it is. Unit, light, step and chosen piece are kept where they still make sense.
     */
    public static final String EXCHANGE = "buildup:parts";

    /**
     * What stands above the stacks.
     *
     * @param changed markup of what changed or differs; empty when nothing is to be said
     * @param stale why the picture is not that of the file as it is now; empty when it is
     */
    public record Above(String changed, List<String> stale) {
        public static final Above NOTHING = new Above("", List.of());

        public Above {
            stale = List.copyOf(stale);
        }
    }

    private Page() {}

    /** The report of one stack. */
    public static String of(Answer answer) {
        return of(List.of(PageParts.of(answer, "a", ShippedFont.load())), Above.NOTHING, Optional.empty());
    }

    /**
     * A document of its own.
     *
     * @param stacks at least one, each with a key of its own
     * @param live a script that keeps the page up to date; with it, and only then, the page may ask the place that it
     *     came from
     */
    public static String of(List<PageParts> stacks, Above above, Optional<String> live) {
        String title = stacks.stream().map(PageParts::title).collect(Collectors.joining(" | "));
        boolean metric = stacks.get(0).unit().isMetric();
        Inline style = Inline.style();
        Inline script = Inline.script();
        Optional<Inline> keeper = live.map(Inline::of);
        return "<!DOCTYPE html>\n<html lang=\"en\" data-unit=\"" + (metric ? "mm" : "in") + "\">\n<head>\n"
                + "<meta charset=\"utf-8\">\n<meta http-equiv=\"Content-Security-Policy\" content=\""
                + policy(style, script, keeper) + "\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
                + "<meta name=\"referrer\" content=\"no-referrer\">\n"
                + "<title>" + Html.text(title) + "</title>\n<style>" + style.text() + "</style>\n</head>\n<body>\n"
                + top(above, metric, stacks.size() > 1 ? "What differs" : "What changed")
                + "<main id=\"stacks\" class=\"" + (stacks.size() > 1 ? "beside" : "alone") + "\">\n"
                + stacks.stream().map(PageParts::html).collect(Collectors.joining())
                + "</main>\n"
                + "<div id=\"said\" class=\"unseen\" role=\"status\"></div>\n"
                + "<script type=\"application/json\" id=\"tolerances\">" + StackData.tolerances() + "</script>\n"
                + "<script>" + script.text() + "</script>\n"
                + keeper.map(one -> "<script>" + one.text() + "</script>\n").orElse("")
                + "</body>\n</html>\n";
    }

    /** Nothing may load or run but what stands in the page, letter for letter. */
    private static String policy(Inline style, Inline script, Optional<Inline> live) {
        return "default-src 'none'; style-src " + style.hash() + "; script-src " + script.hash()
                + live.map(one -> " " + one.hash() + "; connect-src 'self'").orElse("")
                + "; base-uri 'none'; form-action 'none'";
    }

    private static String top(Above above, boolean metric, String head) {
        return "<a class=\"skip\" href=\"#stacks\">Go to the stack</a>\n"
                + "<div class=\"bar\"><span class=\"maker\">Buildup</span>\n"
                + "<div class=\"units scripted\" role=\"group\" aria-label=\"Sizes in\">"
                + unit("in", "inches", !metric) + unit("mm", "millimeters", metric) + "</div></div>\n"
                + "<div id=\"stale\" role=\"alert\"" + hidden(above.stale().isEmpty()) + ">" + stale(above.stale())
                + "</div>\n"
                + "<section id=\"changed\" aria-labelledby=\"changed-head\""
                + hidden(above.changed().isEmpty())
                + "><h2 id=\"changed-head\">" + head + "</h2><div class=\"what\">" + above.changed()
                + "</div></section>\n";
    }

    private static String unit(String unit, String word, boolean on) {
        return "<button type=\"button\" data-unit=\"" + unit + "\" aria-pressed=\"" + on + "\">" + word + "</button>";
    }

    private static String hidden(boolean hidden) {
        return hidden ? " hidden" : "";
    }

    private static String stale(List<String> why) {
        return why.stream().map(line -> "<p>" + Html.text(line) + "</p>").collect(Collectors.joining());
    }
}
