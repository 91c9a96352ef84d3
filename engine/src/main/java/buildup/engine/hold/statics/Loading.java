package buildup.engine.hold.statics;

import buildup.engine.hold.statics.Mechanism.Ranked;
import buildup.engine.hold.statics.Model.Weight;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Some weights on the bodies of a section, and what clusters were found to do under them. Models of one section, with and
 * without gaps, nails or trust, have most of their clusters in common: each is asked once.
 */
public final class Loading {
    private final List<Weight> weights;
    private final double pounds;
    private final Map<Cluster, Boolean> falls = new HashMap<>();
    private final Map<Cluster, Optional<Ranked>> motions = new HashMap<>();

    /** @param weights on bodies of one section, which every model that is asked is of */
    public Loading(List<Weight> weights) {
        this.weights = List.copyOf(weights);
        double sum = 0;
        for (Weight weight : weights) {
            sum += weight.pounds();
        }
        this.pounds = sum;
    }

    /** The weights. */
    public List<Weight> weights() {
        return weights;
    }

    /** What they come to, pounds per foot of run. */
    public double pounds() {
        return pounds;
    }

    /** Whether a cluster falls, asked when it is first wanted. */
    boolean falls(Cluster cluster) {
        Boolean known = falls.get(cluster);
        if (known == null) {
            known = Mechanism.falls(cluster, this);
            falls.put(cluster, known);
        }
        return known;
    }

    /** How a cluster falls, asked when it is first wanted. */
    Optional<Ranked> falling(Cluster cluster) {
        Optional<Ranked> known = motions.get(cluster);
        if (known == null) {
            known = Mechanism.falling(cluster, this);
            motions.put(cluster, known);
        }
        return known;
    }
}
