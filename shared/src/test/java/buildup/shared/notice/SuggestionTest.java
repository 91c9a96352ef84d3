package buildup.shared.notice;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.figure.FigurePrinter;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SuggestionTest {

    private static final List<String> KNOWN = List.of("frieze", "fascia", "crown", "cap-b", "bed", "lip");

    @ParameterizedTest
    @CsvSource({"freize,frieze", "friese,frieze", "cap-B,cap-b", "CROWN,crown", "crwn,crown", "lpi,lip", "beds,bed"})
    void a_slip_of_the_finger_finds_the_name_that_was_meant(String asked, String meant) {
        assertThat(Suggestion.nearest(asked, KNOWN)).contains(meant);
    }

    @ParameterizedTest
    @CsvSource({"architrave", "x", "dado", "''"})
    void a_name_that_is_nothing_like_it_finds_none(String asked) {
        assertThat(Suggestion.nearest(asked, KNOWN)).isEmpty();
    }

    @Test
    void among_equals_the_first_in_alphabet_order_is_taken_whatever_the_order_given() {
        assertThat(Suggestion.nearest("cap-x", List.of("cap-b", "cap-a"))).contains("cap-a");
        assertThat(Suggestion.nearest("cap-x", List.of("cap-a", "cap-b"))).contains("cap-a");
    }

    /** White pine is the trade's short name of eastern white pine. */
    @Test
    void the_only_name_that_holds_the_very_words_is_meant_before_one_that_is_spelled_like_them() {
        List<String> woods =
                List.of("eastern-white-pine", "white-fir", "sugar-pine", "red-oak", "white-oak", "basswood");
        assertThat(Suggestion.nearest("white-pine", woods)).contains("eastern-white-pine");
        assertThat(Suggestion.nearest("White Pine", woods)).contains("eastern-white-pine");
        assertThat(Suggestion.nearest("white-fur", woods)).contains("white-fir");
        assertThat(Suggestion.nearest("pine", woods))
                .as("one word may be meant otherwise")
                .isEmpty();
        assertThat(Suggestion.nearest("white-pine", List.of("eastern-white-pine", "western-white-pine", "white-fir")))
                .as("two hold it")
                .contains("white-fir");
        assertThat(Suggestion.nearest("bass-wood", woods)).contains("basswood");
    }

    @Test
    void a_word_without_end_is_not_compared() {
        assertThat(Suggestion.nearest("x".repeat(1_000_000), List.of("x".repeat(1_000_001))))
                .isEmpty();
    }

    private static String cure(String asked, List<String> known) {
        return FigurePrinter.INCHES.print(Suggestion.phrase(asked, known));
    }

    @Test
    void the_cure_names_the_nearest_or_lists_what_is_known() {
        assertThat(cure("crwn", KNOWN)).isEqualTo("Did you mean crown?");
        assertThat(cure("dado", KNOWN)).isEqualTo("Known here: bed, cap-b, crown, fascia, frieze, lip.");
        assertThat(cure("dado", List.of())).isEqualTo("Take it out.");
        assertThat(cure(
                        "dado",
                        IntStream.range(10, 30).mapToObj(i -> "piece-" + i).toList()))
                .isEqualTo(
                        "Known here: piece-10, piece-11, piece-12, piece-13, piece-14, piece-15, piece-16, piece-17, "
                                + "piece-18, piece-19, piece-20, piece-21 and 8 more.");
    }
}
