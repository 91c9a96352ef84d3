package buildup.shared.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarksTest {
    @ParameterizedTest
    @ValueSource(ints = {0x1B, 0x9B, 0x2028, 0x2029})
    void what_steers_or_breaks_a_line_becomes_a_blank(int mark) {
        assertThat(Marks.without("a" + Character.toString(mark) + "b")).isEqualTo("a b");
        assertThat(Marks.none("a" + Character.toString(mark))).isFalse();
    }

    @ParameterizedTest
    @ValueSource(ints = {0x200B, 0x202E, 0x2066, 0xFEFF, 0xAD, 0x2060, 0x206A, 0xE0041, 0xD800})
    void what_turns_or_hides_is_left_out(int mark) {
        assertThat(Marks.without("a" + Character.toString(mark) + "b")).isEqualTo("ab");
        assertThat(Marks.none("a" + Character.toString(mark))).isFalse();
    }

    /** Letters of Korean and Khmer that fill nothing, marks of music and of shorthand, a joiner that joins nothing. */
    @ParameterizedTest
    @ValueSource(
            ints = {0x34F, 0x115F, 0x1160, 0x17B5, 0x180E, 0x2065, 0x3164, 0xFFA0, 0x1BCA0, 0x1D173, 0xE0080, 0xE01F0})
    void so_is_what_no_language_is_written_with_and_takes_no_room(int mark) {
        assertThat(Marks.without("a" + Character.toString(mark) + "b")).isEqualTo("ab");
    }

    /** Marks of Persian, Hindi, Hebrew and of pictures; a combining accent; breaks of lines. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u0645\u06CC\u200C\u062E",
                "\u0915\u094D\u200D\u0937",
                "\u05D0\u200F!",
                "\u0661\u061C-",
                "\u182D\u180B",
                "\u845B\uDB40\uDD00",
                "\u2764\uFE0F",
                "e\u0301",
                "\uD83D\uDC68\u200D\uD83D\uDC69",
                "a\nb\tc"
            })
    void what_a_language_is_written_with_stays(String text) {
        assertThat(Marks.none(text)).isTrue();
        assertThat(Marks.keepingLines(text)).isEqualTo(text);
    }

    @Test
    void nothing_unseen_remains_of_any_letter_there_is() {
        assertThat(IntStream.rangeClosed(0, Character.MAX_CODE_POINT)
                        .mapToObj(Character::toString)
                        .map(Marks::without)
                        .flatMapToInt(String::codePoints)
                        .filter(Marks::unseen))
                .isEmpty();
    }
}
