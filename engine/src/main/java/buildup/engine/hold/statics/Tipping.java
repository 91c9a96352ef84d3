package buildup.engine.hold.statics;

import buildup.engine.hold.statics.Model.Weight;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.List;

/**
 * Motions of a whole cluster as one body: a turn about the place of one of its contacts with what it stands on, either way,
 * or straight down. Most of what falls falls like that, and to try those takes less than to write a program down. None of
 * them says that a cluster stands.
 */
final class Tipping {
    /** By so much more than a program asks for a fall has to go on, that the two never differ. */
    private static final double PLAINLY = 100;

    private final Cluster cluster;
    private final List<Force> forces;
    private final List<Weight> carried;
    private final double all;
    /** How many bodies move as one with that of each place. */
    private final int[] counts;

    private Tipping(Cluster cluster, List<Weight> carried, double all) {
        this.cluster = cluster;
        this.forces = cluster.forces();
        this.counts = cluster.counts();
        this.carried = carried;
        this.all = all;
    }

    /**
     * Whether a cluster plainly falls as one body.
     *
     * @param carried weights, each on a body that moves by itself
     * @param all what all weights come to, pounds
     */
    static boolean falls(Cluster cluster, List<Weight> carried, double all) {
        return new Tipping(cluster, carried, all).falls();
    }

    private boolean falls() {
        if (falls(0, 0, -1)) {
            return true;
        }
        for (int i = 0; i < forces.size(); i++) {
            Force force = forces.get(i);
            if (force.kind() == Force.Kind.PUSH && outside(force) != 0) {
                // a turn about a place: as a shift of the origin and a turn about that
                double x = force.at().x();
                double y = force.at().y();
                if (falls(1, y, -x) || falls(-1, -y, x)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** 1 when a force acts on the cluster from outside, -1 when on what is outside, 0 within it. */
    private int outside(Force force) {
        boolean on = cluster.moves(force.on());
        boolean against = cluster.moves(force.against());
        return on == against ? 0 : on ? 1 : -1;
    }

    /**
     * Whether it goes on by a motion, told as the turn about the origin, counterclockwise, and the shift there.
     */
    private boolean falls(double turn, double out, double up) {
        double work = 0;
        for (int i = 0; i < carried.size(); i++) {
            Weight weight = carried.get(i);
            work -= weight.pounds() * (up + turn * weight.out());
        }
        double enough = PLAINLY * Tolerance.LEAST_OVERHANG * all * size(turn, out, up);
        if (work <= enough) {
            return false;
        }
        double[] parts = new double[forces.size()];
        for (int i = 0; i < parts.length; i++) {
            Force force = forces.get(i);
            int sign = outside(force);
            Point at = force.at();
            Point way = force.way();
            parts[i] = sign * (way.x() * (out - turn * at.y()) + way.y() * (up + turn * at.x()));
            if (parts[i] < 0 && !force.limited()) {
                return false;
            }
        }
        for (List<Integer> tie : cluster.ties()) {
            // of one fastener the force that resists most
            double resists = 0;
            for (int force : tie) {
                resists = Math.max(resists, -parts[force] * forces.get(force).most());
            }
            work -= resists;
        }
        return work > enough;
    }

    /** How great a motion is, as a program measures it. */
    private double size(double turn, double out, double up) {
        double size = 0;
        for (int place = 0; place < cluster.size(); place++) {
            Point centroid = cluster.centroid(cluster.body(place));
            double shift = Math.abs(out - turn * centroid.y()) + Math.abs(up + turn * centroid.x());
            size += counts[place] * (shift / Mechanism.FAR + Math.abs(turn));
        }
        return size;
    }
}
