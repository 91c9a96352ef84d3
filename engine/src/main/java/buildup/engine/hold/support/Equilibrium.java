package buildup.engine.hold.support;

import buildup.engine.hold.support.Model.Weight;
import buildup.engine.solve.LinearProgram;
import buildup.engine.solve.LinearProgram.Solution;
import buildup.engine.solve.LinearProgram.Term;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Forces that keep a model at rest: two forces and one moment in balance on every piece. A distribution of forces that
 * keeps all limits proves the load that goes with it: the lower-bound theorem (Drucker, Prager and Greenberg, Extended
 * limit design theorems for continuous media, Quarterly of Applied Mathematics 9, 1952; for rigid blocks Livesley,
 * International Journal for Numerical Methods in Engineering 12, 1978; both from memory).
 */
final class Equilibrium {
    /** A factor beyond which nobody asks: it does not matter. */
    static final double NO_LIMIT = 1e4;

    private Equilibrium() {}

    /**
     * The greatest factor on some weights that still has an equilibrium, infinite when it does not matter; nothing when
     * there is none whatever the factor.
     *
     * @param dead weights that stay
     * @param live weights that grow together
     */
    static Optional<Double> factor(Model model, List<Weight> dead, List<Weight> live) {
        LinearProgram program = new LinearProgram();
        int factor = program.atLeastZero(NO_LIMIT);
        List<Integer> numbers = new ArrayList<>();
        model.forces().forEach(force -> numbers.add(program.atLeastZero(force.most())));
        equations(program, model, model.forces(), numbers, dead, live, factor);
        // the solver keeps bounds within its own tolerance
        return program.greatest(factor)
                .map(found -> found.value(factor))
                .map(found -> found < NO_LIMIT * (1 - Tolerance.SAME_SHARE) ? found : Double.POSITIVE_INFINITY);
    }

    /**
     * The least number of fasteners in a foot of run that keeps a model at rest.
     *
     * @param row what one fastener in a foot of run does
     * @return nothing when however many do not
     */
    static OptionalDouble least(Model model, List<Weight> weights, List<Tie> row) {
        Model more = model.with(row);
        int before = model.forces().size();
        LinearProgram program = new LinearProgram();
        int count = program.atLeastZero(NO_LIMIT);
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < more.forces().size(); i++) {
            double most = more.forces().get(i).most();
            int force = program.atLeastZero(i < before ? most : Double.POSITIVE_INFINITY);
            numbers.add(force);
            if (i >= before) {
                int spare = program.atLeastZero(Double.POSITIVE_INFINITY);
                program.equation(List.of(new Term(force, 1), new Term(spare, 1), new Term(count, -most)), 0);
            }
        }
        int none = program.atLeastZero(0);
        equations(program, more, more.forces(), numbers, weights, List.of(), none);
        Optional<Solution> solution = program.greatest(List.of(new Term(count, -1)));
        return solution.map(found -> OptionalDouble.of(found.value(count))).orElse(OptionalDouble.empty());
    }

    private static void equations(
            LinearProgram program,
            Model model,
            List<Force> forces,
            List<Integer> numbers,
            List<Weight> dead,
            List<Weight> live,
            int factor) {
        for (int body : model.free()) {
            Point centroid = model.centroid(body);
            List<Term> across = new ArrayList<>();
            List<Term> up = new ArrayList<>();
            List<Term> turning = new ArrayList<>();
            for (int i = 0; i < forces.size(); i++) {
                Force force = forces.get(i);
                int sign = force.sign(body);
                if (sign != 0) {
                    Point way = force.way().times(sign);
                    across.add(new Term(numbers.get(i), way.x()));
                    up.add(new Term(numbers.get(i), way.y()));
                    turning.add(
                            new Term(numbers.get(i), force.at().minus(centroid).cross(way)));
                }
            }
            for (Weight weight : live) {
                if (weight.body() == body) {
                    up.add(new Term(factor, -weight.pounds()));
                    turning.add(new Term(factor, -(weight.out() - centroid.x()) * weight.pounds()));
                }
            }
            double down = 0;
            double moment = 0;
            for (Weight weight : dead) {
                if (weight.body() == body) {
                    down += weight.pounds();
                    moment += (weight.out() - centroid.x()) * weight.pounds();
                }
            }
            program.equation(across, 0);
            program.equation(up, down);
            program.equation(turning, moment);
        }
    }
}
