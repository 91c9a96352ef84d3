package buildup.engine.solve;

import java.util.Arrays;
import java.util.Optional;

/**
 * Find the values of some variables, each within its bounds, that keep every equation and make one of them, or a sum of
 * them, as great as can be. Variables and factors lie in plain arrays, which the next program uses again: a stack asks
 * dozens of programs of a few dozen variables, which take no longer to be solved than to be written down.
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

        /** Makes it the sum of nothing again. */
        public void clear() {
            terms = 0;
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

    private final Simplex simplex = new Simplex();
    private double[] most = new double[32];
    private int unknowns;

    /** The terms of all equations, one after the other, where those of each begin, and what it comes to. */
    private int[] variables = new int[128];

    private double[] factors = new double[128];
    private int[] begins = new int[17];
    private double[] sums = new double[16];
    private int count;

    /** The factor of each variable in the sum that is to be great: scratch of an answer. */
    private double[] aim = new double[0];

    /** Forgets its variables and equations: what follows is another program. */
    public void clear() {
        unknowns = 0;
        count = 0;
    }

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

    /** A sum of variables, as it is now, is to be {@code comesTo}. */
    public void equation(Sum sum, double comesTo) {
        if (count == sums.length) {
            begins = Arrays.copyOf(begins, 2 * count + 1);
            sums = Arrays.copyOf(sums, 2 * count);
        }
        int from = begins[count];
        int to = from + sum.terms;
        if (to > variables.length) {
            variables = Arrays.copyOf(variables, 2 * to);
            factors = Arrays.copyOf(factors, 2 * to);
        }
        System.arraycopy(sum.variables, 0, variables, from, sum.terms);
        System.arraycopy(sum.factors, 0, factors, from, sum.terms);
        sums[count] = comesTo;
        begins[++count] = to;
    }

    /** How many variables there are; the next one has this number. */
    public int unknowns() {
        return unknowns;
    }

    /** The greatest value of a variable, infinite for none; the least is 0. */
    double most(int variable) {
        return most[variable];
    }

    /** How many equations there are. */
    int count() {
        return count;
    }

    /** What an equation comes to. */
    double sum(int equation) {
        return sums[equation];
    }

    /** Where the terms of an equation begin, and those of the one before it end. */
    int first(int equation) {
        return begins[equation];
    }

    int variable(int term) {
        return variables[term];
    }

    double factor(int term) {
        return factors[term];
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
        if (aim.length < unknowns) {
            aim = new double[most.length];
        }
        Arrays.fill(aim, 0, unknowns, 0);
        sum.into(aim);
        double[] values = simplex.greatest(this, aim);
        return values.length < unknowns ? Optional.empty() : Optional.of(new Solution(values));
    }
}
