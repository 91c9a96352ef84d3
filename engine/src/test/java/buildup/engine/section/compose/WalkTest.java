package buildup.engine.section.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.profiles.outline.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where the room-side walk begins, what it goes over and where it ends. Lengths are those of the boards in each test. */
class WalkTest {
    private static final String BOARD = "name: board, profile: board 3/4 x 4";

    @Test
    void on_a_solid_wall_it_runs_from_wall_to_wall() {
        assertThat(Bench.onWall(BOARD + ", back: wall, bottom: datum").walk())
                .containsExactly("board bottom 0.750", "board face 4.000", "board top 0.750");
    }

    @Test
    void without_a_wall_it_runs_from_the_wall_side_end_of_the_lowest_level_to_that_of_the_highest() {
        assertThat(Bench.loose(BOARD + ", back: wall, bottom: datum").walk())
                .containsExactly("board bottom 0.750", "board face 4.000", "board top 0.750");
    }

    @Test
    void off_the_wall_the_back_is_no_part_of_it() {
        assertThat(Bench.onWall(BOARD + ", back: 2, bottom: datum").walk())
                .containsExactly("board bottom 0.750", "board face 4.000", "board top 0.750");
    }

    @Test
    void on_the_floor_it_begins_where_the_floor_is_left() {
        assertThat(Bench.in("{ floor: -84 }", BOARD + ", back: wall, bottom: floor")
                        .walk())
                .containsExactly("board face 4.000", "board top 0.750");
        assertThat(Bench.in("{ floor: -84, wall: { solid: no } }", BOARD + ", back: wall, bottom: floor")
                        .walk())
                .containsExactly("board face 4.000", "board top 0.750");
    }

    @Test
    void the_ceiling_ends_it() {
        assertThat(Bench.in("{ ceiling: 12 }", BOARD + ", back: wall, top: ceiling")
                        .walk())
                .containsExactly("board bottom 0.750", "board face 4.000");
        assertThat(Bench.in("{ ceiling: 12, wall: { solid: no } }", BOARD + ", back: wall, top: ceiling")
                        .walk())
                .containsExactly("board bottom 0.750", "board face 4.000");
    }

    @Test
    void it_begins_where_framing_below_is_left() {
        Bench bench = Bench.loose(
                "name: case, kind: framing, section: [out 10, up 20], face: 4, top: 0",
                BOARD + ", back: 2, bottom: case.top");
        assertThat(bench.walk()).containsExactly("board face 4.000", "board top 0.750");
    }

    @Test
    void a_lip_lower_than_where_the_wall_is_left_does_not_make_it_begin_later() {
        Bench bench = Bench.onWall(
                "name: soffit, profile: board 3/4 x 4, lay: flat, back: wall, bottom: 2",
                "name: fascia, profile: board 3/4 x 3, back: soffit.face, bottom: soffit.bottom - 1");
        assertThat(bench.walk())
                .containsExactly(
                        "soffit bottom 4.000",
                        "fascia back 1.000",
                        "fascia bottom 0.750",
                        "fascia face 3.000",
                        "fascia top 0.750");
    }

    @Test
    void separate_parts_are_walked_one_by_one_the_lowest_first() {
        Bench bench = Bench.onWall(
                "name: rail, profile: board 3/4 x 2, back: wall, bottom: 40",
                "name: base, profile: board 1 x 5, back: wall, bottom: datum");
        assertThat(bench.section().parts()).isEqualTo(2);
        assertThat(bench.walk())
                .containsExactly(
                        "base bottom 1.000",
                        "base face 5.000",
                        "base top 1.000",
                        "rail bottom 0.750",
                        "rail face 2.000",
                        "rail top 0.750");
        assertThat(bench.section().members()).extracting(Member::part).containsExactly(0, 0, 0, 1, 1, 1);
        assertThat(bench.section().members()).allMatch(member -> member.step().isEmpty());
    }

    @Test
    void pieces_that_meet_at_a_corner_are_separate_parts() {
        Bench bench = Bench.loose(
                "name: low, profile: board 1 x 1, back: wall, bottom: datum",
                "name: high, profile: board 1 x 1, back: low.face, bottom: low.top");
        assertThat(bench.section().parts()).isEqualTo(2);
        assertThat(bench.walk()).hasSize(6);
    }

    @Test
    void over_two_posts_it_begins_where_the_one_nearer_the_wall_is_left() {
        String near = "name: near, kind: framing, section: [out 1, up 20], back: 0, top: 0";
        String far = "name: far, kind: framing, section: [out 1, up 20], back: 4, top: 0";
        String shelf = "name: shelf, profile: board 3/4 x 6, lay: flat, back: 0, bottom: 0";
        for (Bench bench : java.util.List.of(Bench.loose(near, far, shelf), Bench.loose(far, near, shelf))) {
            assertThat(bench.walk())
                    .containsExactly("shelf bottom 3.000", "shelf bottom 1.000", "shelf face 0.750", "shelf top 6.000");
        }
    }

    @Test
    void framing_that_ends_level_with_the_stack_is_met_on_the_way_and_does_not_begin_it() {
        Bench bench = Bench.loose(
                "name: board, profile: board 1 x 4, back: wall, bottom: datum",
                "name: bar, kind: framing, section: [out 1, up 1], back: board.face, bottom: datum");
        assertThat(bench.walk()).containsExactly("board bottom 1.000", "board face 3.000", "board top 1.000");
    }

    @Test
    void framing_met_on_the_way_is_walked_over_and_gives_no_row() {
        Bench bench = Bench.loose(
                "name: frieze, profile: board 3/4 x 4, back: wall, bottom: datum",
                "name: bar, kind: framing, section: [out 1, up 1], back: frieze.face, bottom: 1",
                "name: cap, profile: board 3/4 x 3, lay: flat, back: wall, bottom: frieze.top");
        assertThat(bench.walk())
                .containsExactly(
                        "frieze bottom 0.750",
                        "frieze face 1.000",
                        "frieze face 2.000",
                        "cap bottom 2.250",
                        "cap face 0.750",
                        "cap top 3.000");
        assertThat(bench.section().members().get(2).step())
                .as("still the same piece")
                .isEmpty();
    }

    @Test
    void a_round_top_is_walked_to_its_highest_point() {
        // half a disc of radius 1 with its round up, on a foot 1 high
        Bench bench = Bench.loose("name: rail, section: [out 1, bead up 2], turn: 90, back: wall, bottom: datum");
        assertThat(bench.walk()).as("bottom, the face, half of the round").hasSize(3);
        Member round = bench.section().members().get(2);
        assertThat(round.length()).isCloseTo(Math.PI / 2, within(1e-6));
        assertThat(round.to().near(new Point(1, 2), 1e-6)).isTrue();
    }

    @Test
    void overhead_framing_that_does_not_reach_below_is_not_where_the_walk_begins() {
        Bench bench = Bench.loose(
                "name: cabinet, kind: framing, section: [out 10, up 8], face: wall, bottom: 2",
                BOARD + ", back: wall, bottom: datum");
        assertThat(bench.walk()).containsExactly("board bottom 0.750", "board face 4.000", "board top 0.750");
    }

    @Test
    void it_ends_at_the_wall_side_end_of_the_highest_level_though_framing_covers_a_part_of_that_level() {
        Bench bench = Bench.loose(
                "name: shelf, profile: board 1 x 6, lay: flat, back: wall, bottom: datum",
                "name: post, kind: framing, section: [out 1, up 3], back: 0, bottom: shelf.top",
                "name: end, profile: board 1 x 1, face: wall, top: shelf.top");
        assertThat(bench.walk())
                .as("the end piece's top lies behind the post")
                .endsWith("shelf face 1.000", "shelf top 5.000", "end top 1.000");
        Bench covered = Bench.loose(
                "name: shelf, profile: board 1 x 6, lay: flat, back: wall, bottom: datum",
                "name: post, kind: framing, section: [out 2, up 3], back: 0, bottom: shelf.top");
        assertThat(covered.walk()).endsWith("shelf face 1.000", "shelf top 4.000");
    }

    @Test
    void a_member_is_cut_where_the_piece_or_the_name_changes_and_nowhere_else() {
        Bench bench =
                Bench.onWall("name: step, section: [out 1 as foot, out 1 as foot, up 1, in 1/2, up 1], back: wall,"
                        + " bottom: datum");
        assertThat(bench.walk())
                .containsExactly(
                        "step foot 2.000", "step up 1.000", "step in 0.500", "step up-2 1.000", "step top 1.500");
        assertThat(bench.section().members().get(0).segments()).hasSize(2);
    }

    @Test
    void members_of_an_outline_drawn_with_arcs_keep_their_true_length() {
        Bench bench = Bench.onWall("name: bed, profile: check-bed 1-1/4 x 1-3/8, back: wall, bottom: datum");
        assertThat(bench.section().members().get(1).length()).isCloseTo(Math.PI / 2, within(1e-9));
        assertThat(bench.section().members().get(1).box().face()).isEqualTo(1.25);
    }

    @Test
    void a_wall_that_ends_below_lets_the_walk_go_on_behind() {
        Bench bench = Bench.in("{ floor: -36, wall: { to: 2 } }", BOARD + ", back: wall, bottom: datum");
        assertThat(bench.walk()).containsExactly("board bottom 0.750", "board face 4.000", "board top 0.750");
        assertThat(bench.section().members().get(2).to()).isEqualTo(new Point(0, 4));
    }

    @Test
    void a_wall_that_only_begins_higher_does_not_carry_or_end_what_is_below() {
        Bench bench = Bench.in("{ wall: { from: 10 } }", BOARD + ", back: wall, bottom: datum");
        assertThat(bench.walk()).hasSize(3);
        assertThat(bench.contacts()).isEmpty();
    }

    @Test
    void a_piece_closed_in_on_all_sides_shows_nothing() {
        Bench bench = Bench.loose(
                "name: bottom, profile: board 1 x 3, lay: flat, back: wall, bottom: datum",
                "name: rear, profile: board 1 x 1, back: wall, bottom: 1",
                "name: core, kind: nailer, section: [out 1, up 1], back: 1, bottom: 1",
                "name: front, profile: board 1 x 1, back: 2, bottom: 1",
                "name: lid, profile: board 1 x 3, lay: flat, back: wall, bottom: 2");
        assertThat(bench.walk()).noneMatch(row -> row.startsWith("core"));
    }

    @Test
    void letters_run_on_after_z() {
        assertThat(List.of(Section.letter(0), Section.letter(25), Section.letter(26), Section.letter(701)))
                .containsExactly("A", "Z", "AA", "ZZ");
    }

    /** The ring leaves framing at both posts: it begins at the lower, though the other is nearer the wall. */
    @Test
    void of_two_posts_below_it_begins_at_the_one_that_is_left_lowest() {
        String near = "name: near, kind: framing, section: [out 1, up 5], back: 2, top: 1";
        String far = "name: far, kind: framing, section: [out 1, up 5], back: 8, top: 0";
        String leg = "name: leg, section: [out 1, up 1], back: 8, bottom: 0";
        String beam = "name: beam, section: [out 12, up 1], back: 0, bottom: 1";
        assertThat(Bench.loose(near, far, leg, beam).walk())
                .containsExactly("leg up 1.000", "beam out 3.000", "beam up 1.000", "beam top 12.000");
    }

    @Test
    void of_two_posts_of_one_height_it_begins_at_the_one_nearer_the_wall() {
        String near = "name: near, kind: framing, section: [out 1, up 5], back: 2, top: 1";
        String far = "name: far, kind: framing, section: [out 1, up 5], back: 8, top: 1";
        String beam = "name: beam, section: [out 12, up 1], back: 0, bottom: 1";
        assertThat(Bench.loose(near, far, beam).walk())
                .containsExactly("beam out 5.000", "beam out 3.000", "beam up 1.000", "beam top 12.000");
    }
}
