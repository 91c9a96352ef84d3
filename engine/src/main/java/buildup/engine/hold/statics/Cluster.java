package buildup.engine.hold.statics;

import buildup.engine.hold.statics.Model.Weight;
import buildup.engine.section.compose.Section;
import buildup.engine.solve.LinearProgram;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A part of a model that can be asked by itself: bodies that hang together by more than one body. What stands between
 * them and the ground is taken to stand; what reaches the ground only through one of them moves with that one.
 *
 * <p>No answer is lost by it. The forces that a cluster and what it stands on exert on each other add up to the weight of
 * the cluster and of all that it carries, whatever happens inside either. So the whole is at rest if and only if each cluster
 * is, its load put on it.
 *
 * <p>Two of them are equal when what decides how they answer is the same; they must be of the same section.
 */
public final class Cluster {
    private final Bodies bodies;
    /** Those that move by themselves, in order, each for all bodies that are rigidly one with it. */
    private final int[] free;

    private final List<Force> forces;
    private final List<List<Integer>> ties;
    /** For each body of the section the place in {@link #free} of the one with which it moves as one, -1 when it stands. */
    private final int[] places;

    private final int hash;

    /**
     * A cluster.
     *
     * @param forces between those that move, and between them and what stands
     */
    Cluster(Bodies bodies, int[] free, List<Force> forces, int[] places) {
        this.bodies = bodies;
        this.free = free;
        this.forces = forces;
        this.places = places;
        this.ties = ties(forces);
        // few have the same bodies and as many forces: whether those are the same is seen when two are compared
        this.hash = 31 * Arrays.hashCode(free) + forces.size();
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof Cluster cluster
                        && hash == cluster.hash
                        && Arrays.equals(free, cluster.free)
                        && Arrays.equals(places, cluster.places)
                        && forces.equals(cluster.forces));
    }

    @Override
    public int hashCode() {
        return hash;
    }

    /** The section that it is a part of. */
    public Section section() {
        return bodies.section();
    }

    /** How many bodies move by themselves. */
    public int size() {
        return free.length;
    }

    /** The body in one of those places. */
    public int body(int place) {
        return free[place];
    }

    /** Between those that move, and between them and what stands. */
    public List<Force> forces() {
        return forces;
    }

    /** The numbers of the forces of each fastener that holds anything; those of which it holds nothing are left out. */
    List<List<Integer>> ties() {
        return ties;
    }

    /** Two fasteners that are alike in all are two; the forces of each follow each other. */
    @SuppressWarnings("ReferenceEquality")
    private static List<List<Integer>> ties(List<Force> forces) {
        List<List<Integer>> ties = new ArrayList<>();
        Tie last = null;
        for (int i = 0; i < forces.size(); i++) {
            Force force = forces.get(i);
            if (force.limited() && force.most() > 0 && force.tie().isPresent()) {
                Tie tie = force.tie().get();
                if (tie != last) {
                    last = tie;
                    ties.add(new ArrayList<>(3));
                }
                ties.get(ties.size() - 1).add(i);
            }
        }
        return ties;
    }

    /** The place of the body with which a body moves as one, -1 when it stands. */
    public int place(int body) {
        return body == Force.EARTH ? -1 : places[body];
    }

    /** Whether a body moves. */
    public boolean moves(int body) {
        return place(body) >= 0;
    }

    /** For each place how many bodies move as one with that of the place. */
    int[] counts() {
        int[] counts = new int[free.length];
        for (int place : places) {
            if (place >= 0) {
                counts[place]++;
            }
        }
        return counts;
    }

    /** 1 for the body of a place that a force acts on, -1 for the other, 0 for the rest. */
    int sign(Force force, int place) {
        return place(force.on()) == place ? 1 : place(force.against()) == place ? -1 : 0;
    }

    /** Those of some weights that it carries, all that move as one put together. */
    public List<Weight> carried(List<Weight> weights) {
        double[] pounds = new double[free.length];
        double[] moments = new double[free.length];
        for (int i = 0; i < weights.size(); i++) {
            Weight weight = weights.get(i);
            int place = place(weight.body());
            if (place >= 0) {
                pounds[place] += weight.pounds();
                moments[place] += weight.pounds() * weight.out();
            }
        }
        List<Weight> carried = new ArrayList<>(free.length);
        for (int place = 0; place < free.length; place++) {
            if (pounds[place] > 0) {
                carried.add(new Weight(free[place], moments[place] / pounds[place], pounds[place]));
            }
        }
        return carried;
    }

    /** Whether it is one body that plainly rests on level places to both sides of what it carries. */
    boolean rests(List<Weight> carried) {
        if (free.length != 1 || carried.size() > 1) {
            return false;
        }
        double back = Double.POSITIVE_INFINITY;
        double face = Double.NEGATIVE_INFINITY;
        int places = 0;
        for (int i = 0; i < forces.size(); i++) {
            Force force = forces.get(i);
            int sign = sign(force, 0);
            // exactly up: a level face, as it was drawn
            if (!force.limited()
                    && force.gap() <= 0
                    && sign * force.way().y() >= 1
                    && Math.abs(force.way().x()) <= 0) {
                back = Math.min(back, force.at().x());
                face = Math.max(face, force.at().x());
                places++;
            }
        }
        return places > 1
                && (carried.isEmpty()
                        || (back <= carried.get(0).out() && carried.get(0).out() <= face));
    }

    /** Paper for a program about it, wiped; what was written there before is gone. */
    LinearProgram program() {
        return bodies.program();
    }

    /** Where the weight of a body acts. */
    public Point centroid(int body) {
        return bodies.centroid(body);
    }
}
