package buildup.engine.section.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import org.junit.jupiter.api.Test;

/** How far a face runs on past the piece that meets it. */
class RevealTest {
    private static final String LOW = "name: low, profile: board 1 x 2, back: wall, bottom: datum";

    @Test
    void the_lower_piece_shows_when_it_stands_out_farther() {
        assertThat(Bench.loose(LOW, "name: high, profile: board 3/4 x 2, back: wall, bottom: low.top")
                        .reveals())
                .containsExactly("low over high 0.250 level");
    }

    @Test
    void the_upper_piece_shows_its_underside_when_it_stands_out_farther() {
        assertThat(Bench.loose(LOW, "name: high, profile: board 1-1/2 x 2, back: wall, bottom: low.top")
                        .reveals())
                .containsExactly("high over low 0.500 level");
    }

    @Test
    void flush_faces_are_a_reveal_of_nothing() {
        Bench bench = Bench.loose(LOW, "name: high, profile: board 1 x 2, back: wall, bottom: low.top");
        assertThat(bench.reveals()).containsExactly("low over high 0.000 level");
        Reveal flush = bench.section().reveals().get(0);
        assertThat(flush.to()).isEqualTo(flush.at());
        assertThat(flush.step()).isZero();
    }

    @Test
    void an_upright_face_shows_above_and_below_what_is_planted_on_it() {
        assertThat(Bench.onWall(LOW, "name: strip, profile: board 1/2 x 1/2, back: low.face, bottom: 1")
                        .reveals())
                .containsExactly("low over strip 1.000 upright", "low over strip 0.500 upright");
    }

    @Test
    void a_slope_shows_along_the_slope() {
        // a strip on a face of 45 degrees, its foot at (1.5, 0.5), its other end 1 farther up: sqrt(1/2) and 1.5 sqrt 2
        // - 1
        Bench bench = Bench.loose(
                "name: wedge, section: [out 2, chamfer in 2 x 2], back: wall, bottom: datum",
                "name: strip, profile: board 1/2 x 1, turn: 45, back: 0.792893, bottom: 1/2");
        assertThat(bench.reveals()).containsExactly("wedge over strip 0.707 sloped", "wedge over strip 1.121 sloped");
    }

    @Test
    void a_reveal_ends_where_the_face_turns_into_a_round() {
        Bench bench = Bench.loose(
                "name: band, profile: check-backband 1-5/8 x 1-1/2, back: wall, bottom: datum",
                "name: frieze, profile: board 1 x 4, back: wall, bottom: band.top");
        // the top is flat to 1-1/2, where the arris of 1/8 begins
        assertThat(bench.reveals()).containsExactly("band over frieze 0.500 level");
    }

    @Test
    void a_mark_on_the_face_that_is_no_corner_does_not_end_a_reveal() {
        Bench bench = Bench.loose(
                "name: low, section: [out 1 as one, out 1 as two, up 1], flip: over, back: wall, bottom: datum",
                "name: high, profile: board 1/2 x 2, back: wall, bottom: low.top");
        assertThat(bench.reveals()).containsExactly("low over high 1.500 level");
    }

    @Test
    void a_neighbor_ends_a_reveal() {
        Bench bench = Bench.loose(
                "name: shelf, profile: board 1 x 6, lay: flat, back: wall, bottom: datum",
                "name: one, profile: board 1 x 1, back: wall, bottom: shelf.top",
                "name: two, profile: board 1 x 2, back: 3, bottom: shelf.top");
        assertThat(bench.section().reveals())
                .filteredOn(reveal -> bench.name(reveal.over()).equals("two"))
                .extracting(reveal -> Bench.three(reveal.amount()))
                .contains("2.000");
    }

    @Test
    void framing_wall_and_floor_give_no_reveals() {
        Bench bench = Bench.in(
                "{ floor: 0 }",
                "name: base, profile: board 1 x 2, back: wall, bottom: floor",
                "name: stud, kind: framing, section: [out 1, up 1], back: base.face, bottom: floor");
        assertThat(bench.reveals()).isEmpty();
    }

    @Test
    void a_point_of_contact_is_no_joint_to_run_on_from() {
        assertThat(Bench.loose(LOW, "name: high, profile: board 1 x 2, back: low.face, bottom: low.top")
                        .reveals())
                .isEmpty();
    }

    @Test
    void a_round_seated_in_a_hollow_has_no_straight_line_to_run_on() {
        Bench bench = Bench.loose(
                "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: wall, bottom: datum",
                "name: rod, section: [out 1, ovolo in 1], flip: ends, face: 1-1/4, bottom: datum");
        assertThat(bench.reveals()).isEmpty();
    }

    @Test
    void the_step_is_the_projection_of_the_later_less_that_of_the_one_before() {
        Bench bench = Bench.loose(LOW, "name: high, profile: board 2-1/2 x 2, back: wall, bottom: low.top");
        assertThat(bench.section().reveals().get(0).step()).isCloseTo(1.5, within(1e-9));
        assertThat(bench.section().members().get(2).step()).hasValueCloseTo(1.5, within(1e-9));
    }
}
