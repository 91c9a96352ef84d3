package buildup.engine.hold.statics;

import buildup.engine.hold.statics.Model.Weight;
import buildup.engine.solve.LinearProgram;
import buildup.engine.solve.LinearProgram.Solution;
import buildup.engine.solve.LinearProgram.Sum;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
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
        for (Cluster cluster : model.clusters()) {
            List<Weight> stay = cluster.carried(dead);
            List<Weight> grow = cluster.carried(live);
            if (cluster.rests(stay) && cluster.rests(grow)) {
                continue;
            }
            Optional<Double> greatest = factor(cluster, stay, grow, 1);
            if (greatest.isEmpty()) {
                return Optional.empty();
            }
            most = Math.min(most, greatest.get());
            // where weights that stay need those that grow, to keep them
            if (!grow.isEmpty() && !stay.isEmpty()) {
                from = Math.max(from, factor(cluster, stay, grow, -1).orElse(0.0));
            }
        }
        return from > most + Tolerance.SAME_SHARE * Math.max(1, most)
                ? Optional.empty()
                : Optional.of(most < NO_LIMIT * (1 - Tolerance.SAME_SHARE) ? most : Double.POSITIVE_INFINITY);
    }

    /** @param sign 1 for the greatest, -1 for the least */
    private static Optional<Double> factor(Cluster cluster, List<Weight> dead, List<Weight> live, int sign) {
        LinearProgram program = cluster.program();
        int factor = program.atLeastZero(NO_LIMIT);
        int[] numbers = new int[cluster.forces().size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = program.atLeastZero(cluster.forces().get(i).most());
        }
        for (List<Integer> tie : cluster.ties()) {
            program.equation(shares(program, cluster, tie, numbers), 1);
        }
        equations(program, cluster, numbers, dead, live, factor);
        return program.greatest(Sum.of(factor, sign)).map(found -> found.value(factor));
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
        for (Cluster cluster : model.with(row).clusters()) {
            OptionalDouble count = least(cluster, cluster.carried(weights), added);
            if (count.isEmpty()) {
                return count;
            }
            most = Math.max(most, count.getAsDouble());
        }
        return OptionalDouble.of(most);
    }

    private static OptionalDouble least(Cluster cluster, List<Weight> weights, Set<Force> added) {
        LinearProgram program = cluster.program();
        int count = program.atLeastZero(NO_LIMIT);
        int[] numbers = new int[cluster.forces().size()];
        for (int i = 0; i < numbers.length; i++) {
            Force one = cluster.forces().get(i);
            boolean more = added.contains(one) && one.most() > 0;
            numbers[i] = program.atLeastZero(more ? Double.POSITIVE_INFINITY : one.most());
        }
        for (List<Integer> tie : cluster.ties()) {
            boolean more = added.contains(cluster.forces().get(tie.get(0)));
            Sum shares = shares(program, cluster, tie, numbers);
            program.equation(more ? shares.add(count, -1) : shares, more ? 0 : 1);
        }
        int none = program.atLeastZero(0);
        equations(program, cluster, numbers, weights, List.of(), none);
        Optional<Solution> solution = program.greatest(Sum.of(count, -1));
        return solution.map(found -> OptionalDouble.of(found.value(count))).orElse(OptionalDouble.empty());
    }

    /**
     * What the forces of one fastener take, each as a share of its limit, and what they leave over: pull and side load at once
     * (NDS 2018, 12.4.2, from memory; for screws 12.4.1 allows more).
     */
    private static Sum shares(LinearProgram program, Cluster cluster, List<Integer> tie, int[] numbers) {
        Sum shares = Sum.of(program.atLeastZero(Double.POSITIVE_INFINITY), 1);
        for (int force : tie) {
            shares.add(numbers[force], 1 / cluster.forces().get(force).most());
        }
        return shares;
    }

    /** @param dead, live weights that the cluster carries, each on a body that moves by itself */
    private static void equations(
            LinearProgram program, Cluster cluster, int[] numbers, List<Weight> dead, List<Weight> live, int factor) {
        for (int place = 0; place < cluster.size(); place++) {
            int body = cluster.body(place);
            Point centroid = cluster.centroid(body);
            Sum across = new Sum();
            Sum up = new Sum();
            Sum turning = new Sum();
            for (int i = 0; i < numbers.length; i++) {
                Force force = cluster.forces().get(i);
                int sign = cluster.sign(force, place);
                if (sign != 0) {
                    double x = sign * force.way().x();
                    double y = sign * force.way().y();
                    across.add(numbers[i], x);
                    up.add(numbers[i], y);
                    double leverX = force.at().x() - centroid.x();
                    double leverY = force.at().y() - centroid.y();
                    turning.add(numbers[i], leverX * y - leverY * x);
                }
            }
            for (Weight weight : live) {
                if (weight.body() == body) {
                    up.add(factor, -weight.pounds());
                    turning.add(factor, -(weight.out() - centroid.x()) * weight.pounds());
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
