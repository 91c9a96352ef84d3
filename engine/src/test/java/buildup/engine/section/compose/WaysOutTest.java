package buildup.engine.section.compose;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Bench;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Cure;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The ways out that are told for a section, in their order, and what each changes in the document; worked by hand from the
 * sizes. Which of them still holds when all questions are asked again is tried elsewhere.
 */
class WaysOutTest {
    private static final String FRIEZE = "name: frieze, profile: board 3/4 x 5-1/2, back: 0, bottom: 0";
    private static final String CASE = "name: case, kind: framing, section: [out 3, up 4], back: 0, bottom: 0";
    private static final String SILL = "name: sill, profile: board 3/4 x 4, lay: flat, back: 0, bottom: 0";

    /** Without a wall. */
    private static Bench in(String space, String... pieces) {
        return Bench.in("{ " + space + "wall: { solid: no } }", pieces);
    }

    /** Each way out of the only problem of that kind, with the changes of the document that go it. */
    private static List<String> ways(Bench bench, String code) {
        List<Notice> notices = bench.notices(code);
        assertThat(notices).as(bench.codes().toString()).hasSize(1);
        return notices.get(0).cures().stream()
                .map(cure -> told(notices.get(0), cure))
                .toList();
    }

    private static String told(Notice notice, Cure cure) {
        return NoticeWords.INCHES.cure(notice.cure(cure))
                + cure.changes().stream()
                        .map(change -> change.place().replace("pieces.", "") + " = " + change.typed(LengthUnit.INCH))
                        .collect(Collectors.joining(", ", " (", ")"));
    }

    private static String words(Bench bench, String code) {
        return NoticeWords.INCHES.cure(bench.notices(code).get(0));
    }

    @Test
    void a_board_between_two_rules_is_ripped_and_any_other_bought_narrower_the_tallest_first() {
        // 7 high under 5-1/2
        assertThat(ways(
                        in(
                                "ceiling: 5-1/2, ",
                                "name: f, profile: board 3/4 x 8, back: 0, bottom: 0, top: 5",
                                "name: g, profile: board 3/4 x 2, back: 0, bottom: f.top"),
                        "too-tall"))
                .containsExactly(
                        "Rip 1-1/2 off the top of 'f'. (f.top = 5 - 1-1/2)",
                        "Lower the stack by 1-1/2. (f.bottom = 0 - 1-1/2, f.top = 5 - 1-1/2)");
        // 8-1/2 high under 8
        assertThat(ways(
                        in(
                                "ceiling: 8, ",
                                "name: low, profile: board 3/4 x 3, back: 0, bottom: 0",
                                "name: high, profile: board 3/4 x 5-1/2, back: 0, bottom: low.top"),
                        "too-tall"))
                .containsExactly(
                        "'high' could be 5. (high.profile = board 3/4 x 5)",
                        "'low' could be 2-1/2. (low.profile = board 3/4 x 2-1/2)",
                        "Lower the stack by 1/2. (low.bottom = 0 - 1/2)");
    }

    @Test
    void of_two_that_stand_beside_each_other_neither_alone_makes_the_stack_lower() {
        assertThat(ways(
                        in(
                                "ceiling: 5, ",
                                "name: one, profile: board 3/4 x 5-1/2, back: 0, bottom: 0",
                                "name: other, profile: board 3/4 x 5-1/2, back: one.face, bottom: one.bottom"),
                        "too-tall"))
                .containsExactly("Lower the stack by 1/2. (one.bottom = 0 - 1/2)");
    }

    @Test
    void no_board_is_cut_to_less_than_an_inch_nor_one_that_lies_made_lower() {
        // 3-3/4 high under 2: of 2-1/2, 3/4 would be left
        assertThat(ways(
                        in(
                                "ceiling: 2, ",
                                "name: low, profile: board 3/4 x 2-1/2, back: 0, bottom: 0",
                                "name: up, profile: board 3/4 x 1-1/4, back: 0, bottom: low.top"),
                        "too-tall"))
                .containsExactly("Lower the stack by 1-3/4. (low.bottom = 0 - 1-3/4)");
        assertThat(ways(
                        in(
                                "ceiling: 2, ",
                                SILL,
                                "name: t, profile: board 1-1/2 x 3, lay: flat, back: 0, bottom: sill.top"),
                        "too-tall"))
                .containsExactly("Lower the stack by 1/4. (sill.bottom = 0 - 1/4)");
    }

    @Test
    void a_board_whose_edge_is_ripped_already_is_not_told_to_be_bought_narrower() {
        assertThat(ways(
                        in(
                                "ceiling: 5, ",
                                "name: f, profile: board 3/4 x 5-1/2, rip: { top: 1/4 }, back: 0, bottom: 0"),
                        "too-tall"))
                .containsExactly("Lower the stack by 1/4. (f.bottom = 0 - 1/4)");
    }

    /** What stands already stays; what is placed on it goes down by its own rule, and what is placed on that goes along. */
    @Test
    void a_stack_on_framing_is_lowered_by_the_rule_that_leaves_the_framing() {
        // 5 + 1-3/8 + 1-3/8 = 7-3/4 under 7
        assertThat(ways(
                        in(
                                "ceiling: 7, ",
                                CASE,
                                "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: 0, bottom: case.top + 1",
                                "name: next, profile: check-bed 1-1/4 x 1-3/8, back: 0, bottom: bed.top"),
                        "too-tall"))
                .containsExactly("Lower the stack by 3/4. (bed.bottom = case.top + 1 - 3/4)");
    }

    @Test
    void what_would_go_into_the_framing_is_not_told() {
        Bench bench =
                in("ceiling: 5, ", CASE, "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: 0, bottom: case.top");
        assertThat(bench.notices("too-tall").get(0).cures().stream().flatMap(cure -> cure.changes().stream()))
                .isEmpty();
        assertThat(words(bench, "too-tall")).isEqualTo("Take 3/8 out of its height.");
        assertThat(words(bench, "overlap")).isEqualTo("Make it smaller, or make room for it.");
    }

    @Test
    void a_piece_is_lowered_by_the_member_that_places_it() {
        // its shoulder lies 3/8 above its bottom: 2 - 3/8 + 2 = 3-5/8
        assertThat(ways(
                        in(
                                "ceiling: 3, ",
                                "name: band, profile: check-backband 1-1/4 x 2, back: 0, at: { shoulder: 2 }"),
                        "too-tall"))
                .containsExactly("Lower the stack by 5/8. (band.at.shoulder = 2 - 5/8)");
    }

    @Test
    void what_goes_where_it_touches_is_not_moved_by_a_rule() {
        Bench bench = in("ceiling: 5, ", CASE, "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: 0, bottom: touch");
        assertThat(words(bench, "too-tall")).isEqualTo("Take 3/8 out of its height.");
    }

    @Test
    void what_stands_out_too_far_is_ripped_bought_narrower_or_brought_back() {
        assertThat(ways(
                        in(
                                "projection: 3, ",
                                FRIEZE,
                                "name: cap, profile: board 3/4 x 5, lay: flat, back: 0, face: 4, bottom: frieze.top"),
                        "projects-too-far"))
                .containsExactly(
                        "Rip 1 off the face of 'cap'. (cap.face = 4 - 1)",
                        "Bring the stack back 1. (frieze.back = 0 - 1, cap.back = 0 - 1, cap.face = 4 - 1)");
        assertThat(ways(
                        in(
                                "projection: 3, ",
                                FRIEZE,
                                "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: 2, bottom: frieze.top - 1"),
                        "projects-too-far"))
                .containsExactly(
                        "Bring 'bed' back 1/4. (bed.back = 2 - 1/4)",
                        "Bring the stack back 1/4. (frieze.back = 0 - 1/4, bed.back = 2 - 1/4)");
        // of 1-1/2, 1 would not be left
        assertThat(ways(
                        in(
                                "projection: 7/8, ",
                                "name: f, profile: board 1/2 x 5, back: 0, bottom: 0",
                                "name: cap, profile: board 3/4 x 1-1/2, lay: flat, back: 0, bottom: f.top"),
                        "projects-too-far"))
                .containsExactly(
                        "Bring 'cap' back 5/8. (cap.back = 0 - 5/8)",
                        "Bring the stack back 5/8. (f.back = 0 - 5/8, cap.back = 0 - 5/8)");
    }

    @Test
    void two_that_stand_out_too_far_are_both_cut_the_farther_first() {
        assertThat(ways(
                        in(
                                "projection: 3, ",
                                FRIEZE,
                                "name: low, profile: board 3/4 x 3-1/2, lay: flat, back: 0, bottom: frieze.top",
                                "name: cap, profile: board 3/4 x 4, lay: flat, back: 0, bottom: low.top"),
                        "projects-too-far"))
                .containsExactly(
                        "'cap' could be 3 wide. 'low' could be 3 wide. "
                                + "(cap.profile = board 3/4 x 3, low.profile = board 3/4 x 3)",
                        "Bring the stack back 1. (frieze.back = 0 - 1, low.back = 0 - 1, cap.back = 0 - 1)");
    }

    @Test
    void the_stack_is_not_brought_back_into_what_stands_there() {
        assertThat(ways(
                        in(
                                "projection: 3, ",
                                "name: post, kind: framing, section: [out 1/2, up 3/4], back: -1, bottom: frieze.top",
                                FRIEZE,
                                "name: cap, profile: board 3/4 x 4-1/2, lay: flat, back: -1/2, bottom: frieze.top"),
                        "projects-too-far"))
                .containsExactly("'cap' could be 3-1/2 wide. (cap.profile = board 3/4 x 3-1/2)");
    }

    @Test
    void out_of_an_overlap_the_least_way_comes_first_whichever_piece_goes_it() {
        assertThat(ways(
                        in("", FRIEZE, "name: bed, profile: board 1 x 2, back: frieze.face - 1/8, bottom: 1"),
                        "overlap"))
                .containsExactly(
                        "Rabbet it, or move it out 1/8. (bed.back = frieze.face - 1/8 + 1/8)",
                        "Rabbet it, or move it back 1-5/8. (bed.back = frieze.face - 1/8 - 1-5/8)",
                        "Rabbet it, or move it down 3. (bed.bottom = 1 - 3)");
        assertThat(ways(
                        in(
                                "",
                                SILL,
                                "name: bed, profile: board 1 x 2, back: 1, bottom: touch",
                                "name: f, profile: board 3/4 x 3, back: 1-7/8, bottom: sill.top"),
                        "overlap"))
                .containsExactly(
                        "Rabbet it, or move it out 1/8. (f.back = 1-7/8 + 1/8)",
                        "Rabbet it, or move 'bed' back 1/8. (bed.back = 1 - 1/8)",
                        "Rabbet it, or move it back 1-5/8. (f.back = 1-7/8 - 1-5/8)");
    }

    @Test
    void a_board_between_two_rules_is_ripped_out_of_an_overlap() {
        String shelf = "name: shelf, profile: board 3/4 x 6, lay: flat, back: 1/2, face: 4, bottom: 2";
        assertThat(ways(in("", FRIEZE, shelf), "overlap"))
                .startsWith(
                        "Rabbet it, or rip 1/4 off its back. (shelf.back = 1/2 + 1/4)",
                        "Rabbet it, or move 'frieze' back 1/4. (frieze.back = 0 - 1/4)");
        assertThat(ways(in("", shelf, FRIEZE), "overlap"))
                .startsWith(
                        "Rabbet it, or move it back 1/4. (frieze.back = 0 - 1/4)",
                        "Rabbet it, or rip 1/4 off the back of 'shelf'. (shelf.back = 1/2 + 1/4)");
        assertThat(ways(
                        in(
                                "",
                                "name: f, profile: board 3/4 x 8, back: 0, bottom: 0, top: 7",
                                "name: cap, profile: board 3/4 x 3, lay: flat, back: 0, bottom: 6-3/4"),
                        "overlap"))
                .containsExactly(
                        "Rabbet it, or move it up 1/4. (cap.bottom = 6-3/4 + 1/4)",
                        "Rabbet it, or rip 1/4 off the top of 'f'. (f.top = 7 - 1/4)",
                        "Rabbet it, or move it out 3/4. (cap.back = 0 + 3/4)");
    }

    /** The least way would stand out of the room, or leave the piece on top with nothing to touch: it comes behind the others. */
    @Test
    void a_way_that_makes_something_else_worse_comes_behind_those_that_do_not() {
        String bed = "name: bed, profile: board 1 x 2, back: 5/8, bottom: 1";
        assertThat(ways(in("projection: 1-5/8, ", FRIEZE, bed), "overlap"))
                .containsExactly(
                        "Rabbet it, or move 'frieze' back 1/8. (frieze.back = 0 - 1/8)",
                        "Rabbet it, or move it back 1-5/8. (bed.back = 5/8 - 1-5/8)",
                        "Rabbet it, or move it down 3. (bed.bottom = 1 - 3)");
        assertThat(ways(
                        in("ceiling: 5-1/2, ", FRIEZE, "name: up, profile: board 2 x 1, back: 0, bottom: 4-1/4"),
                        "overlap"))
                .noneMatch(way -> way.contains("move it up"));
        assertThat(ways(in("", FRIEZE, bed, "name: top, profile: board 1 x 1, back: 1, bottom: 3"), "overlap"))
                .containsExactly(
                        "Rabbet it, or move it out 1/8. (bed.back = 5/8 + 1/8)",
                        "Rabbet it, or move 'frieze' back 1/8. (frieze.back = 0 - 1/8)",
                        "Rabbet it, or move 'frieze' up 3. (frieze.bottom = 0 + 3)");
    }

    @Test
    void out_of_wall_floor_and_ceiling_there_is_one_way_and_they_are_not_rabbeted() {
        assertThat(ways(in("floor: 0, ", "name: a, profile: board 3/4 x 3, back: 0, bottom: -1/2"), "overlap"))
                .containsExactly("Move it up 1/2. (a.bottom = -1/2 + 1/2)");
        assertThat(ways(in("ceiling: 6, ", "name: a, profile: board 3/4 x 3, back: 0, bottom: 4"), "overlap"))
                .containsExactly("Move it down 1. (a.bottom = 4 - 1)");
        assertThat(ways(
                        Bench.in("{ floor: 0, ceiling: 90 }", "name: a, profile: board 3/4 x 3, back: -1/4, bottom: 0"),
                        "overlap"))
                .containsExactly("Move it out 1/4. (a.back = -1/4 + 1/4)");
        assertThat(ways(
                        in("ceiling: 6, ", "name: a, profile: board 3/4 x 3, back: 0, bottom: 2, top: 6-1/2"),
                        "overlap"))
                .as("a board ripped to fit")
                .containsExactly("Rip 1/2 off its top. (a.top = 6-1/2 - 1/2)");
        assertThat(ways(in("", CASE, "name: bed, profile: board 2 x 2, back: case.face - 1/4, bottom: 1"), "overlap"))
                .startsWith("Rabbet it, or move it out 1/4. (bed.back = case.face - 1/4 + 1/4)");
    }

    @Test
    void what_floats_is_moved_to_what_is_below_behind_or_above_it() {
        assertThat(words(in("", FRIEZE, "name: a, profile: board 1/2 x 2, back: 0, bottom: 6"), "floating-piece"))
                .isEqualTo("Move it up 1/2, or add a block.");
        assertThat(words(in("floor: -90, ", "name: a, profile: board 1/2 x 2, back: 0, bottom: 0"), "floating-piece"))
                .as("the floor is 90 below: nobody means to lay it there")
                .isEqualTo("Place it on a piece, or add a block.");
        List<Notice> floats = in(
                        "",
                        FRIEZE,
                        "name: below, profile: board 1/2 x 2, back: 0, bottom: -3",
                        "name: before, profile: board 1 x 2, back: 2, bottom: 1")
                .notices("floating-piece");
        assertThat(floats.stream().map(NoticeWords.INCHES::cure))
                .containsExactly(
                        "Move it down 1, or add a block.",
                        "Move it up 1, or add a block.",
                        "Move it back 1-1/4, or add a block.");
        assertThat(floats.get(2).changes()).singleElement().satisfies(change -> {
            assertThat(change.place()).isEqualTo("pieces.before.back");
            assertThat(change.typed(LengthUnit.INCH)).isEqualTo("2 - 1-1/4");
        });
    }

    @Test
    void under_a_slope_the_height_that_the_slope_leaves_at_its_tightest_counts() {
        // 3 in 12 down: at 4 out the ceiling is at 5, and 6-1/4 is 1-1/4 more
        assertThat(ways(
                        in(
                                "ceiling: { height: 6, slope: -3 in 12 }, ",
                                FRIEZE,
                                "name: cap, profile: board 3/4 x 4, lay: flat, back: 0, bottom: frieze.top"),
                        "too-tall"))
                .containsExactly(
                        "'frieze' could be 4-1/4. (frieze.profile = board 3/4 x 4-1/4)",
                        "Lower the stack by 1-1/4. (frieze.bottom = 0 - 1-1/4)");
    }
}
