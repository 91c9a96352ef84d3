package buildup.cli.table;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DisplayTest {
    @ParameterizedTest
    @CsvSource({
        "frieze, 6",
        "Fußleiste, 9",
        "карниз, 6",
        "飾り縁, 6",
        "크라운, 6",
        "כרכוב, 5",
        "e\u0301tage\u0300re, 7",
        "\uD83E\uDEB5, 2",
        "½, 1"
    })
    void a_text_takes_as_many_columns_as_a_terminal_gives_it(String text, int columns) {
        assertThat(Display.width(text)).isEqualTo(columns);
    }

    @Test
    void nothing_in_a_text_steers_the_terminal() {
        assertThat(Display.plain("a\u001B[31mb\u0007\r\nc\td\u2028e\u202Ef\u2066g"))
                .isEqualTo("a [31mb   c d efg");
    }

    @Test
    void half_a_letter_is_left_out() {
        assertThat(Display.plain("a\uD83Eb")).isEqualTo("ab");
    }

    @Test
    void lines_break_at_blanks() {
        assertThat(Display.wrap("the lip of the fascia", 10)).containsExactly("the lip of", "the fascia");
    }

    @Test
    void a_long_place_is_broken_behind_one_of_its_names() {
        assertThat(Display.wrap("pieces.plinth.leave-out", 20)).containsExactly("pieces.plinth.leave-", "out");
        assertThat(Display.wrap("pieces.plinth.leave-out", 16)).containsExactly("pieces.plinth.", "leave-out");
        assertThat(Display.wrap("a.veryverylongname", 9)).containsExactly("a.veryver", "ylongname");
    }

    @Test
    void a_word_that_is_too_long_is_broken_and_loses_nothing() {
        assertThat(Display.wrap("on 飾り縁飾り縁 it", 5)).containsExactly("on", "飾り", "縁飾", "り縁", "it");
    }

    @Test
    void a_mark_stays_with_its_letter() {
        assertThat(Display.wrap("abe\u0301e\u0301", 3)).containsExactly("abe\u0301", "e\u0301");
    }

    @Test
    void a_no_break_space_keeps_a_size_in_one_line() {
        assertThat(Display.wrap("as 3/4\u00A0x\u00A05-1/2", 12)).containsExactly("as", "3/4 x 5-1/2");
    }

    @Test
    void nothing_is_one_empty_line() {
        assertThat(Display.wrap("", 10)).containsExactly("");
        assertThat(Display.wrap("  \n ", 10)).containsExactly("");
    }
}
