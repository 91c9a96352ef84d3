package buildup.engine.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

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
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        List<Variable> variables = new ArrayList<>();
        for (int i = 0; i < unknowns.size(); i++) {
            Variable made = model.newVariable("v" + i).lower(0);
            if (Double.isFinite(unknowns.get(i).most)) {
                made.upper(unknowns.get(i).most);
            }
            variables.add(made);
        }
        Expression aim = model.newExpression("aim").weight(1);
        sum.forEach(term -> aim.add(variables.get(term.variable), term.factor));
        for (int i = 0; i < equations.size(); i++) {
            Equation equation = equations.get(i);
            Expression row = model.newExpression("e" + i).level(equation.sum);
            for (Term term : equation.terms) {
                row.add(variables.get(term.variable), term.factor);
            }
        }
        Optimisation.Result result = model.maximise();
        if (!result.getState().isFeasible()) {
            return Optional.empty();
        }
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < unknowns.size(); i++) {
            values.add(result.doubleValue(i));
        }
        return Optional.of(new Solution(values));
    }
}
