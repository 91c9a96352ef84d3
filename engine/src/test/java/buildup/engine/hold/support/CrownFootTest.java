package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Answered;
import buildup.engine.judge.verdict.Topic;
import buildup.shared.notice.Level;
import org.junit.jupiter.api.Test;

/**
 * A crown stands across its corner on two edges, the lower one on the wall or on what lies before it: common practice, no
 * source. Set 1/2 off the wall it stands on the upper one alone.
 */
class CrownFootTest {
    /** Its lid is screwed up into a ceiling of which it is not known what it is made of. */
    private static String crown(String back) {
        return """
                wood: check-wood
                space: { floor: -96, ceiling: 0, wall: { covering: 1/2 } }
                pieces:
                  - { name: lid, kind: nailer, profile: board 3/4 x 5, lay: flat, back: wall, top: ceiling }
                  - { name: crown, profile: plain-crown 4-1/4, back: BACK, top: lid.bottom }
                fastenings:
                  - { name: lid screws, piece: lid, use: screw 10 x 3, at: { out: 1-1/2, up: lid.bottom } }
                  - { name: upper, piece: crown, use: 16 ga x 2, at: { up: crown.top - 1/2 } }
                """.replace("BACK", back);
    }

    @Test
    void a_crown_that_falls_with_its_foot_in_the_air_is_told_so() {
        for (String off : new String[] {"wall + 1/2", "wall + 1/16"}) {
            assertThat(Answered.because(crown(off), Topic.STANDS))
                    .contains("crown")
                    .endsWith("the foot of crown bears on nothing.");
        }
    }

    @Test
    void one_for_which_no_nails_are_given_is_told_so_too() {
        for (String off : new String[] {"wall + 1/2", "wall"}) {
            String crown = crown(off).replaceAll("(?s)fastenings:.*", "");
            assertThat(Answered.messages(Answered.of(crown), Level.NOTE).stream()
                            .filter(note -> note.startsWith("The foot of 'crown' bears on nothing.")))
                    .hasSize(off.equals("wall") ? 0 : 1);
        }
    }

    @Test
    void of_one_whose_foot_is_on_the_wall_that_is_not_said() {
        assertThat(Answered.because(crown("wall"), Topic.STANDS))
                .startsWith("The stack does not stand")
                .doesNotContain("foot");
    }
}
