package buildup.engine.solve;

import buildup.profiles.outline.Tolerance;
import java.util.Arrays;
import java.util.List;
import java.util.function.LongPredicate;
import java.util.stream.IntStream;

/**
 * Values of the types that no load of any stick exceeds the cost of, and that together are worth as much as can be: the
 * dual of the linear relaxation over all loads ({@link StickMaster}). Whatever the linear program says, the values are made
 * whole numbers, and exact dynamic programming shows that they hold: the bound is proved however the program rounds.
 */
final class StickBound {
    static final long SCALE = 1 << 16;

    /** The search for values ends when at most this share of what a plan may cost over the bound is to be won. */
    private static final double NEAR = 0.05;

    private final long[] values;
    private final long[] premiums;
    private final long total;
    private final List<StickLoad> loads;

    private StickBound(long[] values, long[] premiums, long total, List<StickLoad> loads) {
        this.values = values;
        this.premiums = premiums;
        this.total = total;
        this.loads = loads;
    }

    /** Loads that the linear program came upon on the way to these values. */
    List<StickLoad> loads() {
        return loads;
    }

    /** What the types are worth, in {@link #SCALE} parts of a unit of cost. */
    long[] values() {
        return values;
    }

    /** What the pieces are worth less all premiums: no plan costs less. Parts of a unit of cost. */
    long total() {
        return total;
    }

    /** The least that the pieces left can cost, in parts, when these are left and so many sticks of each kind. */
    long left(int[] counts, int[] sticks) {
        long sum = 0;
        for (int type = 0; type < counts.length; type++) {
            sum += values[type] * counts[type];
        }
        for (int kind = 0; kind < sticks.length; kind++) {
            sum -= premiums[kind] * sticks[kind];
        }
        return sum;
    }

    /**
     * Cost and premium of a stick, in parts. A stick of a kind of which there are only so many is worth more than it costs
     * by its premium.
     */
    long worth(Bins bins, int kind) {
        return bins.costs[kind] * SCALE + premiums[kind];
    }

    /** The least whole cost that is not less than so many parts. */
    static long cost(long parts) {
        return Math.floorDiv(parts + SCALE - 1, SCALE);
    }

    /**
     * The best values that are worth looking for.
     *
     * @param known loads to begin with
     * @param enough a cost: a bound that rounds up to it ends the search
     * @param goesOn asked before every round, with the steps that the last one took
     */
    static StickBound of(Bins bins, List<StickLoad> known, long enough, LongPredicate goesOn) {
        StickBound simple = byWidth(bins);
        boolean reached = bins.roundedUp(cost(simple.total)) >= enough;
        return reached || bins.large() ? simple : new Search(bins, simple, enough).run(known, goesOn);
    }

    /**
     * Every type worth its share of the stick that costs least for its length, of those there are enough of: no load of
     * a stick is worth more than its length.
     */
    private static StickBound byWidth(Bins bins) {
        double share = IntStream.range(0, bins.kinds.length)
                .filter(bins::unlimited)
                .mapToDouble(kind -> (double) bins.costs[kind] / bins.rooms[kind])
                .min()
                .orElse(0);
        long[] values = Arrays.stream(bins.widths)
                .mapToLong(width -> (long) Math.floor(width * share * SCALE))
                .toArray();
        long[] premiums = IntStream.range(0, bins.kinds.length)
                .mapToLong(kind -> (long) Math.ceil((bins.rooms[kind] * share - bins.costs[kind]) * SCALE))
                .map(premium -> Math.max(0, premium))
                .toArray();
        for (int kind = 0; kind < premiums.length; kind++) {
            // of these the share is no more than the cost, whatever the last digit says
            premiums[kind] = bins.unlimited(kind) ? 0 : premiums[kind];
        }
        return worth(bins, values, premiums);
    }

    private static StickBound worth(Bins bins, long[] values, long[] premiums) {
        StickBound bound = new StickBound(values, premiums, 0, List.of());
        return new StickBound(values, premiums, bound.left(bins.counts, bins.most), List.of());
    }

    /** Follows the linear program from one set of values to the next, and makes those hold that are worth it. */
    private static final class Search {
        private final Bins bins;
        private final long enough;
        private final Knapsack knapsack;
        private StickBound best;

        Search(Bins bins, StickBound simple, long enough) {
            this.bins = bins;
            this.enough = enough;
            this.knapsack = new Knapsack(bins);
            this.best = simple;
        }

        StickBound run(List<StickLoad> known, LongPredicate goesOn) {
            StickMaster master = new StickMaster(bins, known, goesOn);
            master.relaxed(bins.counts, bins.most, this::told);
            return new StickBound(best.values, best.premiums, best.total, master.loads());
        }

        private boolean told(long[] values, long[] premiums, double held) {
            double worth = (double) new StickBound(values, premiums, 0, List.of()).left(bins.counts, bins.most);
            double lowered = worth - (1 - Math.min(1, held)) * sum(values);
            // equally good values that are less alike would let more loads pass as good
            if (lowered > best.total + (double) SCALE / 64) {
                StickBound bound = proved(values, premiums, held);
                best = bound.total > best.total ? bound : best;
            }
            return bins.roundedUp(cost(best.total)) < enough && !reached(worth / SCALE);
        }

        private double sum(long[] values) {
            double sum = 0;
            for (int type = 0; type < values.length; type++) {
                sum += (double) values[type] * bins.counts[type];
            }
            return sum;
        }

        /** Whether the bound cannot rise to another whole cost any more, and hardly at all. */
        private boolean reached(double most) {
            double known = (double) best.total / SCALE;
            return bins.roundedUp(cost(best.total))
                            == bins.roundedUp((long) Math.ceil(most - most * Tolerance.COINCIDENT))
                    && most - known < (enough - known) * NEAR;
        }

        /** Values that hold, lowered all alike, and premiums that they need. */
        private StickBound proved(long[] values, long[] premiums, double held) {
            long[] whole = held < 1
                    ? Arrays.stream(values)
                            .map(value -> (long) Math.floor(value * held * (1 - Tolerance.COINCIDENT)))
                            .toArray()
                    : values;
            long[] extra = premiums.clone();
            knapsack.fill(whole);
            for (int kind = 0; kind < bins.kinds.length; kind++) {
                extra[kind] = Math.max(0, knapsack.most(0, bins.rooms[kind]) - bins.costs[kind] * SCALE);
            }
            return worth(bins, whole, extra);
        }
    }
}
