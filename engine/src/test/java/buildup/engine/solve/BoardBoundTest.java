package buildup.engine.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.solve.BoardBound.Board;
import buildup.engine.solve.BoardBound.Strip;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;

class BoardBoundTest {
    private static Board endless(int width, double price) {
        return new Board(width, price, Double.POSITIVE_INFINITY);
    }

    /** Three of 4 fit 12, two of 5 fit 11: six of 4 are two boards of 12, and five of 5 are two and a half of 11. */
    @Test
    void what_is_worked_by_hand() {
        assertThat(BoardBound.least(List.of(new Strip(4, 6)), List.of(endless(12, 10))))
                .isEqualTo(20, within(1e-6));
        assertThat(BoardBound.least(
                        List.of(new Strip(4, 6), new Strip(5, 5)), List.of(endless(12, 12), endless(11, 10))))
                // a 4 and a 5 share no board that is full: 3 of 4 at 12, 2 of 5 at 10
                .isEqualTo(2 * 12 + 2.5 * 10, within(1e-6));
        assertThat(BoardBound.least(List.of(new Strip(4, 0)), List.of(endless(12, 10))))
                .isZero();
    }

    /** One board of 12 lies there: it gives three of the six, and one is bought. */
    @Test
    void boards_that_lie_there_are_taken_first_and_no_more_than_there_are() {
        assertThat(BoardBound.least(List.of(new Strip(4, 6)), List.of(new Board(12, 0, 1), endless(12, 10))))
                .isEqualTo(10, within(1e-6));
        assertThat(BoardBound.least(List.of(new Strip(4, 6)), List.of(new Board(12, 0, 7), endless(12, 10))))
                .isEqualTo(0, within(1e-6));
    }

    /** Against a linear program over every way to rip every board, solved by a library. */
    @Test
    void random_boards_cost_what_a_program_over_all_ways_says() {
        for (int seed = 0; seed < 150; seed++) {
            Random random = new Random(seed);
            List<Strip> strips = new ArrayList<>();
            for (int i = 0; i <= random.nextInt(5); i++) {
                strips.add(new Strip(3 + random.nextInt(12), random.nextInt(400) / 10.0));
            }
            List<Board> boards = new ArrayList<>(List.of(endless(20, 20 + random.nextInt(10))));
            for (int i = 0; i < random.nextInt(4); i++) {
                int width = 6 + random.nextInt(12);
                boards.add(
                        random.nextInt(3) == 0
                                ? new Board(width, 0, random.nextInt(6))
                                : endless(width, width + random.nextInt(8)));
            }
            double all = overAllWays(strips, boards);
            assertThat(BoardBound.least(strips, boards))
                    .as("seed %d: %s from %s", seed, strips, boards)
                    .isEqualTo(all, within(1e-6 * (1 + all)))
                    .isLessThanOrEqualTo(all + 1e-9);
        }
    }

    private static double overAllWays(List<Strip> strips, List<Board> boards) {
        List<int[]> ways = new ArrayList<>();
        List<Integer> of = new ArrayList<>();
        for (int board = 0; board < boards.size(); board++) {
            int before = ways.size();
            ways(strips, 0, boards.get(board).width(), new int[strips.size()], ways);
            for (int i = before; i < ways.size(); i++) {
                of.add(board);
            }
        }
        List<LinearConstraint> rows = new ArrayList<>();
        for (int strip = 0; strip < strips.size(); strip++) {
            int row = strip;
            double[] factors = ways.stream().mapToDouble(way -> way[row]).toArray();
            rows.add(new LinearConstraint(
                    factors, Relationship.GEQ, strips.get(strip).wanted()));
        }
        for (int board = 0; board < boards.size(); board++) {
            if (boards.get(board).unlimited()) {
                continue;
            }
            double[] factors = new double[ways.size()];
            for (int i = 0; i < factors.length; i++) {
                factors[i] = of.get(i) == board ? 1 : 0;
            }
            rows.add(new LinearConstraint(
                    factors, Relationship.LEQ, boards.get(board).most()));
        }
        double[] prices =
                of.stream().mapToDouble(board -> boards.get(board).price()).toArray();
        return new SimplexSolver()
                .optimize(
                        new LinearObjectiveFunction(prices, 0),
                        new LinearConstraintSet(rows),
                        GoalType.MINIMIZE,
                        new NonNegativeConstraint(true))
                .getValue();
    }

    private static void ways(List<Strip> strips, int from, int room, int[] counts, List<int[]> ways) {
        if (from == strips.size()) {
            ways.add(counts.clone());
            return;
        }
        int width = strips.get(from).width();
        for (int count = 0; count * width <= room; count++) {
            counts[from] = count;
            ways(strips, from + 1, room - count * width, counts, ways);
        }
        counts[from] = 0;
    }
}
