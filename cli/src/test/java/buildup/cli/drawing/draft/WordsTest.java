package buildup.cli.drawing.draft;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.scene.TextMeasure;
import org.junit.jupiter.api.Test;

class WordsTest {
    private static final TextMeasure SQUARE = (text, size) -> text.codePointCount(0, text.length()) * size;

    @Test
    void a_text_breaks_between_words() {
        assertThat(Words.lines(SQUARE, "one two three", 1, 8, 5)).containsExactly("one two", "three");
    }

    @Test
    void a_percent_sign_stays_with_its_figure() {
        assertThat(Words.lines(SQUARE, "the cornice 53 %.", 1, 15, 5)).containsExactly("the cornice", "53 %.");
        assertThat(Words.lines(SQUARE, "53 %", 1, 2, 5)).containsExactly("53", "%");
    }

    @Test
    void a_word_longer_than_the_line_is_broken_anywhere() {
        assertThat(Words.lines(SQUARE, "abcdefghij", 1, 4, 5)).containsExactly("abcd", "efgh", "ij");
        assertThat(Words.lines(SQUARE, "\ud83e\udeb5\ud83e\udeb5\ud83e\udeb5", 1, 1.5, 5))
                .hasSize(3);
    }

    @Test
    void what_does_not_fit_ends_in_an_ellipsis() {
        assertThat(Words.lines(SQUARE, "one two three four", 1, 8, 2)).containsExactly("one two", "three f\u2026");
        assertThat(Words.lines(SQUARE, "", 1, 8, 2)).isEmpty();
    }
}
