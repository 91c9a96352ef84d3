package buildup.engine.solve;

import java.util.Arrays;
import java.util.Optional;

/**
 * Find the values of some variables, each within its bounds, that keep every equation and make one of them, or a sum of
 * them, as great as can be. Variables and factors lie in plain arrays: a stack asks dozens of programs of a few dozen
 * variables, which take no longer to be solved than to be written down.
 */
public final class LinearProgram {
    /** A sum of factor times variable, to which terms are added. */
    public static final class Sum {
        private int[] variables = new int[16];
        private double[] factors = new double[16];
        private int terms;

        /** The sum of nothing. */
        public Sum() {}

        /** One variable, so many times. */
        public static Sum of(int variable, double factor) {
            return new Sum().add(variable, factor);
        }

        /** Adds a variable so many times; what it is already in the sum stays. */
        public Sum add(int variable, double factor) {
            if (terms == variables.length) {
                variables = Arrays.copyOf(variables, 2 * terms);
                factors = Arrays.copyOf(factors, 2 * terms);
            }
            variables[terms] = variable;
            factors[terms] = factor;
            terms++;
            return this;
        }

        /** Adds another sum so many times. */
        public Sum add(Sum other, double times) {
            for (int i = 0; i < other.terms; i++) {
                add(other.variables[i], times * other.factors[i]);
            }
            return this;
        }

        /** What it comes to with the values of a solution. */
        public double value(Solution found) {
            double value = 0;
            for (int i = 0; i < terms; i++) {
                value += factors[i] * found.value(variables[i]);
            }
            return value;
        }

        int terms() {
            return terms;
        }

        int variable(int term) {
            return variables[term];
        }

        double factor(int term) {
            return factors[term];
        }

        /** Puts its factors where their variables have their places. */
        private void into(double[] row) {
            for (int i = 0; i < terms; i++) {
                row[variables[i]] += factors[i];
            }
        }
    }

    /** The values of all variables. */
    public static final class Solution {
        private final double[] values;

        private Solution(double[] values) {
            this.values = values;
        }

        /** What a variable was found to be, in the unit in which it was asked. */
        public double value(int variable) {
            return values[variable];
        }
    }

    private double[] most = new double[32];
    private int unknowns;
    private Sum[] equations = new Sum[16];
    private double[] sums = new double[16];
    private int count;

    /**
     * A variable that is not negative.
     *
     * @param greatest what it is at most; infinite for no limit
     * @return its number
     */
    public int atLeastZero(double greatest) {
        if (unknowns == most.length) {
            most = Arrays.copyOf(most, 2 * unknowns);
        }
        most[unknowns] = greatest;
        return unknowns++;
    }

    /**
     * A sum of variables is to be {@code comesTo}.
     *
     * @param sum kept as it is: nothing is added to it from here on
     */
    public void equation(Sum sum, double comesTo) {
        if (count == sums.length) {
            equations = Arrays.copyOf(equations, 2 * count);
            sums = Arrays.copyOf(sums, 2 * count);
        }
        equations[count] = sum;
        sums[count] = comesTo;
        count++;
    }

    /**
     * The solution in which a variable is greatest; nothing when the equations contradict each other.
     *
     * @throws IllegalArgumentException if that variable has no limit: there might be no greatest
     */
    public Optional<Solution> greatest(int variable) {
        if (Double.isInfinite(most[variable])) {
            throw new IllegalArgumentException("variable " + variable + " has no limit");
        }
        return greatest(Sum.of(variable, 1));
    }

    /**
     * The solution in which a sum is greatest; nothing when the equations contradict each other. The caller sees to it that
     * something bounds the sum.
     */
    public Optional<Solution> greatest(Sum sum) {
        double[] aim = new double[unknowns];
        sum.into(aim);
        double[] values = new Simplex(
                        Arrays.copyOf(most, unknowns), Arrays.copyOf(equations, count), Arrays.copyOf(sums, count))
                .greatest(aim);
        return values.length < unknowns ? Optional.empty() : Optional.of(new Solution(values));
    }
}
