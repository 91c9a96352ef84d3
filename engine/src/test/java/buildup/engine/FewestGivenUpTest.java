package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.judge.search.Answered;
import buildup.engine.judge.search.SearchLimits;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Where no stack meets every line: which of those that give up as few is told. */
class FewestGivenUpTest {
    /** A board whose foot lies 5 less the lip up: at 5, 4.5 (today), 4, 3.5 and 3. */
    private static Answered nearest(String more) {
        return SearchedTest.search("""
                wood: yellow-poplar
                sizes: { lip: "between 0 and 2 by 1/2, now 1/2" }
                space: { wall: { solid: yes } }
                pieces:
                  - { name: one, profile: board 1 x 2, back: wall, bottom: 0 }
                  - { name: three, profile: board 1 x 2, back: wall, bottom: 5 - lip }
                """ + more, SearchLimits.of(100), Optional.empty())
                .result()
                .orElseThrow()
                .nearest()
                .orElseThrow();
    }

    private static List<String> changes(Answered answered) {
        return answered.changes().stream()
                .map(change -> change.key() + " " + change.to())
                .toList();
    }

    @Test
    void of_two_lines_that_are_at_odds_the_one_is_given_up_for_which_nothing_has_to_change() {
        // 4.5 meets the second, 4 the first; each then misses the other by a quarter
        Answered near = nearest("must: [bottom of three = 4 within 1/4, bottom of three = 4-1/2 within 1/4]\n");
        assertThat(near.candidate().unmet()).isEqualTo(1);
        assertThat(changes(near)).isEmpty();
    }

    @Test
    void of_two_lines_that_are_at_odds_the_one_is_given_up_that_a_wish_wants_least() {
        Answered near = nearest("must: [bottom of three = 4 within 1/4, bottom of three = 4-1/2 within 1/4]\n"
                + "wish: [bottom of three near 4]\n");
        assertThat(near.candidate().unmet()).isEqualTo(1);
        assertThat(changes(near)).containsExactly("sizes.lip 1");
    }

    @Test
    void of_stacks_that_give_up_the_same_line_the_one_comes_first_that_misses_it_by_least() {
        // 5 is the highest that there is
        Answered near = nearest("must: [bottom of three >= 6]\n");
        assertThat(changes(near)).containsExactly("sizes.lip 0");
    }
}
