package buildup.cli.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.TitleStrip;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.drawing.section.SectionDrawing;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PagesTest {
    @Test
    void an_a_page_has_the_root_of_two_for_its_sides_and_a0_is_a_square_metre() {
        // ISO 216: sides 1 to square root of 2, A0 of one square meter, each size rounded to a millimeter
        for (String name : Pages.names()) {
            PaperSize page = Pages.named(name).orElseThrow();
            if (name.matches("a\\d")) {
                assertThat(page.height() / page.width()).as(name).isCloseTo(Math.sqrt(2), within(0.004));
            }
        }
        PaperSize a0 = Pages.named("A0").orElseThrow();
        assertThat(a0.width() * a0.height() * 0.0254 * 0.0254).isCloseTo(1, within(0.001));
    }

    @Test
    void the_smallest_page_that_holds_the_drawing_is_taken() {
        assertThat(Drawn.of(Drawn.ONE).scene().width()).isEqualTo(8.5);
        assertThat(Drawn.of(Drawn.CORNICE).scene().width()).isEqualTo(11);
        assertThat(Drawn.of(Drawn.CORNICE).scene().height()).isEqualTo(17);
    }

    @Test
    void a_page_asked_for_is_taken_though_a_smaller_one_would_do() {
        Drawn drawn = Drawn.of(Drawn.ONE, Optional.of("Arch-C"));
        assertThat(drawn.scene().width()).isEqualTo(18);
        assertThat(drawn.notices()).isEmpty();
    }

    @Test
    void no_page_is_too_small_since_what_is_larger_is_parted() {
        Drawn drawn = Drawn.of(Drawn.CORNICE, Optional.of("letter"));
        assertThat(drawn.drawing()).as("on one letter page").isEmpty();
        assertThat(drawn.notices()).isEmpty();
        assertThat(SectionDrawing.pages(drawn.section(), frame("letter"), new Notices()))
                .hasSizeGreaterThan(1);
    }

    @Test
    void without_a_page_a_stack_larger_than_every_page_gets_a_sheet_of_its_own() {
        String tall = "title: Tall\nwood: red-oak\npieces:\n"
                + "  - { name: pilaster, profile: board 3/4 x 120, back: wall, bottom: datum }\n";
        Drawn drawn = Drawn.of(tall);
        assertThat(drawn.notices()).isEmpty();
        assertThat(drawn.scene().height()).isGreaterThan(120);
    }

    @Test
    void what_takes_more_pages_than_anybody_puts_together_is_refused_with_their_number() {
        String absurd = "title: Tall\nwood: red-oak\npieces:\n"
                + "  - { name: pilaster, profile: board 600 x 2400, back: wall, bottom: datum }\n";
        Notices notices = new Notices();
        assertThat(SectionDrawing.pages(Drawn.of(absurd).section(), frame("letter"), notices))
                .isEmpty();
        assertThat(notices.sorted()).singleElement().satisfies(notice -> {
            assertThat(notice.code()).isEqualTo("page-too-small");
            assertThat(NoticeWords.INCHES.message(notice)).contains("pages of letter: more than 1000");
        });
    }

    private static PageFrame frame(String page) {
        return new PageFrame(Pages.named(page).orElseThrow(), new TitleStrip(List.of(List.of())), Drawn.FONT, false);
    }

    @Test
    void a_page_that_nobody_knows_is_refused_with_the_nearest_name() {
        Notices notices = new Notices();
        assertThat(Pages.asked("tabliod", notices)).isEmpty();
        assertThat(notices.sorted()).singleElement().satisfies(notice -> {
            assertThat(notice.code()).isEqualTo("unknown-name");
            assertThat(NoticeWords.INCHES.cure(notice)).contains("tabloid");
        });
    }
}
