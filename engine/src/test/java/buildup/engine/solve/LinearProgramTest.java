package buildup.engine.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.solve.LinearProgram.Solution;
import buildup.engine.solve.LinearProgram.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NoFeasibleSolutionException;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
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
        program.equation(List.of(new Term(x, 1), new Term(y, 1)), 4);
        program.equation(List.of(new Term(x, 1), new Term(z, -1)), 1);
        Solution solution = program.greatest(x).orElseThrow();
        assertThat(solution.value(x)).isCloseTo(3, within(1e-9));
        assertThat(solution.value(y)).isCloseTo(1, within(1e-9));
        assertThat(solution.value(z)).isCloseTo(2, within(1e-9));
    }

    @Test
    void equations_that_contradict_each_other_have_no_solution() {
        LinearProgram program = new LinearProgram();
        int x = program.atLeastZero(100);
        program.equation(List.of(new Term(x, 1)), 1);
        program.equation(List.of(new Term(x, 2)), 3);
        assertThat(program.greatest(x)).isEmpty();
    }

    @Test
    void a_sum_that_nothing_can_reach_has_no_solution() {
        LinearProgram program = new LinearProgram();
        int x = program.atLeastZero(1);
        program.equation(List.of(new Term(x, 1)), 2);
        assertThat(program.greatest(x)).isEmpty();
        LinearProgram below = new LinearProgram();
        int y = below.atLeastZero(100);
        below.equation(List.of(new Term(y, 1)), -1);
        assertThat(below.greatest(y)).isEmpty();
        LinearProgram empty = new LinearProgram();
        int z = empty.atLeastZero(5);
        empty.equation(List.of(), 1);
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
        program.equation(List.of(new Term(x, 1), new Term(x, 2)), 6);
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

    /** One random program, for both solvers. */
    private record Puzzle(double[] most, double[][] rows, double[] sums) {
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
            LinearProgram program = new LinearProgram();
            for (double one : most) {
                program.atLeastZero(one);
            }
            for (int row = 0; row < rows.length; row++) {
                List<Term> terms = new ArrayList<>();
                for (int i = 0; i < most.length; i++) {
                    terms.add(new Term(i, rows[row][i]));
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
        int solved = 0;
        for (long seed = 1; seed <= 200; seed++) {
            Puzzle program = Puzzle.of(seed);
            Optional<Solution> ours = program.ours();
            Optional<Double> theirs = program.theirs();
            assertThat(ours.isPresent()).as("solvable, seed %d", seed).isEqualTo(theirs.isPresent());
            if (ours.isPresent()) {
                assertThat(ours.get().value(0)).as("seed %d", seed).isCloseTo(theirs.orElseThrow(), within(1e-6));
                program.keeps(ours.get());
                solved++;
            }
        }
        assertThat(solved).as("of 200").isBetween(100, 190);
    }
}
