package buildup.cli.drawing.look;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.command.Typed;
import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.Paper;
import buildup.cli.drawing.paper.PaperPage;
import buildup.cli.drawing.paper.TitleStrip;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.drawing.sheet.Pages;
import buildup.cli.scene.Label;
import buildup.cli.scene.Scene;
import buildup.engine.Answers;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A front on a page has room for itself beside its names, and says the scale that its title block says. */
class FrontOnPaperTest {
    private static PaperPage front(int pieces, String page) {
        StringBuilder stack = new StringBuilder(
                "title: Names\nwood: red-oak\nlights: [{ name: lamp, altitude: 35, azimuth: 45 }]\npieces:\n");
        String before = "";
        for (int i = 0; i < pieces; i++) {
            String name = "a name as long as anybody gives a piece " + i;
            stack.append("  - { name: %s, profile: board %s x 1-1/4, back: wall, bottom: %s }%n"
                    .formatted(name, List.of("1/2", "3/4", "1").get(i % 3), i == 0 ? "0" : before + ".top"));
            before = name;
        }
        Answers known = Typed.of(stack.toString()).known().orElseThrow();
        PageFrame frame = new PageFrame(Pages.named(page).orElseThrow(), new TitleStrip(List.of()), Drawn.FONT, false);
        return Paper.scaled(
                frame,
                "Front",
                smaller -> ElevationDrawing.forScale(
                        known.section(), known.lights().get(0), smaller, Drawn.FONT));
    }

    @ParameterizedTest
    @CsvSource({"10, letter, 8", "20, letter, 8", "30, letter, 12", "30, a4, 12"})
    void thirty_long_names_leave_it_a_scale_that_is_read(int pieces, String page, int smallest) {
        PaperPage front = front(pieces, page);
        assertThat(front.scale()).startsWith("1 : ");
        assertThat(Integer.parseInt(front.scale().substring(4))).isLessThanOrEqualTo(smallest);
        assertThat(texts(front)).anyMatch(text -> text.contains("; " + front.scale() + "."));
    }

    @ParameterizedTest
    @CsvSource({"2, letter", "80, letter"})
    void its_words_and_its_title_block_tell_one_scale(int pieces, String page) {
        PaperPage front = front(pieces, page);
        assertThat(texts(front)).anyMatch(text -> text.contains("; " + front.scale() + "."));
    }

    private static List<String> texts(PaperPage page) {
        return Scene.leaves(page.content()).stream()
                .filter(Label.class::isInstance)
                .map(item -> ((Label) item).text())
                .toList();
    }
}
