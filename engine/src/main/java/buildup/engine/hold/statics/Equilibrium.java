package buildup.engine.hold.statics;

import buildup.engine.hold.statics.Model.Weight;
import buildup.engine.solve.LinearProgram;
import buildup.engine.solve.LinearProgram.Solution;
import buildup.engine.solve.LinearProgram.Term;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Forces that keep a model at rest: two forces and one moment in balance on every piece. A distribution of forces that
 * keeps all limits proves the load that goes with it: the lower-bound theorem (Drucker, Prager and Greenberg, Extended
 * limit design theorems for continuous media, Quarterly of Applied Mathematics 9, 1952; for rigid blocks Livesley,
 * International Journal for Numerical Methods in Engineering 12, 1978; both from memory).
 */
public final class Equilibrium {
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
    public static Optional<Double> factor(Model model, List<Weight> dead, List<Weight> live) {
        double from = 0;
        double most = NO_LIMIT;
        for (Cluster cluster : Clusters.of(model)) {
            if (cluster.rests(cluster.carried(dead)) && cluster.rests(cluster.carried(live))) {
                continue;
            }
            Optional<Double> greatest = factor(cluster, dead, live, 1);
            if (greatest.isEmpty()) {
                return Optional.empty();
            }
            most = Math.min(most, greatest.get());
            // where weights that stay need those that grow, to keep them
            if (!cluster.carried(live).isEmpty() && !cluster.carried(dead).isEmpty()) {
                from = Math.max(from, factor(cluster, dead, live, -1).orElse(0.0));
            }
        }
        return from > most + Tolerance.SAME_SHARE * Math.max(1, most)
                ? Optional.empty()
                : Optional.of(most < NO_LIMIT * (1 - Tolerance.SAME_SHARE) ? most : Double.POSITIVE_INFINITY);
    }

    /** @param sign 1 for the greatest, -1 for the least */
    private static Optional<Double> factor(Cluster cluster, List<Weight> dead, List<Weight> live, int sign) {
        LinearProgram program = new LinearProgram();
        int factor = program.atLeastZero(NO_LIMIT);
        List<Integer> numbers = new ArrayList<>();
        cluster.forces().forEach(force -> numbers.add(program.atLeastZero(force.most())));
        equations(program, cluster, numbers, cluster.carried(dead), cluster.carried(live), factor);
        return program.greatest(List.of(new Term(factor, sign))).map(found -> found.value(factor));
    }

    /**
     * The least number of fasteners in a foot of run that keeps a model at rest.
     *
     * @param row what one fastener in a foot of run does
     * @return nothing when however many do not
     */
    public static OptionalDouble least(Model model, List<Weight> weights, List<Tie> row) {
        Set<Force> added =
                row.stream().flatMap(tie -> Model.forces(tie).stream()).collect(Collectors.toSet());
        double most = 0;
        for (Cluster cluster : Clusters.of(model.with(row))) {
            OptionalDouble count = least(cluster, cluster.carried(weights), added);
            if (count.isEmpty()) {
                return count;
            }
            most = Math.max(most, count.getAsDouble());
        }
        return OptionalDouble.of(most);
    }

    private static OptionalDouble least(Cluster cluster, List<Weight> weights, Set<Force> added) {
        LinearProgram program = new LinearProgram();
        int count = program.atLeastZero(NO_LIMIT);
        List<Integer> numbers = new ArrayList<>();
        for (Force one : cluster.forces()) {
            boolean more = added.contains(one);
            int force = program.atLeastZero(more ? Double.POSITIVE_INFINITY : one.most());
            numbers.add(force);
            if (more) {
                int spare = program.atLeastZero(Double.POSITIVE_INFINITY);
                program.equation(List.of(new Term(force, 1), new Term(spare, 1), new Term(count, -one.most())), 0);
            }
        }
        int none = program.atLeastZero(0);
        equations(program, cluster, numbers, weights, List.of(), none);
        Optional<Solution> solution = program.greatest(List.of(new Term(count, -1)));
        return solution.map(found -> OptionalDouble.of(found.value(count))).orElse(OptionalDouble.empty());
    }

    private static void equations(
            LinearProgram program,
            Cluster cluster,
            List<Integer> numbers,
            List<Weight> dead,
            List<Weight> live,
            int factor) {
        for (int body : cluster.free()) {
            Point centroid = cluster.centroid(body);
            List<Term> across = new ArrayList<>();
            List<Term> up = new ArrayList<>();
            List<Term> turning = new ArrayList<>();
            for (int i = 0; i < cluster.forces().size(); i++) {
                Force force = cluster.forces().get(i);
                int sign = cluster.sign(force, body);
                if (sign != 0) {
                    Point way = force.way().times(sign);
                    across.add(new Term(numbers.get(i), way.x()));
                    up.add(new Term(numbers.get(i), way.y()));
                    turning.add(
                            new Term(numbers.get(i), force.at().minus(centroid).cross(way)));
                }
            }
            for (Weight weight : live) {
                if (cluster.lead(weight.body()) == body) {
                    up.add(new Term(factor, -weight.pounds()));
                    turning.add(new Term(factor, -(weight.out() - centroid.x()) * weight.pounds()));
                }
            }
            double down = 0;
            double moment = 0;
            for (Weight weight : dead) {
                if (cluster.lead(weight.body()) == body) {
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
