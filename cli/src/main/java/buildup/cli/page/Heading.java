package buildup.cli.page;

import buildup.cli.report.NoticeText;
import buildup.cli.report.NoticeText.Said;
import buildup.cli.table.Html;
import buildup.engine.Answer;
import buildup.shared.notice.Level;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What comes first: whose answer it is, and what is the matter with it, worst first.
 *
 * @param file its document, as messages call it
 * @param verdict markup of the verdict; empty where none is given
 * @param said what there is to say, worst first
 * @param key that begins every id
 * @param fine what is said where nothing is the matter
 */
record Heading(String title, String file, String verdict, List<Said> said, String key, String fine) {
    /** Where nothing is the matter with a stack. */
    static final String NO_PROBLEMS = "No problems";

    static Heading of(Answer answer, String key) {
        return new Heading(
                answer.title().isBlank() ? "Untitled stack" : answer.title(),
                answer.file(),
                answer.known()
                        .map(known -> new VerdictHtml(known.verdict(), key).html())
                        .orElse(""),
                NoticeText.said(answer.notices(), answer.file(), answer.unit()),
                key,
                NO_PROBLEMS);
    }

    String html() {
        List<Said> graver =
                said.stream().filter(one -> one.level() != Level.NOTE).toList();
        List<Said> notes =
                said.stream().filter(one -> one.level() == Level.NOTE).toList();
        return "<header class=\"head\">\n<h1 id=\"" + key + "-title\">" + Html.name(title)
                + "</h1>\n<p class=\"file\">"
                + Html.name(file) + "</p>\n</header>\n"
                + verdict
                + "<section class=\"warnings\" aria-labelledby=\"" + key + "-warnings\">\n<h2 id=\"" + key
                + "-warnings\">" + counted(graver) + "</h2>\n" + list(graver) + notes(notes) + "</section>\n";
    }

    private String counted(List<Said> graver) {
        boolean refused = graver.stream().anyMatch(one -> one.level() == Level.REFUSAL);
        int count = graver.size();
        return refused
                ? "Refused: no figures, since they would be false"
                : count == 0 ? fine : count == 1 ? "1 problem" : count + " problems";
    }

    private static String notes(List<Said> notes) {
        return notes.isEmpty()
                ? ""
                : "<details" + (notes.size() > 3 ? "" : " open") + "><summary>"
                        + (notes.size() == 1 ? "1 note" : notes.size() + " notes") + "</summary>\n" + list(notes)
                        + "</details>\n";
    }

    private static String list(List<Said> said) {
        return said.isEmpty()
                ? ""
                : said.stream()
                        .map(Heading::item)
                        .collect(Collectors.joining("", "<ul class=\"notices\">\n", "</ul>\n"));
    }

    private static String item(Said said) {
        String word = NoticeText.word(said.level());
        String pieces = said.pieces().stream().map(Html::name).collect(Collectors.joining(", "));
        return "<li class=\"" + word + "\"><span class=\"level\">" + word + "</span> "
                + (pieces.isEmpty() ? "" : "<strong>" + pieces + ":</strong> ") + Html.text(said.sentence())
                + " <span class=\"place\">" + Html.name(said.place()) + "</span></li>\n";
    }
}
