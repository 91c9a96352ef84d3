package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.notice.Level;
import org.junit.jupiter.api.Test;

/**
 * A board on the edge of a band that sits on a casing, with air behind it: no nail of the list reaches wood, so its weight
 * has to come over its bearing. The band's top runs to 1-1/2 out, so a board 3/4 thick balances while its middle is
 * behind that: while its back is at most 1-1/8 out, which is statics of a rigid body.
 */
class SetOverBearingTest {
    /** The board's back so far before the casing's face, which is at 3/4. */
    private static String stack(String ahead) {
        return """
                units: in
                wood: yellow-poplar
                space: { floor: -84, wall: { covering: 1/2 } }
                pieces:
                  - { name: casing, profile: board 3/4 x 3-1/2, back: wall, bottom: 0 }
                  - { name: band, profile: board 1-1/2 x 1-1/4, back: wall, bottom: casing.top }
                  - { name: frieze, profile: board 3/4 x 5-1/2, back: casing.face + %s, bottom: band.top }
                """.formatted(ahead);
    }

    @Test
    void what_leans_past_its_bearing_and_takes_no_nail_is_set_back_an_eighth_inside_it() {
        assertThat(Answered.messages(Answered.of(stack("1/2")), Level.PROBLEM))
                .singleElement()
                .asString()
                .contains("frieze leans out", "falls 1/8 past band", "Set 'frieze' back by 1/4.");
        assertThat(Answered.messages(Answered.of(stack("5/8")), Level.PROBLEM))
                .singleElement()
                .asString()
                .contains("falls 1/4 past band", "Set 'frieze' back by 3/8.");
    }

    @Test
    void once_it_is_set_back_so_far_it_stands() {
        assertThat(Answered.messages(Answered.of(stack("1/2 - 1/4")), Level.PROBLEM))
                .isEmpty();
        assertThat(Answered.messages(Answered.of(stack("5/8 - 3/8")), Level.PROBLEM))
                .isEmpty();
    }
}
