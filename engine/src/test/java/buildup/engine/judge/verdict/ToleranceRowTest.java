package buildup.engine.judge.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Answered;
import buildup.engine.judge.verdict.Ruling.Reply;
import org.junit.jupiter.api.Test;

/** What the row on the saw's error says beside its own table. */
class ToleranceRowTest {
    /** A brad of 1 through a board of 3/4 bites 1/4 where 1/2 is asked, in every build. */
    @Test
    void what_is_wrong_as_drawn_is_named_and_the_builds_are_not_said_to_be_right() {
        String yaml = """
                wood: yellow-poplar
                space: { ceiling: 20 }
                pieces:
                  - { name: back, profile: board 3/4 x 5, back: wall, bottom: 0 }
                  - { name: band, profile: board 3/4 x 3, back: back.face, bottom: 1 }
                fastenings:
                  - { name: short, piece: band, use: 18 ga x 1, at: { up: 2 } }
                tolerance: {}
                """;
        assertThat(Answered.row(yaml, Topic.TOLERANCE).answer()).isEqualTo(Reply.LOOK);
        assertThat(Answered.because(yaml, Topic.TOLERANCE))
                .startsWith("bite of short: not what is wanted as drawn; of the rest ");
    }
}
