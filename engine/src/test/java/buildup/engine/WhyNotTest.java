package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.judge.along.WhyNot;
import buildup.engine.judge.search.SearchLimits;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Why a rule is not met, asked of the cornice of the worked examples and of a shelf. */
class WhyNotTest {
    private static List<WhyNot> why(String yaml, String rule) {
        return SearchedTest.search(yaml, SearchLimits.of(100), Optional.of(rule))
                .why()
                .orElseThrow();
    }

    @Test
    void a_question_why_about_a_figure_that_no_stack_has_is_told_so() {
        String yaml = """
                wood: yellow-poplar
                sizes: { deep: "between 3 and 5 by 1/2, now 4" }
                pieces: [{ name: shelf, profile: board 3/4 x deep, lay: flat, back: wall, bottom: 0 }]
                """;
        List<WhyNot> why = why(yaml, "load factor >= 2");
        assertThat(WhyNot.said(why)).hasSize(1).first().asString().contains("No stack of this document has the figure");
    }

    @Test
    void a_question_why_names_the_sizes_that_a_rule_hangs_on_and_what_gives_then() {
        String yaml = SearchedTest.cornice(
                "between 1/8 and 1/2 by 1/8, now 1/4",
                "between 2-1/2 and 4 by 1/8, now 3-1/2",
                "must: [projection >= 6-1/4, height <= 11]\n");
        List<WhyNot> why = why(yaml, "share of frieze.face in raking <= 50 %");
        assertThat(why.get(0).matters()).isTrue();
        assertThat(why.get(0).meets()).isEmpty();
        assertThat(why.get(1).meets()).hasValue("3-1/8");
        assertThat(why.get(1).turning().orElseThrow().value()).isCloseTo(3.1875, within(1e-9));
        assertThat(why.get(1).gives()).isEmpty();
        assertThat(why(yaml, "share of frieze.face in raking <= 40 %").get(1).gives())
                .containsExactly("projection >= 6-1/4");
    }
}
