package buildup.cli.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ShippedFontTest {
    private static final ShippedFont FONT = ShippedFont.load();

    @Test
    void widths_are_those_of_helvetica() {
        // Adobe Core 14 font metrics, Helvetica.afm: A 667, W 944, one 556, fraction slash's neighbor slash 278 per
        // mille
        assertThat(FONT.width("A", 1)).isCloseTo(0.667, within(0.001));
        assertThat(FONT.width("W", 1)).isCloseTo(0.944, within(0.001));
        assertThat(FONT.width("1/1", 0.5)).isCloseTo((0.556 + 0.278 + 0.556) / 2, within(0.001));
    }

    @Test
    void a_character_that_the_font_lacks_takes_a_whole_size_and_is_a_question_mark_on_paper() {
        assertThat(FONT.width("\u98fe", 2)).isCloseTo(2, within(1e-9));
        assertThat(FONT.drawable("a\u98fe\ud83e\udeb5b")).isEqualTo("a??b");
    }

    @Test
    void what_is_read_from_the_right_is_set_from_the_right() {
        assertThat(FONT.drawable("\u05d0\u05d1\u05d2")).isEqualTo("\u05d2\u05d1\u05d0");
        assertThat(FONT.drawable("cap \u05d0\u05d1 x")).isEqualTo("cap \u05d1\u05d0 x");
    }
}
