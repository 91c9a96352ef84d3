package buildup.engine.section.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** A ceiling that rises or falls into the room: whether a stack fits, touches and closes voids under it; all by hand. */
class SlopedCeilingTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private static Bench under(String ceiling, String... pieces) {
        return Bench.of(Bench.head("space: { floor: -84, ceiling: " + ceiling + ", wall: { solid: yes } }")
                + Bench.list(pieces));
    }

    /** Falling 4 in 12, the face of a 3/4 board is under a ceiling 1/4 lower than at the wall. */
    @Test
    void under_a_ceiling_that_falls_a_board_touches_with_its_face() {
        Bench bench = under(
                "{ height: 12, slope: -4 in 12 }", "name: frieze, profile: board 3/4 x 5, back: wall, top: touch");
        assertThat(bench.box("frieze").top()).isCloseTo(11.75, EXACT);
        Section section = bench.section();
        assertThat(section.ceilingLeft().orElseThrow()).isCloseTo(0, EXACT);
        // the wedge over the board: 3/4 wide, 1/4 high at the wall
        assertThat(section.voids()).hasSize(1);
        assertThat(section.voids().get(0).area()).isCloseTo(0.75 * 0.25 / 2, within(1e-6));
        assertThat(section.voids().get(0).closedBy()).containsExactly("wall", "ceiling");
    }

    @Test
    void under_a_ceiling_that_rises_it_touches_at_the_wall() {
        Bench bench =
                under("{ height: 12, slope: 4 in 12 }", "name: frieze, profile: board 3/4 x 5, back: wall, top: touch");
        assertThat(bench.box("frieze").top()).isCloseTo(12, EXACT);
        assertThat(bench.section().voids()).isEmpty();
    }

    /** What is left under it is measured upright at the place where it is least: 12 - 4 (1/3) - 10 at the shelf's edge. */
    @Test
    void what_is_left_is_least_where_the_ceiling_is_lowest_over_the_stack() {
        Bench bench = under(
                "{ height: 12, slope: -4 in 12 }",
                "name: shelf, profile: board 3/4 x 4, lay: flat, back: wall, top: 10");
        assertThat(bench.section().ceilingLeft().orElseThrow()).isCloseTo(12 - 4.0 / 3 - 10, EXACT);
        // over a quarter round, radius 1, it is least where the tangent has the slope: y + 3/4 x is at most 5/4 there
        Bench round = under(
                "{ height: 12, slope: -3 in 4 }",
                "name: round, section: [out 1, ovolo in 1 x 1], back: wall, bottom: 9");
        assertThat(round.section().ceilingLeft().orElseThrow()).isCloseTo(12 - 9 - 1.25, EXACT);
    }

    @Test
    void what_goes_through_it_is_said_with_its_slope_and_lowered() {
        Bench bench = under(
                "{ height: 12, slope: -4 in 12 }",
                "name: shelf, profile: board 3/4 x 6, lay: flat, back: wall, top: 11");
        Notice tall = bench.notices().stream()
                .filter(notice -> notice.code().equals("too-tall"))
                .findFirst()
                .orElseThrow();
        assertThat(NoticeWords.INCHES.message(tall))
                .isEqualTo("'shelf' goes 1 through the ceiling, which falls 4 in 12.");
        assertThat(NoticeWords.INCHES.cure(tall)).isEqualTo("Lower the stack by 1.");
    }

    /** A board cut to the slope lies against it along all of its top: 5 out and 1 up of it, in 5 by 2 in 10. */
    @Test
    void a_piece_cut_to_the_slope_lies_against_it() {
        Bench bench = under(
                "{ height: 12, slope: 2 in 10 }",
                "name: filler, section: [out 5, up 3, chamfer in down 1 x 5], back: wall, bottom: 10");
        assertThat(bench.notices()).extracting(Notice::code).doesNotContain("overlap", "too-tall");
        assertThat(bench.section().contacts())
                .filteredOn(contact -> bench.name(contact.a()).equals("filler")
                        && bench.name(contact.b()).equals("ceiling"))
                .singleElement()
                .satisfies(contact -> assertThat(contact.length()).isCloseTo(Math.hypot(5, 1), within(1e-6)));
    }

    @Test
    void a_slope_that_cannot_be_read_is_refused() {
        for (String slope : new String[] {"steep", "2", "2 in 0", "30 in 12", "in 12"}) {
            Bench bench = under(
                    "{ height: 12, slope: " + slope + " }", "name: frieze, profile: board 3/4 x 5, back: wall, top: 2");
            assertThat(bench.refusals()).as(slope).hasSize(1);
        }
        assertThat(NoticeWords.INCHES.message(
                        under("{ slope: 2 in 12 }", "name: a, section: [out 1, up 1], back: wall, top: 2")
                                .refusals()
                                .get(0)))
                .isEqualTo("A ceiling with a slope says how high it is at the wall plane.");
    }
}
