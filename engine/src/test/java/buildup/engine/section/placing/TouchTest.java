package buildup.engine.section.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Pieces that move until they meet something. */
class TouchTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private static final String SHELF = "name: shelf, profile: board 3/4 x 5, lay: flat, back: wall, bottom: 2";

    private static void refused(Bench bench, String message, String cure) {
        assertThat(bench.refusals()).anySatisfy(notice -> {
            assertThat(NoticeWords.INCHES.message(notice)).isEqualTo(message);
            assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo(cure);
        });
    }

    @Test
    void bottom_touch_comes_down_from_above_onto_what_is_there() {
        Bench bench = Bench.loose(SHELF, "name: bead, profile: board 1/2 x 1/2, back: 1, bottom: touch");
        assertThat(bench.box("bead").bottom()).isCloseTo(2.75, EXACT);
    }

    @Test
    void top_touch_comes_up_from_below() {
        Bench bench = Bench.loose(SHELF, "name: bead, profile: board 1/2 x 1/2, back: 1, top: touch");
        assertThat(bench.box("bead").top()).isCloseTo(2, EXACT);
    }

    @Test
    void back_touch_comes_in_from_the_room() {
        Bench bench = Bench.loose(SHELF, "name: bead, profile: board 1/2 x 1/2, bottom: 2-1/4, back: touch");
        assertThat(bench.box("bead").back()).isCloseTo(5, EXACT);
    }

    @Test
    void floor_ceiling_and_solid_wall_stop_a_piece() {
        String room = "{ floor: -84, ceiling: 12 }";
        String board = "profile: board 3/4 x 3";
        assertThat(Bench.in(room, "name: base, " + board + ", back: wall, bottom: touch")
                        .box("base")
                        .bottom())
                .isCloseTo(-84, EXACT);
        assertThat(Bench.in(room, "name: base, " + board + ", back: wall, top: touch")
                        .box("base")
                        .top())
                .isCloseTo(12, EXACT);
        assertThat(Bench.in(room, "name: base, " + board + ", back: touch, bottom: floor")
                        .box("base")
                        .back())
                .isCloseTo(0, EXACT);
    }

    @Test
    void a_piece_that_reaches_into_the_wall_is_not_stopped_by_the_far_end_of_the_room() {
        String room = "{ floor: -84, ceiling: 12 }";
        String board = "name: shelf, profile: board 3/4 x 5, lay: flat, back: -1";
        assertThat(Bench.in(room, board + ", bottom: touch").box("shelf").bottom())
                .isCloseTo(-84, EXACT);
        assertThat(Bench.in(room, board + ", top: touch").box("shelf").top()).isCloseTo(12, EXACT);
        String tall = "name: post, profile: board 3/4 x 5, bottom: 10, back: touch";
        assertThat(Bench.in(room, tall).box("post").back()).isCloseTo(0, EXACT);
    }

    @Test
    void a_cap_comes_down_on_the_top_of_a_wall_that_ends() {
        Bench bench = Bench.in(
                "{ floor: -36, wall: { to: 4 } }",
                "name: cap, profile: board 3/4 x 5, lay: flat, back: -4, bottom: touch");
        assertThat(bench.box("cap").bottom()).isCloseTo(4, EXACT);
    }

    @Test
    void later_pieces_are_not_yet_there_but_framing_always_is() {
        Bench bench = Bench.loose(
                "name: bead, profile: board 1/2 x 1/2, back: 1, bottom: touch",
                "name: shelf, profile: board 3/4 x 5, lay: flat, back: wall, bottom: 6",
                "name: case, kind: framing, section: [out 4, up 10], back: wall, top: 3");
        assertThat(bench.box("bead").bottom()).isCloseTo(3, EXACT);
    }

    @Test
    void a_round_comes_to_rest_where_it_first_meets_a_hollow() {
        Bench bench = Bench.loose(
                "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: wall, flip: over, bottom: datum",
                "name: rod, section: [ovolo 1/4, ovolo in 1/4], flip: ends, face: 1, bottom: touch");
        // the hollow, center (1.25, 1.375), radius 1, faces up; a round of 1/4 in it lies 3/4 off that center
        double centerX = bench.box("rod").face();
        double centerY = bench.box("rod").bottom() + 0.25;
        assertThat(Math.hypot(1.25 - centerX, 1.375 - centerY)).isCloseTo(0.75, within(1e-6));
    }

    @Test
    void a_neighbor_that_overlaps_the_path_by_less_than_touching_does_not_stop_it() {
        Bench bench = Bench.loose(
                "name: post, profile: board 3/4 x 8, back: wall, bottom: datum",
                "name: shelf, profile: board 3/4 x 5, lay: flat, back: post.face, bottom: datum",
                "name: flush, profile: board 1/2 x 1, back: post.face, bottom: touch",
                "name: tight, profile: board 1/2 x 1, back: post.face - 0.003, bottom: touch");
        assertThat(bench.box("flush").bottom()).isCloseTo(0.75, EXACT);
        assertThat(bench.box("tight").bottom()).as("on flush, past the post").isCloseTo(1.75, EXACT);
    }

    @Test
    void the_other_axis_is_placed_first_wherever_it_leads() {
        Bench bench = Bench.loose(
                SHELF,
                "name: bead, profile: board 1/2 x 1/2, back: cap.face, bottom: touch",
                "name: cap, profile: board 1/2 x 1, back: wall, bottom: shelf.top");
        assertThat(bench.box("bead").back()).isCloseTo(0.5, EXACT);
        assertThat(bench.box("bead").bottom()).isCloseTo(2.75, EXACT);
    }

    @Test
    void a_board_ripped_across_the_path_travels_at_its_ripped_width() {
        Bench bench = Bench.loose(
                "name: low, profile: board 3/4 x 1, back: wall, bottom: datum",
                "name: high, profile: board 3/4 x 4, back: 3, bottom: datum",
                "name: cap, profile: board 3/4 x 5, lay: flat, back: wall, face: 2, bottom: touch");
        assertThat(bench.box("cap").bottom()).isCloseTo(1, EXACT);
    }

    @Test
    void meeting_nothing_is_refused() {
        refused(
                Bench.refused(SHELF, "name: bead, profile: board 1/2 x 1/2, back: 20, bottom: touch"),
                "'bead' meets nothing on its way.",
                "Give 'bottom:' a place.");
        refused(
                Bench.refused("name: bead, profile: board 1/2 x 1/2, back: 20, top: touch"),
                "'bead' meets nothing on its way.",
                "Give 'top:' a place.");
    }

    @Test
    void a_face_touches_nothing() {
        refused(
                Bench.refused(SHELF, "name: bead, profile: board 1/2 x 1/2, face: touch, bottom: 2"),
                "A face touches nothing: pieces come in from the room.",
                "Write 'back: touch'.");
    }

    @Test
    void two_touches_on_a_piece_are_refused() {
        refused(
                Bench.refused(SHELF, "name: bead, profile: board 1/2 x 1/2, back: touch, bottom: touch"),
                "'bead' has two touches: it would never stop in the same place.",
                "Give one of them a place.");
    }

    @Test
    void a_member_of_its_own_cannot_touch_and_neither_can_a_board_be_ripped_to_touch() {
        refused(
                Bench.refused(SHELF, "name: bead, profile: board 1/2 x 1/2, back: 1, at: { bottom: touch }"),
                "'bead' touches by back, bottom or top alone.",
                "Give a place here, as 'frieze.top'.");
        Bench both = Bench.refused(SHELF, "name: bead, profile: board 1/2 x 1/2, back: 1, bottom: 3, top: touch");
        assertThat(both.refusals()).extracting(notice -> notice.code()).isEqualTo(List.of("doubled-rule"));
    }
}
