package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What lies on something that hangs leans by the same statics of one body on one support, by hand. */
class PerchTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final String CASE = "name: case, kind: framing, section: [out 14, up 90], face: wall, top: 0";
    private static final String SOFFIT =
            "name: soffit, profile: board 3/4 x 6, lay: flat, kind: nailer, back: -3, bottom: 0";
    private static final String FASCIA =
            "name: fascia, profile: board 3/4 x 3, back: soffit.face, bottom: soffit.bottom - 1";
    private static final String LIP =
            "name: lip, profile: board 3/4 x 4, lay: flat, back: fascia.back - 1/4, bottom: fascia.top";

    private static List<Perch> perches(Held held) {
        return Perch.all(held.section(), held.support().path(), held.support().loads());
    }

    @Test
    void a_lip_on_a_fascia_that_is_only_nailed_on_leans_as_far_as_its_middle_stands_out() {
        Held held = Held.of(Bench.loose(CASE, SOFFIT, FASCIA, LIP));
        assertThat(perches(held)).singleElement().satisfies(perch -> {
            assertThat(held.names(perch.group())).containsExactly("lip");
            assertThat(held.names(perch.carriers())).containsExactly("fascia");
            // the fascia's upper edge, 3 to 3-3/4 out, 2 up; the lip's middle is 4-3/4 out
            assertThat(perch.back()).isCloseTo(3, EXACT);
            assertThat(perch.face()).isCloseTo(3.75, EXACT);
            assertThat(perch.level()).isCloseTo(2, EXACT);
            assertThat(perch.resultant()).isCloseTo(4.75, EXACT);
            assertThat(perch.past()).isCloseTo(1, EXACT);
        });
    }

    @Test
    void what_is_put_on_the_lip_moves_its_weight() {
        String bead = "name: bead, profile: board 1/2 x 3/4, face: lip.face, bottom: lip.top";
        Perch perch =
                perches(Held.of(Bench.loose(CASE, SOFFIT, FASCIA, LIP, bead))).get(0);
        // areas 3 and 3/8 of the same wood, middles at 4-3/4 and 6-1/2
        assertThat(perch.group()).hasSize(2);
        assertThat(perch.resultant()).isCloseTo((3 * 4.75 + 0.375 * 6.5) / 3.375, EXACT);
    }

    @Test
    void a_lip_on_something_that_stands_has_a_bearing_and_no_perch() {
        String stands = "name: fascia, profile: board 3/4 x 3, back: soffit.face, bottom: 0, fixed: soffit";
        assertThat(perches(Held.of(Bench.loose(CASE, SOFFIT, stands, LIP)))).isEmpty();
    }

    @Test
    void a_load_on_the_lip_counts_and_a_load_on_what_carries_it_does_not() {
        Held held = Held.of(Bench.loose(CASE, SOFFIT, FASCIA, LIP))
                .load("lip", 6.5, 5)
                .load("fascia", 3.5, 50);
        Perch perch = perches(held).get(0);
        assertThat(perch.weight()).isCloseTo(3 * Held.WOOD + 5, EXACT);
        assertThat(perch.resultant()).isCloseTo((3 * Held.WOOD * 4.75 + 5 * 6.5) / (3 * Held.WOOD + 5), EXACT);
    }

    /** The fascia is 2 high, a board before it 3; the underside of the lip is stepped to lie on both. */
    @Test
    void a_lip_on_two_heights_turns_over_the_end_that_it_leans_to() {
        String outer = "name: outer, profile: board 3/4 x 4, back: fascia.face, bottom: -1";
        Held out = Held.of(Bench.loose(
                CASE,
                SOFFIT,
                FASCIA,
                outer,
                "name: lip, section: [out 3/4, up 1, out 4, up 1], back: fascia.back, bottom: fascia.top"));
        Perch forward = perches(out).get(0);
        assertThat(out.names(forward.carriers())).containsExactly("fascia", "outer");
        assertThat(forward.back()).isCloseTo(3, EXACT);
        assertThat(forward.face()).isCloseTo(4.5, EXACT);
        assertThat(forward.resultant()).isCloseTo((0.75 * 3.375 + 4.75 * 5.375) / 5.5, EXACT);
        assertThat(forward.level()).isCloseTo(3, EXACT);
        Held in = Held.of(Bench.loose(
                CASE,
                SOFFIT,
                FASCIA,
                outer,
                "name: lip, section: [out 3-3/4, up 1, out 3/4, up 1], back: 0, bottom: fascia.top"));
        Perch back = perches(in).get(0);
        assertThat(back.resultant()).isLessThan(3);
        assertThat(back.level()).isCloseTo(2, EXACT);
        assertThat(back.past()).isCloseTo(3 - back.resultant(), EXACT);
    }
}
