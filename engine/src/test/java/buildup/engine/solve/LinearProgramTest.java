package buildup.engine.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.solve.LinearProgram.Solution;
import buildup.engine.solve.LinearProgram.Sum;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.LongFunction;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NoFeasibleSolutionException;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.PivotSelectionRule;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;

/** Against programs solved by hand and against a second solver, the simplex method of Apache Commons Math 3.6.1. */
class LinearProgramTest {
    private static final double NONE = Double.POSITIVE_INFINITY;

    @Test
    void the_greatest_is_found_where_equations_and_bounds_meet() {
        // x + y = 4, x - z = 1, y at most 2, z at most 2: x = 3, y = 1, z = 2
        LinearProgram program = new LinearProgram();
        int x = program.atLeastZero(100);
        int y = program.atLeastZero(2);
        int z = program.atLeastZero(2);
        program.equation(Sum.of(x, 1).add(y, 1), 4);
        program.equation(Sum.of(x, 1).add(z, -1), 1);
        Solution solution = program.greatest(x).orElseThrow();
        assertThat(solution.value(x)).isCloseTo(3, within(1e-9));
        assertThat(solution.value(y)).isCloseTo(1, within(1e-9));
        assertThat(solution.value(z)).isCloseTo(2, within(1e-9));
    }

    @Test
    void equations_that_contradict_each_other_have_no_solution() {
        LinearProgram program = new LinearProgram();
        int x = program.atLeastZero(100);
        program.equation(Sum.of(x, 1), 1);
        program.equation(Sum.of(x, 2), 3);
        assertThat(program.greatest(x)).isEmpty();
    }

    @Test
    void a_sum_that_nothing_can_reach_has_no_solution() {
        LinearProgram program = new LinearProgram();
        int x = program.atLeastZero(1);
        program.equation(Sum.of(x, 1), 2);
        assertThat(program.greatest(x)).isEmpty();
        LinearProgram below = new LinearProgram();
        int y = below.atLeastZero(100);
        below.equation(Sum.of(y, 1), -1);
        assertThat(below.greatest(y)).isEmpty();
        LinearProgram empty = new LinearProgram();
        int z = empty.atLeastZero(5);
        empty.equation(new Sum(), 1);
        assertThat(empty.greatest(z)).isEmpty();
    }

    @Test
    void without_equations_the_bound_itself_is_the_greatest() {
        LinearProgram program = new LinearProgram();
        int x = program.atLeastZero(7);
        assertThat(program.greatest(x).orElseThrow().value(x)).isCloseTo(7, within(1e-9));
    }

    @Test
    void a_variable_may_stand_twice_in_an_equation() {
        LinearProgram program = new LinearProgram();
        int x = program.atLeastZero(100);
        program.equation(Sum.of(x, 1).add(x, 2), 6);
        assertThat(program.greatest(x).orElseThrow().value(x)).isCloseTo(2, within(1e-9));
    }

    @Test
    void the_greatest_of_a_variable_without_limit_is_not_asked_for() {
        LinearProgram program = new LinearProgram();
        int x = program.atLeastZero(NONE);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> program.greatest(x))
                .withMessage("variable 0 has no limit");
    }

    /** Beale, Cycling in the dual simplex algorithm, Naval Research Logistics Quarterly 2, 1955; the figures from memory. */
    @Test
    void a_program_on_which_the_plain_method_goes_round_in_circles_is_solved() {
        LinearProgram program = new LinearProgram();
        for (int i = 0; i < 7; i++) {
            program.atLeastZero(NONE);
        }
        program.equation(Sum.of(0, 1).add(3, 0.25).add(4, -8).add(5, -1).add(6, 9), 0);
        program.equation(Sum.of(1, 1).add(3, 0.5).add(4, -12).add(5, -0.5).add(6, 3), 0);
        program.equation(Sum.of(2, 1).add(5, 1), 1);
        Solution solution = program.greatest(
                        Sum.of(3, 0.75).add(4, -20).add(5, 0.5).add(6, -6))
                .orElseThrow();
        double[] corner = {0.75, 0, 0, 1, 0, 1, 0};
        for (int i = 0; i < corner.length; i++) {
            assertThat(solution.value(i)).isCloseTo(corner[i], within(1e-12));
        }
    }

    /** Klee and Minty, How good is the simplex algorithm?, in Inequalities III, 1972; from memory. The greatest is 5^n. */
    @Test
    void a_program_that_may_lead_over_every_corner_is_solved() {
        int n = 8;
        LinearProgram program = new LinearProgram();
        Sum aim = new Sum();
        for (int i = 0; i < n; i++) {
            aim.add(program.atLeastZero(NONE), Math.pow(2, n - 1 - i));
        }
        for (int i = 0; i < n; i++) {
            Sum row = new Sum();
            for (int j = 0; j < i; j++) {
                row.add(j, Math.pow(2, i - j + 1));
            }
            row.add(i, 1);
            row.add(program.atLeastZero(NONE), 1);
            program.equation(row, Math.pow(5, i + 1));
        }
        assertThat(program.greatest(aim).orElseThrow().value(n - 1)).isCloseTo(Math.pow(5, n), within(1e-6));
    }

    @Test
    void a_sum_that_nothing_bounds_has_no_greatest() {
        LinearProgram program = new LinearProgram();
        int x = program.atLeastZero(NONE);
        int y = program.atLeastZero(NONE);
        program.equation(Sum.of(x, 1).add(y, -1), 0);
        assertThat(program.greatest(Sum.of(x, 1))).isEmpty();
    }

    /** A program that is wiped and written anew holds nothing of those before it, whether they were larger or smaller. */
    @Test
    void what_was_written_before_does_not_matter() {
        LinearProgram paper = new LinearProgram();
        int solved = 0;
        for (long seed = 1; seed <= 200; seed++) {
            Puzzle puzzle = seed % 2 == 0 ? Puzzle.of(seed) : Puzzle.ofMotion(seed);
            paper.clear();
            Optional<Solution> again = puzzle.ours(paper);
            Optional<Solution> fresh = puzzle.ours();
            assertThat(again.isPresent()).as("seed %d", seed).isEqualTo(fresh.isPresent());
            for (int i = 0; fresh.isPresent() && i < puzzle.most().length; i++) {
                assertThat(again.get().value(i))
                        .as("seed %d", seed)
                        .isEqualTo(fresh.get().value(i));
            }
            solved += fresh.isPresent() ? 1 : 0;
        }
        assertThat(solved).isBetween(60, 190);
    }

    /** One random program, for both solvers. */
    private record Puzzle(double[] most, double[][] rows, double[] sums) {
        /** As the motions of a stack are: most sums are 0, factors are few and alike, rows say the same twice. */
        static Puzzle ofMotion(long seed) {
            Random random = new Random(seed);
            int variables = 6 + random.nextInt(30);
            int equations = 3 + random.nextInt(variables / 2);
            double[] most = new double[variables];
            for (int i = 0; i < variables; i++) {
                most[i] = i == 0 || random.nextInt(3) == 0 ? 1 + random.nextInt(4) : NONE;
            }
            double[][] rows = new double[equations][variables];
            double[] sums = new double[equations];
            for (int row = 0; row < equations; row++) {
                for (int i = 0; i < variables; i++) {
                    rows[row][i] = random.nextInt(4) > 0 ? 0 : (random.nextInt(9) - 4) / 2.0;
                }
                sums[row] = random.nextInt(6) == 0 ? random.nextInt(3) : 0;
                if (row > 0 && random.nextInt(5) == 0) {
                    rows[row] = rows[row - 1].clone();
                    sums[row] = sums[row - 1];
                }
            }
            return new Puzzle(most, rows, sums);
        }

        static Puzzle of(long seed) {
            Random random = new Random(seed);
            int variables = 3 + random.nextInt(12);
            int equations = 1 + random.nextInt(variables - 1);
            double[] most = new double[variables];
            double[] inside = new double[variables];
            for (int i = 0; i < variables; i++) {
                most[i] = i > 0 && random.nextBoolean() ? NONE : 1 + 20 * random.nextDouble();
                inside[i] = random.nextInt(3) == 0 ? 0 : random.nextDouble() * Math.min(most[i], 30);
            }
            double[][] rows = new double[equations][variables];
            double[] sums = new double[equations];
            boolean reachable = random.nextInt(3) > 0;
            for (int row = 0; row < equations; row++) {
                for (int i = 0; i < variables; i++) {
                    rows[row][i] = random.nextInt(3) == 0 ? 0 : 4 * random.nextDouble() - 2;
                    sums[row] += rows[row][i] * inside[i];
                }
                if (!reachable) {
                    sums[row] = 60 * random.nextDouble() - 30;
                }
            }
            return new Puzzle(most, rows, sums);
        }

        Optional<Solution> ours() {
            return ours(new LinearProgram());
        }

        Optional<Solution> ours(LinearProgram program) {
            for (double one : most) {
                program.atLeastZero(one);
            }
            for (int row = 0; row < rows.length; row++) {
                Sum terms = new Sum();
                for (int i = 0; i < most.length; i++) {
                    terms.add(i, rows[row][i]);
                }
                program.equation(terms, sums[row]);
            }
            return program.greatest(0);
        }

        Optional<Double> theirs() {
            List<LinearConstraint> constraints = new ArrayList<>();
            for (int row = 0; row < rows.length; row++) {
                constraints.add(new LinearConstraint(rows[row], Relationship.EQ, sums[row]));
            }
            for (int i = 0; i < most.length; i++) {
                if (Double.isFinite(most[i])) {
                    double[] unit = new double[most.length];
                    unit[i] = 1;
                    constraints.add(new LinearConstraint(unit, Relationship.LEQ, most[i]));
                }
            }
            double[] first = new double[most.length];
            first[0] = 1;
            try {
                return Optional.of(new SimplexSolver()
                        .optimize(
                                new MaxIter(10_000),
                                new LinearObjectiveFunction(first, 0),
                                new LinearConstraintSet(constraints),
                                GoalType.MAXIMIZE,
                                PivotSelectionRule.BLAND,
                                new NonNegativeConstraint(true))
                        .getValue());
            } catch (NoFeasibleSolutionException e) {
                return Optional.empty();
            }
        }

        void keeps(Solution solution) {
            for (int row = 0; row < rows.length; row++) {
                double sum = 0;
                for (int i = 0; i < most.length; i++) {
                    sum += rows[row][i] * solution.value(i);
                }
                assertThat(sum).isCloseTo(sums[row], within(1e-6));
            }
            for (int i = 0; i < most.length; i++) {
                assertThat(solution.value(i)).isBetween(-1e-6, most[i] + 1e-6);
            }
        }
    }

    @Test
    void two_hundred_random_programs_have_the_answers_of_a_second_solver() {
        assertThat(solved(Puzzle::of, 200)).as("of 200").isBetween(100, 190);
    }

    @Test
    void programs_in_which_many_bounds_are_reached_at_once_have_the_answers_of_a_second_solver() {
        assertThat(solved(Puzzle::ofMotion, 1_000)).as("of 1,000").isBetween(250, 900);
    }

    private static int solved(LongFunction<Puzzle> puzzles, int programs) {
        int solved = 0;
        for (long seed = 1; seed <= programs; seed++) {
            Puzzle program = puzzles.apply(seed);
            Optional<Solution> ours = program.ours();
            Optional<Double> theirs = program.theirs();
            assertThat(ours.isPresent()).as("solvable, seed %d", seed).isEqualTo(theirs.isPresent());
            if (ours.isPresent()) {
                assertThat(ours.get().value(0)).as("seed %d", seed).isCloseTo(theirs.orElseThrow(), within(1e-6));
                program.keeps(ours.get());
                solved++;
            }
        }
        return solved;
    }
}
