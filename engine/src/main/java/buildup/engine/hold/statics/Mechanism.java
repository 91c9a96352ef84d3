package buildup.engine.hold.statics;

import buildup.engine.hold.statics.Model.Weight;
import buildup.engine.solve.LinearProgram;
import buildup.engine.solve.LinearProgram.Solution;
import buildup.engine.solve.LinearProgram.Term;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How a model moves: small shifts of its pieces that no contact resists, by which weights come down farther than fasteners
 * resist. It is the dual of {@link Equilibrium}: there is such a motion if and only if there is no equilibrium (upper-bound
 * theorem, as there; Baker and Heyman, Plastic Design of Frames 1, 1969; from memory).
 */
public final class Mechanism {
    /** A shift of so many inches counts as much as a turn of one radian: a fall shows itself before it tips. */
    private static final double FAR = 100;

    /** What parting from a wall counts, against 1 for parting from a piece or from a bearing. */
    private static final double LEAVING = 0.01;

    private final Cluster cluster;
    private final LinearProgram program = new LinearProgram();
    /** For each body that moves by itself the first of its six numbers, -1 for the others: out and in, up and down, turning counterclockwise and clockwise. */
    private final int[] first;

    /** What weights do less what fasteners take. */
    private final List<Term> work = new ArrayList<>();

    /** How far fasteners give, by force; -1 for one that does not. */
    private final List<Integer> yields = new ArrayList<>();

    /** How far contacts part and fasteners give, each with what that counts. */
    private final List<Term> slack = new ArrayList<>();

    private final List<Integer> rubs = new ArrayList<>();
    private final double all;

    /** @param all what all weights of the model that are looked at come to, pounds */
    private Mechanism(Cluster cluster, double all, boolean closing) {
        this.cluster = cluster;
        this.all = all;
        this.first = new int[cluster.section().bodies().size()];
        Arrays.fill(first, -1);
        for (int body : cluster.free()) {
            first[body] = program.atLeastZero(Double.POSITIVE_INFINITY);
            for (int i = 1; i < 6; i++) {
                program.atLeastZero(Double.POSITIVE_INFINITY);
            }
        }
        for (Force force : cluster.forces()) {
            yields.add(resist(force, closing));
        }
    }

    /** How one body moves: a shift of its centroid and a turn about it, counterclockwise, radians. */
    public record Shift(Point centroid, Point by, double turn) {
        static final Shift NONE = new Shift(Point.ORIGIN, Point.ORIGIN, 0);

        /** How far a place on it moves. */
        public Point of(Point p) {
            Point arm = p.minus(centroid);
            return by.plus(arm.left().times(turn));
        }
    }

    /**
     * A motion.
     *
     * @param shifts of all bodies, by their numbers
     * @param gives what gives the most resistance, if any fastener gives
     */
    public record Movement(List<Shift> shifts, Optional<Force> gives) {
        public Movement {
            shifts = List.copyOf(shifts);
        }

        /** How far a place on a body moves; not at all when it stands. */
        public Point of(int body, Point p) {
            return body == Force.EARTH ? Point.ORIGIN : shifts.get(body).of(p);
        }

        /** How far two bodies part at the place of a force, along it. */
        public double parts(Force force) {
            return between(force).dot(force.way());
        }

        /** How far the first of the two moves against the other at the place of a force. */
        public Point between(Force force) {
            return of(force.on(), force.at()).minus(of(force.against(), force.at()));
        }
    }

    /** Whether a model falls. */
    public static boolean falls(Model model, List<Weight> weights) {
        return Clusters.of(model).stream().anyMatch(cluster -> falls(cluster, weights));
    }

    private static boolean falls(Cluster cluster, List<Weight> weights) {
        List<Weight> carried = cluster.carried(weights);
        if (carried.isEmpty() || cluster.rests(carried)) {
            return false;
        }
        Mechanism mechanism = new Mechanism(cluster, sum(weights), false);
        mechanism.pulls(carried, mechanism.work);
        List<Term> sizes = mechanism.sizes(1);
        sizes.add(new Term(mechanism.program.atLeastZero(Double.POSITIVE_INFINITY), 1));
        mechanism.program.equation(sizes, 1);
        List<Term> aim = mechanism.work;
        return mechanism
                .program
                .greatest(aim)
                .filter(found -> value(found, aim) > Tolerance.LEAST_OVERHANG * mechanism.all)
                .isPresent();
    }

    private static double sum(List<Weight> weights) {
        return weights.stream().mapToDouble(Weight::pounds).sum();
    }

    /** A motion of one cluster, and what it costs against others: the greater, the less. */
    public record Ranked(double rank, Movement movement) {}

    /**
     * The motion by which a model begins to fall; nothing when it stands. Of all such motions the one in which pieces part,
     * rub and pull at fasteners least for the work that weights do: what can turn as one does not come apart.
     *
     * @param known motions of clusters under these weights, as far as they have been asked for; those that are asked now are added
     */
    public static Optional<Movement> falling(
            Model model, List<Weight> weights, Map<Cluster.Key, Optional<Ranked>> known) {
        return Clusters.of(model).stream()
                .flatMap(cluster -> known.computeIfAbsent(cluster.key(), key -> falling(cluster, weights)).stream())
                .max(Comparator.comparingDouble(Ranked::rank))
                .map(Ranked::movement);
    }

    private static Optional<Ranked> falling(Cluster cluster, List<Weight> weights) {
        if (!falls(cluster, weights)) {
            return Optional.empty();
        }
        Mechanism mechanism = new Mechanism(cluster, sum(weights), false);
        mechanism.pulls(cluster.carried(weights), mechanism.work);
        mechanism.program.equation(mechanism.work, mechanism.all);
        List<Term> aim = mechanism.sizes(-Tolerance.COST_OF_MOVING);
        mechanism.slack.forEach(one -> aim.add(new Term(one.variable(), -one.factor())));
        mechanism.rubs.forEach(one -> aim.add(new Term(one, -1)));
        return mechanism.program.greatest(aim).map(found -> new Ranked(value(found, aim), mechanism.movement(found)));
    }

    /** The motion by which gaps close until the model stands; the model must stand with these contacts closed. */
    public static Optional<Movement> closing(Model model, List<Weight> weights) {
        double all = sum(weights);
        List<Movement> movements = new ArrayList<>();
        for (Cluster cluster : Clusters.of(model)) {
            Mechanism mechanism = new Mechanism(cluster, all, true);
            mechanism.pulls(cluster.carried(weights), mechanism.work);
            List<Term> aim = mechanism.sizes(-Tolerance.COST_OF_MOVING * all);
            aim.addAll(mechanism.work);
            mechanism.rubs.forEach(one -> aim.add(new Term(one, -Tolerance.COST_OF_MOVING * all)));
            Optional<Solution> found = mechanism.program.greatest(aim);
            if (found.isEmpty()) {
                return Optional.empty();
            }
            movements.add(mechanism.movement(found.get()));
        }
        return movements.stream().reduce(Mechanism::together);
    }

    /** Small motions of different clusters, one upon the other. */
    private static Movement together(Movement one, Movement other) {
        List<Shift> shifts = new ArrayList<>();
        for (int body = 0; body < one.shifts.size(); body++) {
            Shift a = one.shifts.get(body);
            Shift b = other.shifts.get(body);
            // what stands in one of them has its place from the other
            Point centroid = a.equals(Shift.NONE) ? b.centroid : a.centroid;
            shifts.add(new Shift(centroid, a.by.plus(b.by), a.turn + b.turn));
        }
        return new Movement(shifts, one.gives.or(other::gives));
    }

    /** The motion that governs when some weights grow until a model no longer stands; nothing when they may grow freely. */
    public static Optional<Movement> collapse(Model model, List<Weight> dead, List<Weight> live) {
        return Clusters.of(model).stream()
                .filter(cluster -> !cluster.carried(live).isEmpty())
                .flatMap(cluster -> collapse(cluster, dead, live).stream())
                .max(Comparator.comparingDouble(Ranked::rank))
                .map(Ranked::movement);
    }

    private static Optional<Ranked> collapse(Cluster cluster, List<Weight> dead, List<Weight> live) {
        Mechanism mechanism = new Mechanism(cluster, sum(live), false);
        mechanism.pulls(cluster.carried(dead), mechanism.work);
        List<Term> growing = new ArrayList<>();
        mechanism.pulls(cluster.carried(live), growing);
        mechanism.program.equation(growing, mechanism.all);
        List<Term> aim = new ArrayList<>(mechanism.work);
        mechanism.rubs.forEach(one -> aim.add(new Term(one, -Tolerance.COST_OF_RUBBING * mechanism.all)));
        return mechanism.program.greatest(aim).map(found -> new Ranked(value(found, aim), mechanism.movement(found)));
    }

    /** The work of weights: how far each comes down. */
    private void pulls(List<Weight> weights, List<Term> out) {
        for (Weight weight : weights) {
            double pounds = weight.pounds();
            int lead = cluster.lead(weight.body());
            double arm = weight.out() - cluster.centroid(lead).x();
            int at = first[lead];
            out.add(new Term(at + 2, -pounds));
            out.add(new Term(at + 3, pounds));
            out.add(new Term(at + 4, -pounds * arm));
            out.add(new Term(at + 5, pounds * arm));
        }
    }

    private List<Term> sizes(double times) {
        List<Term> sizes = new ArrayList<>();
        for (int body : cluster.free()) {
            double each = times * cluster.count(body);
            for (int i = 0; i < 6; i++) {
                sizes.add(new Term(first[body] + i, i < 4 ? each / FAR : each));
            }
        }
        return sizes;
    }

    /**
     * Keeps what a force keeps: the two do not come nearer along it by more than the gap; or, where it has a limit, they
     * may, at the cost of that limit.
     *
     * @return the number of how far it gives, -1 when it does not
     */
    private int resist(Force force, boolean closing) {
        List<Term> parting = new ArrayList<>();
        parting(force, force.way(), parting);
        int parts = program.atLeastZero(Double.POSITIVE_INFINITY);
        parting.add(new Term(parts, -1));
        int gives = -1;
        if (force.limited()) {
            gives = program.atLeastZero(Double.POSITIVE_INFINITY);
            parting.add(new Term(gives, 1));
            work.add(new Term(gives, -force.most()));
            slack.add(new Term(gives, 1));
        }
        program.equation(parting, closing ? -force.gap() : 0);
        if (force.kind() == Force.Kind.PUSH && force.gap() <= 0) {
            slack.add(new Term(parts, leaves(force) ? LEAVING : 1));
            rub(force);
        }
        return gives;
    }

    /** Whether a contact is with something that stands beside: what tips away from a wall has not come apart. */
    private boolean leaves(Force force) {
        boolean beside = Math.abs(force.way().x()) > Math.abs(force.way().y());
        return beside && !(piece(force.on()) && piece(force.against()));
    }

    private boolean piece(int body) {
        return body != Force.EARTH && cluster.section().body(body).inStack();
    }

    private void rub(Force force) {
        List<Term> rubbing = new ArrayList<>();
        parting(force, force.way().left().unit(), rubbing);
        for (int sign : List.of(1, -1)) {
            int way = program.atLeastZero(Double.POSITIVE_INFINITY);
            rubbing.add(new Term(way, sign));
            rubs.add(way);
        }
        program.equation(rubbing, 0);
    }

    private void parting(Force force, Point way, List<Term> out) {
        for (int body : List.of(force.on(), force.against())) {
            if (cluster.moves(body)) {
                int lead = cluster.lead(body);
                int at = first[lead];
                double sign = force.sign(body);
                double lever = force.at().minus(cluster.centroid(lead)).cross(way);
                for (int i = 0; i < 2; i++) {
                    double half = i == 0 ? sign : -sign;
                    out.add(new Term(at + i, half * way.x()));
                    out.add(new Term(at + 2 + i, half * way.y()));
                    out.add(new Term(at + 4 + i, half * lever));
                }
            }
        }
    }

    private static double value(Solution found, List<Term> aim) {
        return aim.stream()
                .mapToDouble(term -> term.factor() * found.value(term.variable()))
                .sum();
    }

    private Movement movement(Solution found) {
        List<Shift> shifts = new ArrayList<>();
        for (int body = 0; body < first.length; body++) {
            shifts.add(shift(found, body));
        }
        return new Movement(
                shifts,
                IntStream.range(0, yields.size())
                        .filter(i -> work(found, i) > 0)
                        .boxed()
                        .max(Comparator.comparingDouble(i -> work(found, i)))
                        .map(cluster.forces()::get));
    }

    private Shift shift(Solution found, int body) {
        if (!cluster.moves(body)) {
            return Shift.NONE;
        }
        int lead = cluster.lead(body);
        int at = first[lead];
        double out = found.value(at) - found.value(at + 1);
        double up = found.value(at + 2) - found.value(at + 3);
        double turn = found.value(at + 4) - found.value(at + 5);
        Shift leading = new Shift(cluster.centroid(lead), new Point(out, up), turn);
        Point centroid = cluster.centroid(body);
        return new Shift(centroid, leading.of(centroid), turn);
    }

    private double work(Solution found, int force) {
        int gives = yields.get(force);
        double work = gives < 0 ? 0 : cluster.forces().get(force).most() * found.value(gives);
        return work > Tolerance.LEAST_WORK * all ? work : 0;
    }
}
