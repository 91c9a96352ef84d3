package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.judge.search.SearchLimits;
import buildup.engine.judge.search.SearchResult;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a search says of sizes between its choices, of spaces that it cannot go through, and of free sizes misread. */
class SearchedBetweenTest {
    /** Three boards on each other, two of them free: height is the sum of three, projection the widest of them. */
    private static String boards(String low, String high, String more) {
        return """
                title: Boards
                wood: yellow-poplar
                sizes: { low: "%s", high: "%s" }
                space: { wall: { solid: no } }
                pieces:
                  - { name: a, section: [out 2, up low], back: wall, bottom: 0 }
                  - { name: b, section: [out 3, up high], back: wall, bottom: a.top }
                  - { name: c, section: [out 4, up 1], back: wall, bottom: b.top }
                %s
                """.formatted(low, high, more);
    }

    private static Searched search(String yaml, long tries) {
        return SearchedTest.search(yaml, SearchLimits.of(tries), Optional.empty());
    }

    @Test
    void a_size_between_two_choices_that_meets_every_line_is_named() {
        // 2 + low + 1 = 5.3 where low = 2.3
        Searched searched = search(boards("between 1 and 4 by 1/4, now 1", "2", "must: [height = 5.3 in]"), 100);
        SearchResult result = searched.result().orElseThrow();
        assertThat(result.smallest()).isEmpty();
        assertThat(result.exact().orElseThrow().turning().value()).isCloseTo(2.3, within(1e-9));
        assertThat(result.exact().orElseThrow().typed()).isEqualTo("2.3 in");
        assertThat(searched.notices()).extracting(Notice::code).contains("met-between-choices", "nothing-meets");
    }

    @Test
    void a_size_between_two_choices_that_meets_two_limits_is_named_as_one_limit_would_be() {
        // 2 + low + 1 from 5-1/8 to 5-3/8: low from 2-1/8 to 2-3/8, and no half inch lies there
        Searched searched =
                search(boards("between 1 and 4 by 1/2, now 1", "2", "must: [height >= 5-1/8, height <= 5-3/8]"), 100);
        SearchResult result = searched.result().orElseThrow();
        assertThat(result.smallest()).isEmpty();
        assertThat(result.exact().orElseThrow().typed()).isEqualTo("2-1/4");
        assertThat(searched.notices()).extracting(Notice::code).contains("met-between-choices", "nothing-meets");
    }

    @Test
    void none_is_named_where_another_line_is_broken_there() {
        Searched searched =
                search(boards("between 1 and 4 by 1/4, now 1", "2", "must: [height = 5.3 in, top of a <= 2]"), 100);
        assertThat(searched.result().orElseThrow().exact()).isEmpty();
    }

    @Test
    void an_answer_that_lies_on_every_target_is_proved_though_not_all_were_tried() {
        String free = "between 1 and 4 by 1/64, now 1";
        SearchResult result = search(boards(free, free, "wish: [height near 6]"), 500)
                .result()
                .orElseThrow();
        assertThat(result.judged()).isLessThan(result.space().longValueExact());
        assertThat(result.proved()).isTrue();
        // 1 + low + high = 6
        assertThat(result.best().get(0).candidate().score()).isCloseTo(0, within(1e-9));
    }

    @Test
    void an_answer_beside_its_target_is_not_proved_by_that() {
        String free = "between 1 and 4 by 1/64, now 1";
        String far = boards(free, free, "wish: [height near 20]");
        // of a piece that slides until it touches no bounds are known; of the others no stack is higher than 9
        SearchResult unknown = search(far.replace("bottom: b.top", "bottom: touch"), 500)
                .result()
                .orElseThrow();
        assertThat(unknown.proved()).isFalse();
        SearchResult known = search(far, 500).result().orElseThrow();
        assertThat(known.proved()).isTrue();
        assertThat(known.best().get(0).candidate().texts()).containsExactly("4", "4");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "between 1 and 4 by 1/4096, now 1",
                "between 4 and 1 by 1/8",
                "between 1 and 1 by 1/8",
                "between 1 and 4 by 0",
                "between 1 and 4 by nothing",
                "between little and 4 by 1/8",
                "between 1 and 4 by 1/8, now 9",
                "one of [1, 2], now 3",
                "between 1 and 4 by 1/8, now"
            })
    void a_free_size_that_cannot_be_read_is_one_fault_and_nothing_follows_from_it(String free) {
        Searched searched = search(boards(free, "2", "must: [height <= 5]"), 100);
        assertThat(searched.result()).isEmpty();
        assertThat(searched.notices().stream().filter(notice -> notice.level() == Level.REFUSAL))
                .singleElement()
                .satisfies(notice -> {
                    assertThat(notice.code()).isEqualTo("not-a-free-size");
                    assertThat(notice.mark()).isPresent();
                });
    }
}
