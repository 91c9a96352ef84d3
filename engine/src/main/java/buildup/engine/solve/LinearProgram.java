package buildup.engine.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Find the values of some variables, each within its bounds, that keep every equation and make one of them, or a sum of
 * them, as great as can be.
 */
public final class LinearProgram {
    /** A variable: at least 0, at most {@code most} (infinite for no limit). */
    private record Unknown(double most) {}

    /** The sum of factor times variable is {@code sum}. */
    private record Equation(List<Term> terms, double sum) {}

    /** A factor and the number of its variable. */
    public record Term(int variable, double factor) {}

    /** The values of all variables, in the order in which they were added. */
    public record Solution(List<Double> values) {
        public Solution {
            values = List.copyOf(values);
        }

        /** What a variable was found to be, in the unit in which it was asked. */
        public double value(int variable) {
            return values.get(variable);
        }
    }

    private final List<Unknown> unknowns = new ArrayList<>();
    private final List<Equation> equations = new ArrayList<>();

    /**
     * A variable that is not negative.
     *
     * @return its number
     */
    public int atLeastZero(double most) {
        unknowns.add(new Unknown(most));
        return unknowns.size() - 1;
    }

    /** The sum of factor times variable, over these terms, is to be {@code sum}. */
    public void equation(List<Term> terms, double sum) {
        equations.add(new Equation(List.copyOf(terms), sum));
    }

    /**
     * The solution in which a variable is greatest; nothing when the equations contradict each other.
     *
     * @throws IllegalArgumentException if that variable has no limit: there might be no greatest
     */
    public Optional<Solution> greatest(int variable) {
        if (Double.isInfinite(unknowns.get(variable).most)) {
            throw new IllegalArgumentException("variable " + variable + " has no limit");
        }
        return greatest(List.of(new Term(variable, 1)));
    }

    /**
     * The solution in which a sum of factor times variable is greatest; nothing when the equations contradict each other.
     * The caller sees to it that something bounds the sum.
     */
    public Optional<Solution> greatest(List<Term> sum) {
        double[] most = new double[unknowns.size()];
        double[] aim = new double[unknowns.size()];
        for (int i = 0; i < most.length; i++) {
            most[i] = unknowns.get(i).most;
        }
        sum.forEach(term -> aim[term.variable] += term.factor);
        double[][] factors = new double[equations.size()][most.length];
        double[] sums = new double[equations.size()];
        for (int i = 0; i < sums.length; i++) {
            sums[i] = equations.get(i).sum;
            for (Term term : equations.get(i).terms) {
                factors[i][term.variable] += term.factor;
            }
        }
        double[] values = new Simplex(most, factors, sums).greatest(aim);
        return values.length < most.length
                ? Optional.empty()
                : Optional.of(new Solution(Arrays.stream(values).boxed().toList()));
    }
}
