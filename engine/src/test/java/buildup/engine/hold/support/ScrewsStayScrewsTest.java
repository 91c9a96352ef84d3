package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Answered;
import buildup.engine.judge.verdict.Topic;
import buildup.shared.notice.Level;
import org.junit.jupiter.api.Test;

/**
 * A ledger 1-1/2 thick on a wall covered by 1/2 is screwed with 2-1/2: only 1/2 of it is in the stud, where 6 diameters of
 * 0.164 are 0.984; 3 in leave 1. A finish nail does not take the place of a screw that carries: common practice, no source.
 */
class ScrewsStayScrewsTest {
    private static final String LEDGER = """
            wood: hard-maple
            space: { floor: 0, ceiling: 96, wall: { covering: 1/2 } }
            pieces:
              - { name: ledger, kind: nailer, profile: board 1-1/2 x 3-1/2, back: wall, top: 52 }
              - { name: apron, profile: board 3/4 x 6, back: ledger.face, top: 52 }
            fastenings:
              - { name: led, piece: ledger, use: screw 8 x LENGTH, at: { up: 50 } }
            """;

    @Test
    void what_screws_too_short_let_fall_is_held_by_longer_screws() {
        String shorter = LEDGER.replace("LENGTH", "2-1/2");
        assertThat(Answered.because(shorter, Topic.STANDS)).contains("ledger and apron fall");
        assertThat(Answered.cure(shorter, Topic.STANDS))
                .contains("screw 8 x 3")
                .doesNotContain("finish")
                .doesNotContain(" ga ");
        assertThat(Answered.messages(Answered.of(LEDGER.replace("LENGTH", "3")), Level.PROBLEM))
                .isEmpty();
    }
}
