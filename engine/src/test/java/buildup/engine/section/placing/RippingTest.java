package buildup.engine.section.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.shared.notice.Level;
import buildup.shared.notice.NoticeWords;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Two rules on an axis. */
class RippingTest {
    private static final Offset<Double> EXACT = within(1e-9);

    @Test
    void two_rules_rip_a_board_to_the_width_between_them() {
        Bench bench =
                Bench.loose("name: cap, profile: board 3/4 x 7-1/4, lay: flat, back: wall, face: 6-5/8, bottom: datum");
        assertThat(bench.box("cap").width()).isCloseTo(6.625, EXACT);
        assertThat(bench.piece("cap").blankWidth()).isCloseTo(6.625, EXACT);
        assertThat(bench.piece("cap").blankThickness()).isCloseTo(0.75, EXACT);
        assertThat(bench.section().totals().area()).isCloseTo(6.625 * 0.75, EXACT);
        assertThat(bench.codes()).doesNotContain("board-too-small");
    }

    @Test
    void a_board_is_ripped_on_both_axes_at_once() {
        Bench bench =
                Bench.loose("name: strip, profile: board 3/4 x 5-1/2, back: 1, face: 1-1/2, bottom: 2, top: 4-1/4");
        assertThat(bench.piece("strip").blankThickness()).isCloseTo(0.5, EXACT);
        assertThat(bench.piece("strip").blankWidth()).isCloseTo(2.25, EXACT);
    }

    @Test
    void what_is_placed_on_a_ripped_board_goes_with_its_new_edges() {
        Bench bench = Bench.loose(
                "name: cap, profile: board 3/4 x 7-1/4, lay: flat, back: 1, face: 5, bottom: datum",
                "name: lip, profile: board 3/4 x 1, back: cap.face, top: cap.top",
                "name: stop, profile: board 3/4 x 1, face: cap.back, top: cap.top");
        assertThat(bench.box("lip").back()).isCloseTo(5, EXACT);
        assertThat(bench.box("stop").face()).isCloseTo(1, EXACT);
    }

    @Test
    void plain_blocking_is_ripped_like_a_board() {
        Bench bench = Bench.loose(
                "name: block, kind: nailer, section: [out 1, up 2], back: wall, face: 3/4, bottom: datum, top: 3");
        assertThat(bench.piece("block").blankThickness()).isCloseTo(0.75, EXACT);
        assertThat(bench.piece("block").blankWidth()).isCloseTo(3, EXACT);
        assertThat(bench.codes())
                .as("blocking has no stock size to be short of")
                .doesNotContain("board-too-small");
    }

    @Test
    void a_board_that_is_too_small_is_a_problem_with_the_missing_amount() {
        Bench bench =
                Bench.loose("name: cap, profile: board 3/4 x 3-1/2, lay: flat, back: wall, face: 4, bottom: datum");
        assertThat(bench.notices("board-too-small")).singleElement().satisfies(notice -> {
            assertThat(notice.level()).isEqualTo(Level.PROBLEM);
            assertThat(NoticeWords.INCHES.message(notice))
                    .isEqualTo("'cap' needs 4, but board 3/4 x 3-1/2 gives 3-1/2.");
            assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo("Take a board 4 wide, or glue one up.");
            assertThat(notice.amount().orElseThrow().amount()).isCloseTo(0.5, EXACT);
            assertThat(notice.piece()).contains("cap");
            assertThat(notice.mark().orElseThrow().line()).isEqualTo(4);
        });
    }

    @Test
    void a_board_turned_by_a_quarter_lies_and_keeps_its_thickness() {
        Placed post = Bench.loose("name: post, profile: board 3/4 x 5-1/2, turn: -90, back: wall, bottom: datum")
                .piece("post");
        assertThat(post.blankThickness()).isCloseTo(0.75, EXACT);
        assertThat(post.blankWidth()).isCloseTo(5.5, EXACT);
        assertThat(post.piece().stock().lying()).isTrue();
    }

    @Test
    void a_board_turned_askew_keeps_its_size_and_cannot_be_ripped_to_fit() {
        Placed brace = Bench.loose("name: brace, profile: board 3/4 x 5-1/2, turn: 30, back: wall, bottom: datum")
                .piece("brace");
        assertThat(brace.blankThickness()).isCloseTo(0.75, EXACT);
        assertThat(brace.blankWidth()).isCloseTo(5.5, EXACT);
        Bench refused =
                Bench.refused("name: brace, profile: board 3/4 x 5-1/2, turn: 30, back: wall, face: 3, bottom: datum");
        assertThat(refused.refusals())
                .singleElement()
                .satisfies(notice -> assertThat(notice.code()).isEqualTo("doubled-rule"));
    }

    @Test
    void no_other_profile_is_ripped_by_its_rules() {
        for (String profile : new String[] {"profile: check-bed 1 x 1", "section: [out 1, up 1]"}) {
            Bench bench = Bench.refused("name: bed, " + profile + ", back: wall, face: 3/4, bottom: datum");
            assertThat(bench.refusals()).singleElement().satisfies(notice -> {
                assertThat(notice.code()).isEqualTo("doubled-rule");
                assertThat(NoticeWords.INCHES.message(notice))
                        .isEqualTo("'bed' has two rules for a projection; only a board or plain blocking is ripped to"
                                + " fit.");
                assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo("Keep 'back:' or 'face:'.");
            });
        }
    }

    @Test
    void rules_that_leave_nothing_between_them_are_refused() {
        Bench bench = Bench.refused("name: cap, profile: board 3/4 x 3, back: 2, face: 1-1/2, bottom: datum");
        assertThat(bench.refusals()).singleElement().satisfies(notice -> {
            assertThat(notice.code()).isEqualTo("thickness-zero-or-negative");
            assertThat(NoticeWords.INCHES.message(notice))
                    .isEqualTo("'cap' is left -1/2 between its back and its face.");
            assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo("Move one of the two, or take it out.");
        });
    }
}
