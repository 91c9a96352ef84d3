package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Notices;
import buildup.shared.sheet.Sheet;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The row with which a stack stands is told only where it does stand with it. */
class LeastRowSheetTest {
    private static Answers answers(String yaml) {
        return Answer.of(
                        DocumentReader.read("stack.yaml", yaml.getBytes(StandardCharsets.UTF_8), new Notices())
                                .orElseThrow(),
                        Catalog.builtIn())
                .known()
                .orElseThrow();
    }

    private static Sheet proposed(Answers answers) {
        return SupportSheets.of(answers.section(), answers.support(), answers.pulls()).stream()
                .filter(sheet -> sheet.key().equals("support.proposed"))
                .findFirst()
                .orElseThrow();
    }

    private static final String CASE = """
            wood: yellow-poplar
            space: { floor: -96, wall: { solid: no } }
            pieces:
              - { name: case, kind: framing, section: [out 12, up 96], face: %s, top: 6 }
              - { name: frieze, profile: board 3/4 x 2-1/2, back: wall, bottom: datum }
              - { name: fascia, profile: board 3/4 x 2, back: frieze.face, bottom: 1/4 }
            fastenings:
              - { name: row, piece: frieze, use: 16 ga x 2, at: { up: 2-3/8 } }
            """;

    @Test
    void no_row_is_told_that_leaves_the_stack_fallen() {
        // the case stands 8 away: no row holds the frieze, and one that holds the fascia to it helps nobody
        Answers answers = answers(CASE.formatted("-8"));
        assertThat(answers.support().whole().answer()).isEqualTo(Support.Answer.NO);
        assertThat(answers.support().cured()).isFalse();
        assertThat(answers.support().proposed())
                .as("a row for one of the falls")
                .isNotEmpty();
        assertThat(proposed(answers).rows()).isEmpty();
    }

    @Test
    void the_row_with_which_the_stack_stands_is_told() {
        Answers answers = answers(CASE.formatted("wall")
                .replace(
                        "fastenings:",
                        "fastenings:\n" + "  - { name: bad, piece: fascia, use: 18 ga x 5/8, at: { up: 1 } }"));
        assertThat(answers.support().whole().answer()).isEqualTo(Support.Answer.NO);
        assertThat(answers.support().cured()).isTrue();
        assertThat(proposed(answers).rows()).hasSize(1);
    }
}
