package buildup.engine.section.compose;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Bench;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What lies behind a slit of 1/16 or less is of no room: that is as far as a remodelers' standard lets the edges of a miter
 * stand apart. Lengths are those of the boards in each test.
 */
class SlitTest {
    /** A cleat under a shelf, a board before it that ends so far over a sill. */
    private static Bench cleat(String slit) {
        return Bench.onWall(
                "name: sill, kind: framing, section: [out 3, up 1], back: wall, bottom: 0",
                "name: shelf, profile: board 3/4 x 3, lay: flat, back: wall, bottom: 4",
                "name: cleat, kind: nailer, profile: board 3/4 x 1, back: wall, top: shelf.bottom",
                "name: front, profile: board 3/4 x 3, face: shelf.face, top: shelf.bottom, bottom: sill.top + " + slit);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1/16", "1/32", "0.01", "1.5 mm"})
    void behind_a_slit_nothing_is_on_the_room_side(String slit) {
        assertThat(cleat(slit).walk()).hasSize(3).first().asString().startsWith("front face");
        assertThat(cleat(slit).walk()).endsWith("shelf face 0.750", "shelf top 3.000");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1/8", "0.07", "2 mm"})
    void behind_a_wider_gap_it_is(String gap) {
        assertThat(cleat(gap).walk()).contains("cleat bottom 0.750", "cleat face 1.000");
    }

    @Test
    void a_cap_just_under_the_ceiling_shows_no_top() {
        Bench bench =
                Bench.in("{ ceiling: 12 }", "name: cap, profile: board 3/4 x 4, lay: flat, back: wall, top: 12 - 1/16");
        assertThat(bench.walk()).containsExactly("cap bottom 4.000", "cap face 0.750");
    }

    @Test
    void a_board_just_off_the_wall_shows_no_back() {
        Bench bench = Bench.onWall(
                "name: shelf, profile: board 3/4 x 3, lay: flat, back: wall, bottom: 4",
                "name: apron, profile: board 3/4 x 4, back: 1/16, top: shelf.bottom");
        assertThat(bench.walk())
                .containsExactly(
                        "apron bottom 0.750",
                        "apron face 4.000",
                        "shelf bottom 2.188",
                        "shelf face 0.750",
                        "shelf top 3.000");
    }

    @Test
    void a_groove_no_deeper_than_wide_stays_open() {
        Bench bench = Bench.onWall(
                "name: low, section: [out 3/4, up 2, in 1/16, up 1/16], back: wall, bottom: 0",
                "name: high, profile: board 3/4 x 2, back: wall, bottom: low.top");
        assertThat(bench.walk()).contains("low up-2 0.063", "high bottom 0.063").hasSize(7);
    }

    @Test
    void the_quirk_of_one_profile_is_its_own_shape() {
        Bench bench = Bench.onWall(
                "name: one, section: [out 3/4, up 1, in 1/2, up 1/16, out 1/2, up 1], back: wall, bottom: 0");
        assertThat(bench.walk()).hasSize(7);
    }
}
