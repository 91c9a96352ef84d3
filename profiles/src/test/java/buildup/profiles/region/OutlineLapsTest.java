package buildup.profiles.region;

import static buildup.profiles.region.UnionTest.bead;
import static buildup.profiles.region.UnionTest.board;
import static buildup.profiles.region.UnionTest.lines;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Overlaps of pairs, by area, depth and place. */
class OutlineLapsTest {
    private static final double EXACT = 1e-9;

    @Test
    void laps_are_told_with_area_depth_and_place() {
        assertThat(OutlineLaps.of(List.of(board(0, 0, 4, 1), board(1, 0.75, 2, 3), board(3.5, 0.5, 6, 2))))
                .satisfiesExactly(
                        lap -> {
                            assertThat(List.of(lap.first(), lap.second())).containsExactly(0, 1);
                            assertThat(lap.area()).isCloseTo(0.25, within(EXACT));
                            assertThat(lap.depth()).isCloseTo(0.25, within(EXACT));
                            assertThat(new Box(1, 0.75, 2, 1).holds(lap.at(), 0))
                                    .isTrue();
                        },
                        lap -> {
                            assertThat(List.of(lap.first(), lap.second())).containsExactly(0, 2);
                            assertThat(lap.area()).isCloseTo(0.25, within(EXACT));
                            assertThat(lap.depth()).isCloseTo(0.5, within(EXACT));
                        });
    }

    @Test
    void two_separate_laps_of_one_pair_are_two_rows() {
        Outline fork = lines(0, 0, 3, 0, 3, 2, 2, 2, 2, 1, 1, 1, 1, 2, 0, 2);
        assertThat(OutlineLaps.of(List.of(fork, board(-1, 1.5, 4, 2.5))))
                .hasSize(2)
                .allSatisfy(lap -> assertThat(lap.area()).isCloseTo(0.5, within(EXACT)));
    }

    @Test
    void a_lap_with_an_arc_is_measured_on_the_arc() {
        // a half disc of radius 1/2 let 1/4 deep into a board: a circular segment
        Lap lap =
                OutlineLaps.of(List.of(board(-2, -2, 2, 0), bead(0, 0.25, 0.5))).get(0);
        double sweep = 2 * Math.acos(0.5);
        assertThat(lap.area()).isCloseTo(0.125 * (sweep - Math.sin(sweep)), within(EXACT));
        assertThat(lap.depth()).isCloseTo(0.25, within(EXACT));
    }

    @Test
    void two_laps_that_pass_each_other_on_a_slant_stay_two() {
        // a hook comes into the board from the left and, higher and farther out, from the right
        Outline hook =
                lines(-1, -1, 3, -1, 3, 2, 1.25, 2, 1.25, 1, 2.5, 1, 2.5, -0.5, -0.5, -0.5, -0.5, 0, 1, 0, 1, 1, -1, 1);
        assertThat(OutlineLaps.of(List.of(board(0, 0, 2, 2), hook)))
                .satisfiesExactly(
                        lap -> assertThat(lap.area()).isCloseTo(1, within(EXACT)),
                        lap -> assertThat(lap.area()).isCloseTo(0.75, within(EXACT)));
    }

    @Test
    void laps_come_by_the_height_at_which_they_are_shown() {
        // two teeth let into a board: the left is widest at its foot, the right, over it, at its head
        Outline teeth =
                lines(0, 0, 8, 0, 8, 1, 5.5, 1, 5.5, 3, 7, 3, 7, 4, 5, 4, 5, 1, 3, 1, 3, 3, 1, 3, 1, 4.5, 0, 4.5);
        Outline board = board(-1, 2, 9, 10);
        assertThat(OutlineLaps.of(List.of(teeth, board)))
                .satisfiesExactly(
                        left -> {
                            assertThat(left.area()).isCloseTo(3 + 1.5, within(EXACT));
                            assertThat(left.at().y()).isCloseTo(2.5, within(EXACT));
                        },
                        right -> {
                            assertThat(right.area()).isCloseTo(0.5 + 2, within(EXACT));
                            assertThat(right.at().y()).isCloseTo(3.5, within(EXACT));
                        });
        // the same from its other end: what is shown lower then lies farther out
        assertThat(OutlineLaps.of(List.of(teeth.moved(Motion.ENDS), board.moved(Motion.ENDS))))
                .extracting(Lap::area)
                .satisfiesExactly(
                        left -> assertThat(left).isCloseTo(4.5, within(EXACT)),
                        right -> assertThat(right).isCloseTo(2.5, within(EXACT)));
    }

    @Test
    void a_lap_of_two_equal_halves_is_shown_in_the_lower() {
        Outline stepped = lines(-1, -1, 2, -1, 2, 1, 3, 1, 3, 3, -1, 3);
        assertThat(OutlineLaps.of(List.of(board(0, 0, 1, 2), stepped)))
                .singleElement()
                .satisfies(lap -> {
                    assertThat(lap.area()).isCloseTo(2, within(EXACT));
                    assertThat(lap.at().y()).isCloseTo(0.5, within(EXACT));
                });
    }
}
