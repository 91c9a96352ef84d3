package buildup.cli.page;

import buildup.cli.report.NoticeText.Said;
import buildup.cli.table.Html;
import buildup.cli.table.Table;
import buildup.cli.tell.SheetTables;
import buildup.cli.tell.Telling;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Answers that are tables alone as a page of its own, in the unit of the document, without a script. */
public final class TellPage {
    /**
     * One answer on the page.
     *
     * @param file its document, as messages call it
     * @param said what there is to say of it, worst first
     * @param pictures markup that stands behind its first sentences; empty for none
     * @param fine what is said where nothing is the matter with the answer
     */
    public record Part(Telling telling, String file, List<Said> said, String pictures, String fine) {
        /** Copies the list. */
        public Part {
            said = List.copyOf(said);
        }

        /** An answer about one document, without pictures. */
        public Part(Telling telling, String file, List<Said> said) {
            this(telling, file, said, "", Heading.NO_PROBLEMS);
        }
    }

    private TellPage() {}

    /**
     * The page; several answers stand beside each other.
     *
     * @param differences tables that stand above them
     */
    public static String of(List<Part> parts, List<Table> differences) {
        Inline style = Inline.style();
        String title = parts.stream().map(TellPage::title).collect(Collectors.joining(" | "));
        // the pictures hold their sizes in inches and in millimeters, and this says which are seen
        boolean metric = !parts.isEmpty() && parts.get(0).telling().unit().isMetric();
        return "<!DOCTYPE html>\n<html lang=\"en\" data-unit=\"" + (metric ? "mm" : "in") + "\">\n<head>\n"
                + "<meta charset=\"utf-8\">\n<meta http-equiv=\"Content-Security-Policy\" content=\""
                + "default-src 'none'; style-src " + style.hash() + "; base-uri 'none'; form-action 'none'\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
                + "<meta name=\"referrer\" content=\"no-referrer\">\n"
                + "<title>" + Html.text(title) + "</title>\n<style>" + style.text() + "</style>\n</head>\n<body>\n"
                + "<div class=\"bar\"><span class=\"maker\">Buildup</span></div>\n"
                + above(differences)
                + "<main class=\"" + (parts.size() > 1 ? "beside" : "alone") + "\">\n"
                + IntStream.range(0, parts.size())
                        .mapToObj(i -> article(parts.get(i), Character.toString('a' + i)))
                        .collect(Collectors.joining())
                + "</main>\n</body>\n</html>\n";
    }

    private static String above(List<Table> differences) {
        return differences.isEmpty()
                ? ""
                : "<section id=\"changed\" aria-labelledby=\"changed-head\"><h2 id=\"changed-head\">What differs</h2>\n"
                        + Tables.each("beside", differences, differences, Map.of())
                        + "</section>\n";
    }

    private static String title(Part part) {
        return part.telling().title().isBlank() ? part.file() : part.telling().title();
    }

    private static String article(Part part, String key) {
        return "<article class=\"stack\" id=\"" + key + "\" aria-labelledby=\"" + key + "-title\">\n"
                + new Heading(title(part), part.file(), "", part.said(), key, part.fine()).html()
                + tables(part.telling(), part.pictures(), key)
                + "</article>\n";
    }

    private static String tables(Telling telling, String pictures, String key) {
        List<Table> tables = new SheetTables(telling.printer()).of(telling.sheets());
        if (tables.isEmpty()) {
            return "";
        }
        String before = telling.before().stream()
                .map(telling.printer()::print)
                .map(sentence -> "<p>" + Html.text(sentence) + "</p>\n")
                .collect(Collectors.joining());
        return (before.isEmpty() ? "" : "<section class=\"before\">\n" + before + "</section>\n")
                + pictures
                + Tables.html(
                        key,
                        tables,
                        tables,
                        Map.of(),
                        telling.after().stream()
                                .map(telling.printer()::print)
                                .filter(sentence -> !sentence.isBlank())
                                .toList());
    }
}
