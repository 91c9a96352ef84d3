package buildup.engine.section.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import org.junit.jupiter.api.Test;

/** Whether a stack fits its space, and whether its moldings stand the way they are run. */
class FitTest {
    private static final String FRIEZE = "name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: datum";
    private static final String CAP = "name: cap, profile: board 3/4 x 4, lay: flat, back: wall, bottom: frieze.top";

    private static Notice only(Bench bench, String code) {
        assertThat(bench.notices(code)).as(bench.notices().toString()).hasSize(1);
        return bench.notices(code).get(0);
    }

    @Test
    void a_stack_that_is_too_tall_says_how_low_its_tallest_board_could_be() {
        Notice problem = only(Bench.in("{ ceiling: 6, wall: { solid: no } }", FRIEZE, CAP), "too-tall");
        assertThat(problem.level()).isEqualTo(Level.PROBLEM);
        assertThat(NoticeWords.INCHES.message(problem)).isEqualTo("The stack is 6-1/4 in a space of 6: over by 1/4.");
        assertThat(NoticeWords.INCHES.cure(problem)).isEqualTo("'frieze' could be 5-1/4.");
        assertThat(problem.amount().orElseThrow().amount()).isCloseTo(0.25, within(1e-9));
    }

    @Test
    void the_board_that_cures_it_is_rounded_down() {
        Notice problem = only(Bench.in("{ ceiling: 6.01, wall: { solid: no } }", FRIEZE, CAP), "too-tall");
        assertThat(NoticeWords.INCHES.message(problem)).isEqualTo("The stack is 6-1/4 in a space of 6+: over by 1/4-.");
        assertThat(NoticeWords.INCHES.cure(problem)).isEqualTo("'frieze' could be 5-1/4.");
    }

    @Test
    void without_a_board_to_rip_the_whole_stack_goes_lower() {
        Notice problem = only(
                Bench.in(
                        "{ ceiling: 1, wall: { solid: no } }",
                        "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: wall, bottom: datum"),
                "too-tall");
        assertThat(NoticeWords.INCHES.cure(problem)).isEqualTo("Lower the stack by 3/8.");
    }

    @Test
    void a_stack_just_under_the_ceiling_fits() {
        Bench bench = Bench.in("{ ceiling: 6-1/4, wall: { solid: no } }", FRIEZE, CAP);
        assertThat(bench.notices("too-tall")).isEmpty();
        assertThat(bench.section().ceilingLeft()).hasValueCloseTo(0.0, within(1e-9));
    }

    @Test
    void a_stack_that_projects_too_far_is_a_problem() {
        Notice problem = only(Bench.in("{ projection: 3-1/2, wall: { solid: no } }", FRIEZE, CAP), "projects-too-far");
        assertThat(problem.level()).isEqualTo(Level.PROBLEM);
        assertThat(NoticeWords.INCHES.message(problem)).isEqualTo("The stack projects 4, 1/2 more than allowed.");
        assertThat(NoticeWords.INCHES.cure(problem)).isEqualTo("'cap' could be 3-1/2 wide.");
        assertThat(Bench.in("{ projection: 4, wall: { solid: no } }", FRIEZE, CAP)
                        .notices("projects-too-far"))
                .isEmpty();
    }

    private static Bench bed(String change) {
        return Bench.onWall("name: bed, profile: check-bed 1-1/4 x 1-3/8" + change + ", back: wall, bottom: datum");
    }

    @Test
    void a_bed_or_crown_that_widens_downward_is_upside_down_unless_it_is_said() {
        Notice problem = only(bed(", turn: 180"), "upside-down");
        assertThat(problem.level()).isEqualTo(Level.PROBLEM);
        assertThat(NoticeWords.INCHES.message(problem)).isEqualTo("'bed': the bed widens downward.");
        assertThat(NoticeWords.INCHES.cure(problem))
                .isEqualTo("If you mean it, say 'flip: over'; otherwise turn it the other way.");
        assertThat(bed(", flip: over").notices("upside-down")).isEmpty();
        assertThat(bed("").notices("upside-down")).isEmpty();
    }

    @Test
    void a_molding_that_is_end_for_end_is_not_upside_down() {
        assertThat(bed(", flip: ends").notices("upside-down")).isEmpty();
        for (String change : new String[] {", flip: ends", ", spring: 52", ""}) {
            Bench crown = Bench.loose(
                    "name: crown, profile: check-crown-edged 9/16 x 3-1/4" + change + ", back: wall, bottom: datum");
            assertThat(crown.notices("upside-down")).as(change).isEmpty();
        }
        assertThat(Bench.loose("name: crown, profile: check-crown 9/16 x 3-1/4, turn: 180, back: wall, bottom: datum")
                        .codes())
                .contains("upside-down");
    }

    @Test
    void boards_and_one_off_sections_have_no_right_way_up() {
        assertThat(Bench.onWall("name: wedge, section: [out 2, up 1/4, chamfer in 1 x 1], back: wall, bottom: datum")
                        .notices("upside-down"))
                .isEmpty();
    }
}
