package buildup.cli.page;

import buildup.cli.drawing.look.ElevationDrawing;
import buildup.cli.drawing.section.ScreenDrawing;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.report.NoticeText.Said;
import buildup.cli.scene.Scene;
import buildup.cli.scene.TextMeasure;
import buildup.cli.table.Html;
import buildup.cli.tell.Telling;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.judge.verdict.Ruling.Reply;
import buildup.engine.section.compose.Section;
import java.util.List;
import java.util.Optional;
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

    /** How much of its sheet the front takes. */
    private static final double FRONT = 0.9;

    private SearchPage() {}

    /**
     * The page, its pictures first.
     *
     * @param said what there is to say of the search itself, worst first
     */
    public static String of(Telling telling, String file, List<Said> said, List<Small> stacks, TextMeasure measure) {
        StringBuilder pictures = new StringBuilder("<section class=\"answers\" aria-label=\"Answers\">\n");
        List<Small> known = stacks.stream()
                .filter(small -> small.answer().known().isPresent())
                .toList();
        // all at one scale, so that they can be compared by eye
        double scale = known.stream()
                .mapToDouble(small -> ScreenDrawing.scale(section(small)))
                .min()
                .orElse(1);
        List<Scene> sections = known.stream()
                .map(small -> ScreenDrawing.of(section(small), scale, measure).scene())
                .toList();
        double width = sections.stream().mapToDouble(Scene::width).max().orElse(0);
        double height = sections.stream().mapToDouble(Scene::height).max().orElse(0);
        for (int i = 0; i < known.size(); i++) {
            Answers answers = known.get(i).answer().known().orElseThrow();
            String key = "p" + (i + 1);
            pictures.append("<figure>\n")
                    .append(new PagePicture(key + "s").svg(onSheet(sections.get(i), width, height)))
                    .append('\n');
            front(answers, width / scale, measure)
                    .map(front -> onSheet(front, width / scale, Math.max(height / scale, front.height())))
                    .map(new PagePicture(key + "f")::svg)
                    .ifPresent(front -> pictures.append(front).append('\n'));
            pictures.append(caption(known.get(i), answers)).append("</figure>\n");
        }
        return TellPage.of(
                List.of(new TellPage.Part(telling, file, said, pictures + "</section>\n", SEARCH_FINE)), List.of());
    }

    private static Section section(Small small) {
        return small.answer().known().orElseThrow().section();
    }

    /** Pictures on sheets of one size are shown at one scale. */
    private static Scene onSheet(Scene scene, double width, double height) {
        return new Scene(scene.title(), scene.description(), width, height, scene.items());
    }

    /** A stretch of the front under the first light, full size; absent where nothing shines on it. */
    private static Optional<Scene> front(Answers known, double width, TextMeasure measure) {
        return known.lights().stream()
                .findFirst()
                .map(light -> ElevationDrawing.stretch(known.section(), light, measure, FRONT * width))
                .filter(items -> !items.isEmpty())
                .map(items -> PictureSheet.around(
                        known.section().stack().title() + ", front",
                        "A stretch of the front with its shadows, at the scale of the section.",
                        items,
                        (1 - FRONT) / 2 * width));
    }

    private static String caption(Small small, Answers known) {
        String link = small.file().isEmpty()
                ? Html.text(small.name())
                : "<a href=\"" + Html.text(small.file()) + "\">" + Html.text(small.name()) + "</a>";
        String changes = small.changes().isEmpty() ? "" : ": " + Html.text(small.changes());
        return "<figcaption>" + link + changes + "<br>" + Html.text(checked(known)) + "</figcaption>\n";
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
