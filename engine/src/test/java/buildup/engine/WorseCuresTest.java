package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.notice.Level;
import org.junit.jupiter.api.Test;

/**
 * A shelf between two boards on a case 2 deep, let into the case, in a space of 3: it comes out of the case only by moving
 * out as far as it lies in it, and then stands out so much more than it did. The figures are those sums.
 */
class WorseCuresTest {
    private static String shelf(String width, String back) {
        return """
                wood: check-wood
                space: { floor: 0, ceiling: 8, projection: 3 }
                pieces:
                  - { name: case, kind: framing, section: [out 2, up 8], back: wall, bottom: 0 }
                  - { name: lower, profile: board 1 x 3, back: case.face, bottom: 0 }
                  - { name: upper, profile: board 1 x 3, back: case.face, bottom: 3-3/4 }
                  - { name: shelf, profile: board 3/4 x %s, lay: flat, back: %s, bottom: lower.top }
                """.formatted(width, back);
    }

    @Test
    void a_cure_that_makes_what_is_wrong_elsewhere_clearly_worse_is_told_with_it() {
        // face at 1-1/2 + 2 = 3-1/2, over by 1/2; moved out by the lap of 1/2 it is over by 1
        assertThat(Answered.messages(Answered.of(shelf("2", "1-1/2")), Level.PROBLEM))
                .anySatisfy(said -> assertThat(said)
                        .contains("cuts 1/2 into 'case'")
                        .endsWith("move it out 1/2. That alone makes another problem worse: The stack projects 4, 1"
                                + " more than allowed."))
                .anySatisfy(said -> assertThat(said).contains("projects 3-1/2, 1/2 more than allowed"));
    }

    @Test
    void a_cure_that_makes_it_worse_by_less_than_a_rule_reads_is_told() {
        // face at 1-31/32 + 2 = 3-31/32; moved out by 1/32 it stands out 4, over by a thirtieth more
        assertThat(Answered.messages(Answered.of(shelf("2", "1-31/32")), Level.PROBLEM))
                .anySatisfy(said -> assertThat(said).contains("into 'case'").endsWith("move it out 1/32."));
    }

    @Test
    void where_nothing_was_wrong_elsewhere_the_same_cure_is_told() {
        // face at 1-1/2 + 1 = 2-1/2; moved out by 1/2 it stands out 3, as allowed
        assertThat(Answered.messages(Answered.of(shelf("1", "1-1/2")), Level.PROBLEM))
                .anySatisfy(said -> assertThat(said).contains("into 'case'").endsWith("move it out 1/2."));
    }
}
