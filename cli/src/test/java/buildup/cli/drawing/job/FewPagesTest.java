package buildup.cli.drawing.job;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.Typed;
import buildup.cli.drawing.paper.PaperPage;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.drawing.sheet.Pages;
import buildup.cli.report.TextReport;
import buildup.cli.scene.Clip;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.engine.Answer;
import buildup.engine.Cuts;
import buildup.engine.room.sticks.Limit;
import buildup.profiles.outline.Box;
import buildup.shared.notice.Notices;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Paper that is printed holds something: nobody tapes and carries pages with a few words on them. */
class FewPagesTest {
    private static List<PaperPage> pages(String yaml, String paper, Set<ShopSheet> sheets) {
        Answer answer = Typed.of(yaml);
        return ShopDrawings.of(
                        answer,
                        answer.known().orElseThrow(),
                        Cuts.of(answer, Limit.usual()),
                        Since.NOTHING,
                        Pages.named(paper).orElseThrow(),
                        Drawn.FONT,
                        sheets,
                        new Notices())
                .stream()
                .flatMap(drawn -> drawn.pages().stream())
                .toList();
    }

    private static List<String> texts(PaperPage page) {
        return Scene.leaves(page.content()).stream()
                .flatMap(item -> item instanceof Clip clip ? Scene.leaves(clip.items()).stream() : Stream.of(item))
                .filter(Label.class::isInstance)
                .map(item -> ((Label) item).text())
                .toList();
    }

    /** Courses of two thicknesses on three walls, each run turned back to the wall at both ends. */
    private static String returns(int courses) {
        StringBuilder yaml = new StringBuilder("title: Forty courses\nwood: red-oak\npieces:\n");
        for (int i = 0; i < courses; i++) {
            yaml.append("  - { name: course %d, profile: board %s x 1-1/4, back: wall, bottom: %s }%n"
                    .formatted(i, i % 2 == 0 ? "3/4" : "1-1/2", i == 0 ? "0" : "course " + (i - 1) + ".top"));
        }
        return yaml + "plan: [{ left: return, right: return, stretches: [{ length: 40, corner: outside 90 },"
                + " { length: 30, corner: outside 90 }, { length: 40 }] }]\n";
    }

    /** 40 courses, two shapes, a left and a right hand of each: two templates, and 20 of each hand are made. */
    @Test
    void returns_that_are_alike_have_one_template_that_says_how_many_are_made() {
        List<PaperPage> pages = pages(returns(40), "letter", EnumSet.of(ShopSheet.TEMPLATES));
        assertThat(pages).hasSize(1);
        String text = String.join(" ", texts(pages.get(0)));
        assertThat(text.split("make 20", -1)).as(text).hasSize(5);
        assertThat(text).contains("course 0, course 2, course 4, course 6 and 16 more, return: make 20; turned over,");
        List<Double> widths = Scene.leaves(pages.get(0).content()).stream()
                .filter(item -> item instanceof Path path && path.style() == LineStyle.OUTLINE)
                .map(SceneItem::box)
                .map(Box::width)
                .sorted()
                .toList();
        assertThat(widths)
                .usingComparatorForType((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b), Double.class)
                .containsExactly(0.75, 1.5);
    }

    @ParameterizedTest
    @ValueSource(strings = {"letter", "a4", "legal"})
    void no_page_holds_nothing_but_closing_words(String paper) {
        for (String demo : List.of("case", "cornice", "mantel")) {
            List<PaperPage> pages =
                    pages(Ran.read(Ran.demo("reading-room-" + demo + ".yaml")), paper, EnumSet.allOf(ShopSheet.class));
            // the words before a picture in parts stand alone where they have to
            assertThat(pages)
                    .filteredOn(page -> !page.scale().equals("as told"))
                    .allSatisfy(page -> assertThat(Scene.leaves(page.content()).stream()
                                    .filter(item -> !(item instanceof Label label)
                                            || !TextReport.CAUTION.contains(label.text())))
                            .hasSizeGreaterThan(2));
        }
    }

    /** Names of any length beside a strip or a pole are set in lines that its page has room for. */
    @ParameterizedTest
    @ValueSource(strings = {"letter", "a4"})
    void a_strip_and_a_pole_are_one_page_wide_however_long_names_are(String paper) {
        StringBuilder yaml = new StringBuilder("title: Long names\nwood: red-oak\nspace: { floor: -20 }\npieces:\n");
        for (int i = 0; i < 12; i++) {
            yaml.append(("  - { name: course %d that was copied from the old library,"
                            + " profile: board 3/4 x 1-1/2, back: wall, bottom: %s }%n")
                    .formatted(i, 1.5 * i));
        }
        for (ShopSheet sheet : List.of(ShopSheet.STRIP, ShopSheet.STORY_POLE)) {
            List<PaperPage> pages = pages(yaml.toString(), paper, EnumSet.of(sheet));
            double high = sheet == ShopSheet.STRIP ? 18 : 38;
            assertThat(pages).as(sheet.title()).hasSizeBetween(3, 2 + (int) Math.ceil(high / 7.9));
            assertThat(String.join(
                            " ",
                            pages.stream().flatMap(page -> texts(page).stream()).toList()))
                    .contains("course 11 that was copied");
        }
    }

    /** Of thirty pieces of which the same is said, six are named and the rest counted. */
    @Test
    void a_warning_names_a_few_pieces_and_counts_the_rest() {
        StringBuilder yaml =
                new StringBuilder("title: Thirty\nwood: red-oak\nspace: { wall: { solid: no } }\npieces:\n");
        for (int i = 0; i < 30; i++) {
            yaml.append("  - { name: strip %d, profile: board 3/4 x 3/4, back: wall, bottom: %s, fixed: wall }%n"
                    .formatted(i, 0.75 * i));
        }
        String text = String.join(
                " ",
                pages(yaml.toString(), "letter", EnumSet.of(ShopSheet.WARNINGS)).stream()
                        .flatMap(page -> texts(page).stream())
                        .toList());
        assertThat(text).contains(" more").doesNotContain("strip 3, strip 4, strip 5, strip 6, strip 7, strip 8");
    }
}
