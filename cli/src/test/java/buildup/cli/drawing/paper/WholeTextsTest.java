package buildup.cli.drawing.paper;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.command.Typed;
import buildup.cli.drawing.job.ShopDrawings;
import buildup.cli.drawing.job.ShopSheet;
import buildup.cli.drawing.job.Since;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.drawing.sheet.Pages;
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
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rest of a cut figure reads as another figure, so a text is whole on a part or not on it. */
class WholeTextsTest {
    private static final PageFrame LETTER = new PageFrame(
            Pages.named("letter").orElseThrow(),
            new TitleStrip(List.of(List.of(new TitleCell("stack", "A stack", 2)))),
            Drawn.FONT,
            false);

    /** Sizes that stand beside one another up a stack, so that no seam misses them all. */
    private static String stack(int pieces, double step) {
        StringBuilder stack = new StringBuilder("title: A stack\nwood: red-oak\nspace: { floor: -92 }\npieces:\n");
        for (int i = 0; i < pieces; i++) {
            double high = 0.75 + step * i;
            stack.append("  - { name: strip %d, profile: board %s x %s, back: wall, bottom: %s }%n"
                    .formatted(i, 0.75 + 0.25 * (i % 4), high, i == 0 ? "0" : "strip " + (i - 1) + ".top"));
        }
        return stack.toString();
    }

    private static List<PaperPage> pages(String stack, Set<ShopSheet> sheets) {
        Answer answer = Typed.of(stack);
        return ShopDrawings.of(
                        answer,
                        answer.known().orElseThrow(),
                        Cuts.of(answer, Limit.usual()),
                        Since.NOTHING,
                        Pages.named("letter").orElseThrow(),
                        Drawn.FONT,
                        sheets,
                        new Notices())
                .stream()
                .flatMap(drawing -> drawing.pages().stream())
                .toList();
    }

    /** The words that tell how, the plan and its numbers: all on one page, and each number in a box that it fits. */
    @ParameterizedTest
    @CsvSource({"STORY_POLE, 8, 0.25", "STORY_POLE, 30, 0.05", "SECTION, 14, 0.13", "SECTION, 30, 0.005"})
    void the_plan_of_the_parts_is_read_on_the_page_that_tells_of_it(ShopSheet sheet, int pieces, double step) {
        List<PaperPage> pages = pages(stack(pieces, step), EnumSet.of(sheet));
        long parts = pages.stream().filter(page -> page.part().isPresent()).count();
        assertThat(parts).isGreaterThan(1);
        assertThat(pages).as("one page before them").hasSize((int) parts + 1);
        PaperPage first = pages.get(0);
        assertThat(first.scale()).isEqualTo("as told");
        assertThat(first.view()).endsWith("in " + parts + " parts");
        List<Box> rows = Scene.leaves(first.content()).stream()
                .filter(item -> item instanceof Path path && path.style() == LineStyle.DIMENSION)
                .map(SceneItem::box)
                .toList();
        assertThat(rows)
                .hasSize((int) parts)
                .allSatisfy(
                        box -> assertThat(Math.min(box.width(), box.height())).isGreaterThan(0.2));
    }

    @ParameterizedTest
    @CsvSource({"8, 0.25", "14, 0.13", "20, 0.07", "30, 0.05"})
    void every_text_of_a_part_is_whole_on_it(int pieces, double step) {
        List<Box> cut = new ArrayList<>();
        int looked = 0;
        for (Scene scene : PaperPage.scenes(
                "A stack", pages(stack(pieces, step), EnumSet.of(ShopSheet.SECTION, ShopSheet.STORY_POLE)))) {
            for (SceneItem item : scene.items()) {
                if (item instanceof Clip clip) {
                    for (Label label : texts(clip.items())) {
                        looked++;
                        if (!whole(label.box(), clip.window())) {
                            cut.add(label.box());
                        }
                    }
                }
            }
        }
        assertThat(looked).isGreaterThan(pieces);
        assertThat(cut).isEmpty();
    }

    /** Texts side by side all along a picture: no seam misses them all, yet each is read somewhere. */
    @Test
    void every_text_of_a_picture_is_on_a_part() {
        List<SceneItem> items = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            Label label = Label.of(
                    Drawn.FONT,
                    i + "-15/16 where texts lie thick",
                    new Point(0.31 * i, 0.4 * i),
                    0.14,
                    Label.Anchor.START);
            items.add(label);
            items.add(new Path(Outline.rectangle(label.box()).segments(), true, LineStyle.OUTLINE));
        }
        List<PaperPage> pages = Paper.fullSize(LETTER, "Texts", items, flow -> {});
        List<String> read = pages.stream()
                .flatMap(page -> page.content().stream())
                .filter(Clip.class::isInstance)
                .flatMap(item -> texts(((Clip) item).items()).stream()
                        .filter(label -> whole(label.box(), ((Clip) item).window())))
                .map(Label::text)
                .toList();
        assertThat(pages).hasSizeGreaterThan(3);
        assertThat(read).containsAll(texts(items).stream().map(Label::text).toList());
    }

    /** A small cope is not parted because that of a large crown takes more than a page. */
    @Test
    void the_cope_of_each_piece_is_whole_on_a_page_that_holds_it() {
        List<PaperPage> pages = pages("""
                title: Copes
                wood: red-oak
                pieces:
                  - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: 0 }
                  - { name: bed, section: [out 1/4, cove 1, up 1/4], back: frieze.face, bottom: 2 }
                  - { name: crown, profile: plain-crown 5-1/4, back: frieze.face, bottom: frieze.top }
                plan:
                  - { inside: cope, left: square, right: square, stretches: [{ length: 48, corner: inside 90 }, { length: 36 }] }
                """, EnumSet.of(ShopSheet.TEMPLATES)).stream()
                .filter(page -> page.view().startsWith("Copes"))
                .toList();
        List<PaperPage> bed = pages.stream()
                .filter(page -> texts(page.content()).stream()
                        .anyMatch(label -> label.text().equals("bed")))
                .toList();
        assertThat(pages).hasSizeGreaterThan(1);
        assertThat(bed).hasSize(1).allSatisfy(page -> {
            assertThat(page.part()).isEmpty();
            assertThat(page.scale()).isEqualTo(PaperPage.FULL_SIZE);
        });
    }

    private static List<Label> texts(List<SceneItem> items) {
        return Scene.leaves(items).stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .toList();
    }

    static boolean whole(Box text, Box window) {
        return window.holds(new Point(text.back(), text.bottom()), 1e-6)
                && window.holds(new Point(text.face(), text.top()), 1e-6);
    }
}
