package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.judge.search.SearchLimits;
import buildup.engine.judge.search.SearchResult;
import buildup.engine.judge.search.SearchWords;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Stacks that cannot be put together are told as such, and are no stacks that fail a line. */
class UnbuiltCountsTest {
    /** Two shoes, and a cap that stands on the second; picks among them are free. */
    private static String shoes(String first, String second) {
        return """
                wood: red-oak
                sizes: { low: "%s" }
                space: { floor: -48, wall: { solid: yes } }
                pieces:
                  - { name: a, profile: board 3/4 x 3, back: wall, bottom: low, leave-out: "%s" }
                  - { name: b, profile: board 3/4 x 3, back: wall, bottom: 10 }
                  - { name: cap, profile: board 3/4 x 2, back: wall, bottom: a.top }
                must: [height <= 16]
                wish: [most height]
                """.formatted(first, second);
    }

    private static List<String> said(SearchResult result) {
        return SearchWords.said(result).stream()
                .map(FigurePrinter.INCHES::print)
                .toList();
    }

    @Test
    void how_many_could_not_be_put_together_is_counted_beside_those_that_meet_every_line() {
        // low 0, 1, 2 with a: b ends at 13, the cap stands on a: all 13, 12 and 11 high; without a the cap stands on
        // nothing
        Searched searched = SearchedTest.search(
                shoes("between 0 and 2 by 1, now 0", "one of [no, yes]"), SearchLimits.of(100), Optional.empty());
        SearchResult result = searched.result().orElseThrow();
        assertThat(result.judged()).isEqualTo(6);
        assertThat(result.unbuilt()).isEqualTo(3);
        assertThat(result.meeting()).isEqualTo(3);
        assertThat(said(result))
                .contains("6 stacks, 6 tried, 3 meet every line.", "3 of those tried could not be put together.");
        assertThat(result.without().orElseThrow().changes())
                .extracting(change -> change.key() + " " + change.to())
                .containsExactly("pieces.a.leave-out yes");
        // the reason and its place stand in a note of the size that does it alone
        assertThat(searched.notices())
                .extracting(NoticeWords.INCHES::message)
                .anySatisfy(line -> assertThat(line)
                        .contains("With 'pieces.a.leave-out' at yes")
                        .contains("No piece called 'a'"));
    }

    @Test
    void two_choices_that_are_at_odds_only_together_are_told_with_the_reason() {
        // a strip is ripped to what lies between two edges: low 4 and high 5 each leave some of it, both together leave
        // none
        String yaml = """
                wood: red-oak
                sizes: { low: "one of [0, 4], now 0", high: "one of [8, 3], now 8" }
                space: { wall: { solid: yes } }
                pieces:
                  - { name: strip, profile: board 3/4 x 12, back: wall, bottom: low, top: high }
                  - { name: foot, profile: board 3/4 x 1, back: wall, bottom: -1 }
                must: [height <= 9]
                """;
        SearchResult result = SearchedTest.search(yaml, SearchLimits.of(100), Optional.empty())
                .result()
                .orElseThrow();
        // 0 to 8, 0 to 3 and 4 to 8 are strips; 4 to 3 is none
        assertThat(result.judged()).isEqualTo(4);
        assertThat(result.unbuilt()).isEqualTo(1);
        assertThat(result.meeting()).isEqualTo(3);
        assertThat(said(result).get(2))
                .startsWith("1 of those tried could not be put together, the first with sizes.low 4, sizes.high 3: ");
        assertThat(FigurePrinter.INCHES.print(result.without().orElseThrow().why()))
                .contains("strip");
    }

    @Test
    void where_all_can_be_put_together_nothing_is_said_of_it() {
        SearchResult result = SearchedTest.search(
                        shoes("between 0 and 2 by 1, now 0", "one of [no]"), SearchLimits.of(100), Optional.empty())
                .result()
                .orElseThrow();
        assertThat(result.unbuilt()).isZero();
        assertThat(said(result)).noneMatch(line -> line.contains("put together"));
    }

    @Test
    void a_question_why_names_a_choice_that_makes_no_stack_too() {
        Searched searched =
                SearchedTest.search(shoes("0", "one of [no, yes]"), SearchLimits.of(100), Optional.of("height <= 12"));
        assertThat(searched.why()).isPresent();
        assertThat(searched.notices())
                .extracting(NoticeWords.INCHES::message)
                .anySatisfy(line -> assertThat(line).contains("With 'pieces.a.leave-out' at yes"));
    }
}
