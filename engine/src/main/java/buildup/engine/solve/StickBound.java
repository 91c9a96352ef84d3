package buildup.engine.solve;

import buildup.engine.solve.LinearProgram.Term;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Values of the types that no load of any stick exceeds the cost of, and that together are worth as much as can be: the
 * dual of the linear relaxation over all loads (Gilmore and Gomory, Operations Research 9, 1961, 849-859), found by
 * cutting planes. Whatever the linear program says, the values are made whole numbers, and exact dynamic programming
 * shows that they hold: the bound is proved however the program rounds.
 */
final class StickBound {
    static final long SCALE = 1 << 16;

    /** Rounds after which the values found so far must do. */
    private static final int MOST_ROUNDS = 400;

    /** The search for values ends when at most this share of what a plan may cost over the bound is to be won. */
    private static final double NEAR = 0.05;

    private final long[] values;
    private final long[] premiums;
    private final long total;

    private StickBound(long[] values, long[] premiums, long total) {
        this.values = values;
        this.premiums = premiums;
        this.total = total;
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
     * @param goesOn asked before every round
     */
    static StickBound of(Bins bins, List<StickLoad> known, long enough, BooleanSupplier goesOn) {
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
        StickBound bound = new StickBound(values, premiums, 0);
        return new StickBound(values, premiums, bound.left(bins.counts, bins.most));
    }

    private static final class Search {
        private final Bins bins;
        private final long enough;
        private final Knapsack knapsack;
        private final List<StickLoad> loads = new ArrayList<>();
        private StickBound best;

        Search(Bins bins, StickBound simple, long enough) {
            this.bins = bins;
            this.enough = enough;
            this.knapsack = new Knapsack(bins);
            this.best = simple;
        }

        StickBound run(List<StickLoad> known, BooleanSupplier goesOn) {
            loads.addAll(known);
            for (int round = 0;
                    round < MOST_ROUNDS && bins.roundedUp(cost(best.total)) < enough && goesOn.getAsBoolean();
                    round++) {
                Optional<Program> solved = Program.solve(bins, loads, enough);
                if (solved.isEmpty()) {
                    break;
                }
                int before = loads.size();
                StickBound bound = proved(solved.get().values(), solved.get().premiums());
                // equally good values that are less alike would let more loads pass as good
                best = bound.total > best.total + SCALE / 64 ? bound : best;
                if (loads.size() == before || reached(solved.get().total())) {
                    break;
                }
            }
            return best;
        }

        /** Whether the bound cannot rise to another whole cost any more, and hardly at all. */
        private boolean reached(double most) {
            double known = (double) best.total / SCALE;
            return bins.roundedUp(cost(best.total))
                            == bins.roundedUp((long) Math.ceil(most - most * Tolerance.COINCIDENT))
                    && most - known < (enough - known) * NEAR;
        }

        /**
         * Makes values hold by lowering all of them alike, and adds the loads that were worth more than their sticks to
         * those that the next program knows.
         */
        private StickBound proved(List<Double> values, List<Double> premiums) {
            long[] whole = scaled(values, 1);
            long[] extra = scaled(premiums, 1);
            knapsack.fill(whole);
            double lower = 1;
            for (int kind = 0; kind < bins.kinds.length; kind++) {
                long cost = bins.costs[kind] * SCALE + extra[kind];
                long worth = knapsack.most(0, bins.rooms[kind]);
                if (worth > cost) {
                    lower = Math.min(lower, (double) cost / worth);
                }
                if (worth - cost > cost * Tolerance.COINCIDENT + bins.types()) {
                    loads.add(new StickLoad(kind, knapsack.load(bins.rooms[kind], whole)));
                }
            }
            if (lower < 1) {
                whole = scaled(values, lower * (1 - Tolerance.COINCIDENT));
                knapsack.fill(whole);
            }
            for (int kind = 0; kind < bins.kinds.length; kind++) {
                extra[kind] = Math.max(0, knapsack.most(0, bins.rooms[kind]) - bins.costs[kind] * SCALE);
            }
            return worth(bins, whole, extra);
        }

        private static long[] scaled(List<Double> values, double by) {
            return values.stream()
                    .mapToLong(value -> (long) Math.floor(Math.max(0, value) * by * SCALE))
                    .toArray();
        }
    }

    /** What the linear program over the loads known so far says; no bound is more than a plan costs. */
    private record Program(List<Double> values, List<Double> premiums, double total) {
        static Optional<Program> solve(Bins bins, List<StickLoad> loads, long most) {
            LinearProgram program = new LinearProgram();
            double dearest = Arrays.stream(bins.costs).max().orElse(0);
            List<Term> sum = new ArrayList<>();
            for (int count : bins.counts) {
                sum.add(new Term(program.atLeastZero(dearest), count));
            }
            for (int kind = 0; kind < bins.kinds.length; kind++) {
                boolean limited = bins.most[kind] < bins.pieces();
                sum.add(new Term(program.atLeastZero(limited ? dearest * bins.pieces() : 0), -bins.most[kind]));
            }
            int total = program.atLeastZero((double) most);
            sum.add(new Term(total, -1));
            program.equation(sum, 0);
            for (StickLoad load : loads) {
                List<Term> row = new ArrayList<>();
                for (int type = 0; type < bins.types(); type++) {
                    if (load.counts()[type] > 0) {
                        row.add(new Term(type, load.counts()[type]));
                    }
                }
                row.add(new Term(bins.types() + load.kind(), -1));
                row.add(new Term(program.atLeastZero(Double.POSITIVE_INFINITY), 1));
                program.equation(row, (double) bins.costs[load.kind()]);
            }
            return program.greatest(total)
                    .map(solution -> new Program(
                            part(solution, 0, bins.types()),
                            part(solution, bins.types(), bins.kinds.length),
                            solution.value(total)));
        }

        private static List<Double> part(LinearProgram.Solution solution, int from, int count) {
            return IntStream.range(from, from + count).mapToObj(solution::value).toList();
        }
    }
}
