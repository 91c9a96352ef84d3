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
}
