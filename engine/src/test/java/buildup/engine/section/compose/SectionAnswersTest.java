package buildup.engine.section.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.profiles.outline.Point;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a section answers about its own pieces, and what is said of a room that it does not fit, by hand. */
class SectionAnswersTest {
    private static final String LOW = "name: low, profile: board 1 x 2, back: 0, bottom: 0";
    private static final String HIGH = "name: high, profile: board 1-1/2 x 3, back: 0, bottom: low.top";
    private static final String CASE = "name: case, kind: framing, section: [out 1, up 9], back: -1, bottom: 0";

    private static Notice only(Bench bench, String code) {
        assertThat(bench.notices(code)).as(bench.codes().toString()).hasSize(1);
        return bench.notices(code).get(0);
    }

    @Test
    void each_step_has_the_box_of_all_that_is_up_framing_left_out() {
        Section section = Bench.loose(CASE, LOW, HIGH).section();
        assertThat(section.steps()).containsExactly(new Step(1, 2, 1, 2), new Step(2, 5, 1.5, 5));
    }

    @Test
    void a_body_is_found_by_its_name() {
        Section section = Bench.loose(LOW, HIGH).section();
        assertThat(section.number("high")).hasValue(1);
        assertThat(section.number("none")).isEmpty();
    }

    @Test
    void bodies_touch_where_they_share_a_stretch_and_not_at_a_corner() {
        Section section = Bench.loose(LOW, HIGH, "name: tip, profile: board 1 x 1, back: high.face, bottom: high.top")
                .section();
        assertThat(section.touches(0, Set.of(1))).isTrue();
        assertThat(section.touches(1, Set.of(0, 2))).isTrue();
        assertThat(section.touches(0, Set.of(2))).isFalse();
        assertThat(section.touches(0, Set.of(0))).isFalse();
        assertThat(section.touches(2, Set.of(0, 1))).as("a corner is no face").isFalse();
    }

    /** The face of the low board shows under the lip that is set back from it. */
    @Test
    void a_reveal_ends_at_a_corner_of_its_own_or_at_what_meets_it() {
        Section section = Bench.loose(LOW, HIGH).section();
        Reveal under = section.reveals().get(0);
        assertThat(under.amount()).isEqualTo(0.5, within(1e-9));
        assertThat(section.name(section.endOf(under))).isEqualTo("high");
        assertThat(section.hasCorner(1, new Point(1.5, 2))).isTrue();
        assertThat(section.hasCorner(1, new Point(1, 2))).isFalse();
        // a wide shelf shows its top as far as the strip that stands on it
        Bench shelf = Bench.loose(
                "name: shelf, profile: board 1 x 4, lay: flat, back: 0, bottom: 0",
                "name: back, profile: board 1 x 2, back: 0, bottom: shelf.top",
                "name: strip, profile: board 1/2 x 1/2, back: back.face + 5/8, bottom: shelf.top");
        Reveal between = shelf.section().reveals().stream()
                .filter(reveal -> shelf.name(reveal.over()).equals("back") && reveal.amount() > 0.5)
                .findFirst()
                .orElseThrow();
        assertThat(shelf.name(shelf.section().endOf(between))).isEqualTo("strip");
    }

    /** Common practice, no source: a set-back of more than 1 reads as a face. */
    @Test
    void what_is_set_back_is_compared_unless_it_is_flush_or_a_face_of_its_own() {
        for (double[] row : new double[][] {{0, 0, 0}, {0.5, 1, 0}, {1, 1, 0}, {1.25, 0, 1}}) {
            Reveal reveal = new Reveal(0, 1, row[0], Reveal.Along.LEVEL, new Point(0, 0), new Point(row[0], 0), 0);
            assertThat(reveal.compares()).as("" + row[0]).isEqualTo(row[1] > 0);
            assertThat(reveal.kind().word())
                    .as("" + row[0])
                    .isEqualTo(row[2] > 0 ? "exposed face" : row[1] > 0 ? "reveal" : "flush");
            assertThat(Reveal.isFace(row[0])).as("" + row[0]).isEqualTo(row[2] > 0);
        }
    }

    @Test
    void the_space_that_a_stack_is_too_tall_for_is_what_is_left_above_its_foot() {
        Notice tall = only(
                Bench.in(
                        "{ ceiling: 6, wall: { solid: no } }",
                        "name: low, profile: board 1 x 4, back: 0, bottom: 1",
                        "name: high, profile: board 1 x 3, back: 0, bottom: low.top"),
                "too-tall");
        assertThat(NoticeWords.INCHES.message(tall)).isEqualTo("The stack is 7 in a space of 5: over by 2.");
    }

    @Test
    void under_a_slope_the_piece_that_goes_through_farthest_is_named() {
        Notice tall = only(
                Bench.in(
                        "{ ceiling: { height: 4, slope: -6 in 12 }, wall: { solid: no } }",
                        LOW,
                        "name: far, profile: board 3/4 x 3, lay: flat, back: 1, bottom: low.top",
                        "name: near, profile: board 1 x 1-3/4, back: 0, bottom: low.top"),
                "too-tall");
        // at 4 out the ceiling is at 2, far reaches 2-3/4; at 1 out it is at 3-1/2, near reaches 3-3/4
        assertThat(tall.piece()).contains("far");
        assertThat(tall.amount().orElseThrow().amount()).isEqualTo(0.75, within(1e-9));
    }

    @Test
    void a_stack_that_stands_on_the_ceiling_or_hangs_below_the_floor_is_outside_the_room() {
        Notice above = only(
                Bench.in("{ ceiling: 8, wall: { solid: no } }", LOW.replace("bottom: 0", "bottom: 8")),
                "outside-the-room");
        assertThat(above.amount().orElseThrow().amount()).isEqualTo(2, within(1e-9));
        Notice below = only(
                Bench.in("{ floor: 3, wall: { solid: no } }", LOW.replace("bottom: 0", "bottom: 1")),
                "outside-the-room");
        assertThat(below.amount().orElseThrow().amount()).isEqualTo(2, within(1e-9));
        assertThat(Bench.in("{ ceiling: 8, wall: { solid: no } }", LOW.replace("bottom: 0", "bottom: 7-7/8"))
                        .codes())
                .doesNotContain("outside-the-room");
        assertThat(Bench.in("{ floor: 2, wall: { solid: no } }", LOW.replace("bottom: 0", "bottom: 1/8"))
                        .codes())
                .doesNotContain("outside-the-room");
    }

    /** Rising 6 in 12, the ceiling is 4 high at the wall and 4-1/2 where a board of 1 ends. */
    @Test
    void a_sloped_ceiling_is_passed_where_it_is_highest_over_the_stack() {
        String space = "{ ceiling: { height: 4, slope: 6 in 12 }, wall: { solid: no } }";
        assertThat(Bench.in(space, LOW.replace("bottom: 0", "bottom: 4-1/2")).codes())
                .contains("outside-the-room");
        assertThat(Bench.in(space, LOW.replace("bottom: 0", "bottom: 4-7/16")).codes())
                .doesNotContain("outside-the-room");
        String falls = "{ ceiling: { height: 4, slope: -6 in 12 }, wall: { solid: no } }";
        assertThat(Bench.in(falls, LOW.replace("back: 0, bottom: 0", "back: 2, bottom: 3"))
                        .codes())
                .contains("outside-the-room");
        assertThat(Bench.in(falls, LOW.replace("back: 0, bottom: 0", "back: 2, bottom: 2-15/16"))
                        .codes())
                .doesNotContain("outside-the-room");
    }

    @Test
    void a_floor_without_its_sign_is_asked_about_where_the_stack_would_stand_on_it() {
        Bench bench = Bench.in("{ floor: 84, wall: { solid: no } }", LOW.replace("bottom: 0", "bottom: -84"));
        assertThat(NoticeWords.INCHES.cure(only(bench, "outside-the-room"))).contains("-84 meant?");
        Bench lower = Bench.in("{ floor: 84, wall: { solid: no } }", LOW.replace("bottom: 0", "bottom: -85"));
        assertThat(NoticeWords.INCHES.cure(only(lower, "outside-the-room"))).doesNotContain("meant");
    }

    @Test
    void a_piece_bears_from_its_back_to_its_face_whichever_way_its_outline_runs() {
        for (String shelf : List.of("lay: flat", "lay: flat, flip: ends", "lay: flat, flip: over")) {
            Standing.Bearing bearing = Bench.onWall(
                            "name: case, kind: framing, section: [out 3, up 4], back: wall, bottom: 0",
                            "name: shelf, profile: board 3/4 x 2, " + shelf + ", back: 1/2, bottom: case.top")
                    .standing("shelf")
                    .bearing()
                    .get(0);
            assertThat(bearing.from().x()).isEqualTo(0.5, within(1e-9));
            assertThat(bearing.to().x()).isEqualTo(2.5, within(1e-9));
        }
    }

    @Test
    void what_is_said_to_be_fixed_is_no_matter_of_trust() {
        String board = "name: low, profile: board 1 x 2, back: wall, bottom: 0";
        assertThat(Bench.onWall(board).codes()).contains("counts-as-fixed");
        Bench said = Bench.onWall(board + ", fixed: wall");
        assertThat(said.codes()).doesNotContain("counts-as-fixed");
        assertThat(said.standing("low").fixed()).isTrue();
        assertThat(Optional.of(said.standing("low").counted())).contains(false);
    }

    /** With fastenings given, they decide: not that a back lies flat on the wall. */
    @Test
    void a_piece_for_which_fastenings_are_given_is_fixed_where_they_hold_it_and_not_elsewhere() {
        Section section = Bench.onWall("name: low, profile: board 1 x 2, back: wall, bottom: 0")
                .section();
        for (boolean held : new boolean[] {true, false}) {
            Set<Integer> pieces = held ? Set.of(0) : Set.of();
            Standing low = section.heldBy(new Fastened(Set.of(0), pieces, pieces), new Notices())
                    .standing()
                    .get(0);
            assertThat(low.fixed()).isEqualTo(held);
            assertThat(low.grounded()).isEqualTo(held);
            assertThat(low.counted()).isFalse();
        }
    }

    @Test
    void a_reveal_runs_away_from_its_joint_and_a_flush_one_the_way_it_would() {
        Point joint = new Point(1, 2);
        assertThat(new Reveal(0, 1, 0.5, Reveal.Along.LEVEL, joint, new Point(0.5, 2), 0).way())
                .isEqualTo(new Point(-1, 0));
        assertThat(new Reveal(0, 1, 0, Reveal.Along.LEVEL, joint, joint, 0).way())
                .isEqualTo(new Point(1, 0));
        assertThat(new Reveal(0, 1, 0, Reveal.Along.UPRIGHT, joint, joint, 0).way())
                .isEqualTo(new Point(0, 1));
    }

    @Test
    void the_projection_of_a_member_is_its_greatest() {
        Section section = Bench.onWall("name: bed, profile: check-bed 1-1/4 x 1-3/8, back: wall, bottom: 0")
                .section();
        assertThat(section.members().stream().map(Member::projection).map(Bench::three))
                .containsExactly("0.250", "1.250", "1.250", "1.250");
    }

    /** Of what fastenings pin nothing is said, and what stands on it hangs on nothing that only hangs. */
    @Test
    void what_is_pinned_is_not_said_to_hang_nor_what_stands_on_it_to_stand_on_what_hangs() {
        Section section = Bench.loose(LOW, HIGH).section();
        assertThat(said(section, Set.of())).contains("support-that-only-hangs");
        assertThat(said(section, Set.of(0)))
                .doesNotContain("support-that-only-hangs")
                .contains("hangs-on-its-fastenings");
        assertThat(said(section, Set.of(0, 1))).isEmpty();
    }

    private static List<String> said(Section section, Set<Integer> pinned) {
        Notices notices = new Notices();
        section.heldBy(new Fastened(pinned, Set.of(), pinned), notices);
        return notices.sorted().stream().map(Notice::code).toList();
    }
}
