package buildup.engine.hold.statics;

import buildup.engine.hold.statics.Model.Weight;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A part of a model that can be asked by itself: bodies that hang together by more than one body. What stands between
 * them and the ground is taken to stand; what reaches the ground only through one of them moves with that one.
 *
 * <p>No answer is lost by it. The forces that a cluster and what it stands on exert on each other add up to the weight of
 * the cluster and of all that it carries, whatever happens inside either. So the whole is at rest if and only if each cluster
 * is, its load put on it.
 *
 * @param section whose bodies these are
 * @param free those that move by themselves, each for all bodies that are rigidly one with it
 * @param forces between them, and between them and what stands
 * @param with for each body that moves, the one of {@code free} with which it moves as one
 */
public record Cluster(Section section, List<Integer> free, List<Force> forces, Map<Integer, Integer> with) {
    private static final Point UP = new Point(0, 1);

    /** What of a cluster decides how it answers, to be compared with another of the same section. */
    public record Key(List<Integer> free, List<Force> forces, Map<Integer, Integer> with) {
        // spelled out: what a record does of itself as a key is slow to start
        @Override
        public boolean equals(Object other) {
            return other instanceof Key key
                    && key.free.equals(free)
                    && key.forces.equals(forces)
                    && key.with.equals(with);
        }

        @Override
        public int hashCode() {
            return 31 * free.hashCode() + forces.hashCode();
        }
    }

    /** Copies the lists. */
    public Cluster {
        free = List.copyOf(free);
        forces = List.copyOf(forces);
        with = Map.copyOf(with);
    }

    /** What decides how it answers. */
    public Key key() {
        return new Key(free, forces, with);
    }

    /** The body with which a body moves as one, {@link Force#EARTH} when it stands. */
    public int lead(int body) {
        return with.getOrDefault(body, Force.EARTH);
    }

    /** Whether a body moves. */
    public boolean moves(int body) {
        return with.containsKey(body);
    }

    /** How many bodies move as one with one of those that move by themselves. */
    public long count(int lead) {
        return with.values().stream().filter(one -> one == lead).count();
    }

    /** 1 for the body that a force acts on, -1 for the other, 0 for the rest. */
    public int sign(Force force, int body) {
        return lead(force.on()) == body ? 1 : lead(force.against()) == body ? -1 : 0;
    }

    /** Those of some weights that it carries, all that move as one put together. */
    public List<Weight> carried(List<Weight> weights) {
        Map<Integer, Double> pounds = new TreeMap<>();
        Map<Integer, Double> moments = new TreeMap<>();
        for (Weight weight : weights) {
            if (moves(weight.body())) {
                pounds.merge(lead(weight.body()), weight.pounds(), Double::sum);
                moments.merge(lead(weight.body()), weight.pounds() * weight.out(), Double::sum);
            }
        }
        return pounds.entrySet().stream()
                .filter(entry -> entry.getValue() > 0)
                .map(entry -> new Weight(
                        entry.getKey(), moments.getOrDefault(entry.getKey(), 0.0) / entry.getValue(), entry.getValue()))
                .toList();
    }

    /** Whether it is one body that plainly rests on level places to both sides of what it carries. */
    public boolean rests(List<Weight> carried) {
        if (free.size() != 1 || carried.size() > 1) {
            return false;
        }
        double[] under = forces.stream()
                .filter(force -> !force.limited() && force.gap() <= 0)
                .filter(force -> force.way().times(sign(force, free.get(0))).equals(UP))
                .mapToDouble(force -> force.at().x())
                .sorted()
                .toArray();
        return under.length > 1
                && carried.stream()
                        .allMatch(weight -> under[0] <= weight.out() && weight.out() <= under[under.length - 1]);
    }

    /** Where the weight of a body acts. */
    public Point centroid(int body) {
        return section.body(body).outline().centroid();
    }
}
