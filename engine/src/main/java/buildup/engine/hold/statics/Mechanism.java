package buildup.engine.hold.statics;

import buildup.engine.hold.statics.Model.Weight;
import buildup.engine.solve.LinearProgram;
import buildup.engine.solve.LinearProgram.Solution;
import buildup.engine.solve.LinearProgram.Sum;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How a model moves: small shifts of its pieces that no contact resists, by which weights come down farther than fasteners
 * resist. It is the dual of {@link Equilibrium}: there is such a motion if and only if there is no equilibrium (upper-bound
 * theorem, as there; Baker and Heyman, Plastic Design of Frames 1, 1969; from memory).
 */
public final class Mechanism {
    /** A shift of so many inches counts as much as a turn of one radian: a fall shows itself before it tips. */
    static final double FAR = 100;

    /** What parting from a wall counts, against 1 for parting from a piece or from a bearing. */
    private static final double LEAVING = 0.01;

    /** Each body that moves by itself has six numbers: out and in, up and down, turning counterclockwise and clockwise. */
    private static final int NUMBERS = 6;

    private final Cluster cluster;
    private final LinearProgram program;

    /** What weights do less what fasteners take. */
    private final Sum work = new Sum();

    /** How far its fastener gives, by force; -1 for one that does not. */
    private final int[] yields;

    /** How far a force gives for every inch that its fastener does, told by the strongest force of that. */
    private final double[] shares;

    /** How far contacts part and fasteners give, each with what that counts. */
    private final Sum slack = new Sum();

    /** How far two bodies part: written anew for each force. */
    private final Sum parting = new Sum();

    /** How far contacts rub. */
    private final Sum rubs = new Sum();

    /** The two variables of the last rubbing that was written down. */
    private int lastRub = -1;

    private final double all;

    /**
     * The program of a motion.
     *
     * @param all what all weights of the model that are looked at come to, pounds
     * @param rubbing whether it matters how far contacts rub
     */
    private Mechanism(Cluster cluster, double all, boolean closing, boolean rubbing) {
        this.cluster = cluster;
        this.all = all;
        this.program = cluster.program();
        for (int i = 0; i < NUMBERS * cluster.size(); i++) {
            program.atLeastZero(Double.POSITIVE_INFINITY);
        }
        this.yields = new int[cluster.forces().size()];
        this.shares = new double[yields.length];
        Arrays.fill(yields, -1);
        for (List<Integer> tie : cluster.ties()) {
            // one fastener gives at the cost of whichever of its forces resists most: shares of limits add up
            int gives = program.atLeastZero(Double.POSITIVE_INFINITY);
            double most = most(tie);
            for (int force : tie) {
                yields[force] = gives;
                shares[force] = most / cluster.forces().get(force).most();
            }
            work.add(gives, -most);
            slack.add(gives, 1);
        }
        for (int i = 0; i < yields.length; i++) {
            resist(i, closing, rubbing);
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
    public static boolean falls(Model model, Loading loading) {
        for (Cluster cluster : model.clusters()) {
            if (loading.falls(cluster)) {
                return true;
            }
        }
        return false;
    }

    static boolean falls(Cluster cluster, Loading loading) {
        List<Weight> carried = cluster.carried(loading.weights());
        if (carried.isEmpty() || cluster.rests(carried)) {
            return false;
        }
        if (Tipping.falls(cluster, carried, loading.pounds())) {
            return true;
        }
        Mechanism mechanism = new Mechanism(cluster, loading.pounds(), false, false);
        mechanism.pulls(carried, mechanism.work);
        Sum sizes = mechanism.sizes(1);
        sizes.add(mechanism.program.atLeastZero(Double.POSITIVE_INFINITY), 1);
        mechanism.program.equation(sizes, 1);
        Optional<Solution> found = mechanism.program.greatest(mechanism.work);
        return found.isPresent() && mechanism.work.value(found.get()) > Tolerance.LEAST_OVERHANG * mechanism.all;
    }

    private static double sum(List<Weight> weights) {
        double sum = 0;
        for (Weight weight : weights) {
            sum += weight.pounds();
        }
        return sum;
    }

    /** A motion of one cluster, and what it costs against others: the greater, the less. */
    record Ranked(double rank, Movement movement) {}

    /**
     * The motion by which a model begins to fall; nothing when it stands. Of all such motions the one in which pieces part,
     * rub and pull at fasteners least for the work that weights do: what can turn as one does not come apart.
     */
    public static Optional<Movement> falling(Model model, Loading loading) {
        Optional<Ranked> least = Optional.empty();
        for (Cluster cluster : model.clusters()) {
            least = lesser(least, loading.falling(cluster));
        }
        return least.map(Ranked::movement);
    }

    /** The one that costs less; the earlier one of two that cost the same. */
    private static Optional<Ranked> lesser(Optional<Ranked> one, Optional<Ranked> other) {
        boolean first = one.isPresent()
                && (other.isEmpty() || one.get().rank() >= other.get().rank());
        return first ? one : other;
    }

    static Optional<Ranked> falling(Cluster cluster, Loading loading) {
        if (!loading.falls(cluster)) {
            return Optional.empty();
        }
        Mechanism mechanism = new Mechanism(cluster, loading.pounds(), false, true);
        mechanism.pulls(cluster.carried(loading.weights()), mechanism.work);
        mechanism.program.equation(mechanism.work, mechanism.all);
        Sum aim = mechanism
                .sizes(-Tolerance.COST_OF_MOVING)
                .add(mechanism.slack, -1)
                .add(mechanism.rubs, -1);
        return mechanism.program.greatest(aim).map(found -> new Ranked(aim.value(found), mechanism.movement(found)));
    }

    /** The motion by which gaps close until the model stands; the model must stand with these contacts closed. */
    public static Optional<Movement> closing(Model model, Loading loading) {
        double all = loading.pounds();
        List<Movement> movements = new ArrayList<>();
        for (Cluster cluster : model.clusters()) {
            Mechanism mechanism = new Mechanism(cluster, all, true, true);
            mechanism.pulls(cluster.carried(loading.weights()), mechanism.work);
            Sum aim = mechanism
                    .sizes(-Tolerance.COST_OF_MOVING * all)
                    .add(mechanism.work, 1)
                    .add(mechanism.rubs, -Tolerance.COST_OF_MOVING * all);
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
        double growing = sum(live);
        Optional<Ranked> least = Optional.empty();
        for (Cluster cluster : model.clusters()) {
            List<Weight> grow = cluster.carried(live);
            if (!grow.isEmpty()) {
                least = lesser(least, collapse(cluster, cluster.carried(dead), grow, growing));
            }
        }
        return least.map(Ranked::movement);
    }

    private static Optional<Ranked> collapse(Cluster cluster, List<Weight> dead, List<Weight> live, double all) {
        Mechanism mechanism = new Mechanism(cluster, all, false, true);
        mechanism.pulls(dead, mechanism.work);
        Sum growing = new Sum();
        mechanism.pulls(live, growing);
        mechanism.program.equation(growing, all);
        Sum aim = new Sum().add(mechanism.work, 1).add(mechanism.rubs, -Tolerance.COST_OF_RUBBING * all);
        return mechanism.program.greatest(aim).map(found -> new Ranked(aim.value(found), mechanism.movement(found)));
    }

    /** The work of weights on bodies that move by themselves: how far each comes down. */
    private void pulls(List<Weight> weights, Sum out) {
        for (Weight weight : weights) {
            double pounds = weight.pounds();
            double arm = weight.out() - cluster.centroid(weight.body()).x();
            int at = NUMBERS * cluster.place(weight.body());
            out.add(at + 2, -pounds);
            out.add(at + 3, pounds);
            out.add(at + 4, -pounds * arm);
            out.add(at + 5, pounds * arm);
        }
    }

    private Sum sizes(double times) {
        Sum sizes = new Sum();
        int[] counts = cluster.counts();
        for (int place = 0; place < cluster.size(); place++) {
            double each = times * counts[place];
            for (int i = 0; i < NUMBERS; i++) {
                sizes.add(NUMBERS * place + i, i < 4 ? each / FAR : each);
            }
        }
        return sizes;
    }

    /**
     * Keeps what a force keeps: the two do not come nearer along it by more than the gap; or, where it has a limit, they
     * may, at the cost of that limit.
     */
    private void resist(int number, boolean closing, boolean rubbing) {
        Force force = cluster.forces().get(number);
        if (force.limited() && yields[number] < 0) {
            // it holds nothing
            return;
        }
        part(force, force.way());
        int parts = program.atLeastZero(Double.POSITIVE_INFINITY);
        parting.add(parts, -1);
        if (force.limited()) {
            parting.add(yields[number], shares[number]);
        }
        program.equation(parting, closing ? -force.gap() : 0);
        if (force.kind() == Force.Kind.PUSH && force.gap() <= 0) {
            slack.add(parts, leaves(force) ? LEAVING : 1);
            if (rubbing) {
                if (lastRub >= 0 && number > 0 && onOneFlat(cluster.forces().get(number - 1), force)) {
                    rubs.add(lastRub, 1).add(lastRub + 1, 1);
                } else {
                    rub(force);
                }
            }
        }
    }

    private double most(List<Integer> tie) {
        return tie.stream()
                .mapToDouble(force -> cluster.forces().get(force).most())
                .max()
                .orElseThrow();
    }

    /** Whether a contact is with something that stands beside: what tips away from a wall has not come apart. */
    private boolean leaves(Force force) {
        boolean beside = Math.abs(force.way().x()) > Math.abs(force.way().y());
        return beside && !(piece(force.on()) && piece(force.against()));
    }

    private boolean piece(int body) {
        return body != Force.EARTH && cluster.section().body(body).inStack();
    }

    /** Whether two pushes are those at both ends of one flat: there the two bodies rub by the same. */
    private static boolean onOneFlat(Force one, Force other) {
        return one.kind() == Force.Kind.PUSH
                && one.gap() <= 0
                && one.on() == other.on()
                && one.against() == other.against()
                && one.way().equals(other.way())
                && Math.abs(other.at().minus(one.at()).dot(one.way())) <= Tolerance.COINCIDENT;
    }

    private void rub(Force force) {
        part(force, force.way().left().unit());
        lastRub = program.unknowns();
        for (int sign = 1; sign >= -1; sign -= 2) {
            int way = program.atLeastZero(Double.POSITIVE_INFINITY);
            parting.add(way, sign);
            rubs.add(way, 1);
        }
        program.equation(parting, 0);
    }

    /** Writes down how far the two bodies of a force part in a direction. */
    private void part(Force force, Point way) {
        parting.clear();
        part(cluster.place(force.on()), 1, force.at(), way);
        part(cluster.place(force.against()), -1, force.at(), way);
    }

    private void part(int place, int sign, Point spot, Point way) {
        if (place < 0) {
            return;
        }
        int at = NUMBERS * place;
        Point centroid = cluster.centroid(cluster.body(place));
        double lever = (spot.x() - centroid.x()) * way.y() - (spot.y() - centroid.y()) * way.x();
        for (int i = 0; i < 2; i++) {
            double half = i == 0 ? sign : -sign;
            parting.add(at + i, half * way.x());
            parting.add(at + 2 + i, half * way.y());
            parting.add(at + 4 + i, half * lever);
        }
    }

    private Movement movement(Solution found) {
        List<Shift> shifts = new ArrayList<>();
        for (int body = 0; body < cluster.section().bodies().size(); body++) {
            shifts.add(shift(found, body));
        }
        Movement movement = new Movement(shifts, Optional.empty());
        double most = Tolerance.LEAST_WORK * all;
        Optional<Force> gives = Optional.empty();
        for (int i = 0; i < yields.length; i++) {
            Force force = cluster.forces().get(i);
            double taken = yields[i] < 0 ? 0 : force.most() * -movement.parts(force);
            // of two that take the same, as the pull and the side load of one nail at its limit may, the first
            if (taken > most * (1 + Tolerance.SAME_MOTION)) {
                most = taken;
                gives = Optional.of(force);
            }
        }
        return new Movement(shifts, gives);
    }

    private Shift shift(Solution found, int body) {
        int place = cluster.place(body);
        if (place < 0) {
            return Shift.NONE;
        }
        int at = NUMBERS * place;
        double out = found.value(at) - found.value(at + 1);
        double up = found.value(at + 2) - found.value(at + 3);
        double turn = found.value(at + 4) - found.value(at + 5);
        Shift leading = new Shift(cluster.centroid(cluster.body(place)), new Point(out, up), turn);
        Point centroid = cluster.centroid(body);
        return new Shift(centroid, leading.of(centroid), turn);
    }
}
