package buildup.cli.page;

import buildup.cli.drawing.look.ElevationDrawing;
import buildup.cli.drawing.section.ScreenDrawing;
import buildup.cli.report.NoticeText.Said;
import buildup.cli.scene.TextMeasure;
import buildup.cli.table.Html;
import buildup.cli.tell.Telling;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.judge.verdict.Ruling.Reply;
import java.util.List;
import java.util.stream.Collectors;

/** What a search has found, on one page: the answers as small pictures beside each other, and its tables. */
public final class SearchPage {
    /**
     * One stack on the page.
     *
     * @param name what it is: today's stack, an answer
     * @param file its document; empty for today's
     * @param changes what differs from today's; empty for today's
     */
    public record Small(String name, String file, String changes, Answer answer) {}

    private static final String SEARCH_FINE =
            "No problems with the search. What is wrong with a stack stands under its picture.";

    private SearchPage() {}

    /**
     * The page, its pictures first.
     *
     * @param said what there is to say of the search itself, worst first
     */
    public static String of(Telling telling, String file, List<Said> said, List<Small> stacks, TextMeasure measure) {
        StringBuilder pictures = new StringBuilder("<section class=\"answers\" aria-label=\"Answers\">\n");
        for (int i = 0; i < stacks.size(); i++) {
            pictures.append(figure(stacks.get(i), "p" + (i + 1), measure));
        }
        return TellPage.of(
                List.of(new TellPage.Part(telling, file, said, pictures + "</section>\n", SEARCH_FINE)), List.of());
    }

    private static String figure(Small small, String key, TextMeasure measure) {
        if (small.answer().known().isEmpty()) {
            return "";
        }
        Answers known = small.answer().known().get();
        String section = new PagePicture(key + "s")
                .svg(ScreenDrawing.of(known.section(), measure).scene());
        String front = known.lights().stream()
                .findFirst()
                .map(light -> new PagePicture(key + "f").svg(ElevationDrawing.of(known.section(), light, measure)))
                .orElse("");
        String link = small.file().isEmpty()
                ? Html.text(small.name())
                : "<a href=\"" + Html.text(small.file()) + "\">" + Html.text(small.name()) + "</a>";
        String changes = small.changes().isEmpty() ? "" : ": " + Html.text(small.changes());
        return "<figure>\n" + section + "\n" + front + "\n<figcaption>" + link + changes + "<br>"
                + Html.text(checked(known)) + "</figcaption>\n</figure>\n";
    }

    /** What the verdict says no to, so that nobody takes an answer for a stack without faults. */
    private static String checked(Answers known) {
        String no = known.verdict().rulings().stream()
                .filter(ruling -> ruling.answer() == Reply.NO)
                .map(ruling -> ruling.topic().word())
                .collect(Collectors.joining(", "));
        return no.isEmpty() ? "The verdict says no to nothing." : "The verdict says no to: " + no + ".";
    }
}
