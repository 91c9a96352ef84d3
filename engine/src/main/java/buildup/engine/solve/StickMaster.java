package buildup.engine.solve;

import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongPredicate;
import java.util.stream.IntStream;

/**
 * How often each load is taken when parts of loads may be taken too, at the least cost: the linear relaxation over all
 * loads of the pieces that are left, by column generation (Gilmore and Gomory, Operations Research 9, 1961, 849-859).
 */
final class StickMaster {
    /** Rounds after which the loads found so far must do. */
    private static final int MOST_ROUNDS = 3_000;

    /** Loads that are kept for the next question. */
    private static final int MOST_LOADS = 6_000;

    /** What a piece that lies nowhere costs, in sticks of the dearest kind. */
    private static final double NOWHERE = 4;

    /** Sums and products that take as long as one step of the search. */
    private static final long WORK_OF_A_STEP = 300;

    /** Pivots in a row, for each row, before the loads are looked through again. */
    private static final int PIVOTS_FOR_A_ROW = 20;

    /** So much of a load, at least more than 0. */
    record Part(StickLoad load, double amount) {}

    /** Parts of loads that hold all pieces, and what they cost together. */
    record Relaxed(List<Part> parts, double cost) {
        Relaxed {
            parts = List.copyOf(parts);
        }
    }

    /** Told of the values that a round gives; what they say is as exact as the linear program rounds. */
    interface Listener {
        /**
         * Takes the values of a round.
         *
         * @param values of the types, in {@link StickBound#SCALE} parts of a cost
         * @param premiums of the kinds, what one stick more of them would save
         * @param held the factor by which the values must be lowered for no load to be worth more than its stick
         * @return whether to go on
         */
        boolean told(long[] values, long[] premiums, double held);
    }

    private final Bins bins;
    private final Knapsack knapsack;
    private final double dearest;
    private final LongPredicate goesOn;
    private final Set<StickLoad> pool = new LinkedHashSet<>();

    /**
     * @param known loads to begin with
     * @param goesOn asked before every round, with the steps that the last one took
     */
    StickMaster(Bins bins, List<StickLoad> known, LongPredicate goesOn) {
        this.bins = bins;
        this.knapsack = new Knapsack(bins);
        this.dearest = Arrays.stream(bins.costs).max().orElse(0);
        this.goesOn = goesOn;
        known.forEach(this::keep);
    }

    /** The loads known so far. */
    List<StickLoad> loads() {
        return List.copyOf(pool);
    }

    private boolean keep(StickLoad load) {
        return pool.size() < MOST_LOADS && pool.add(load);
    }

    /** As {@link #relaxed(int[], int[], Listener)}, with nobody who listens. */
    Optional<Relaxed> relaxed(int[] left, int[] stock) {
        return relaxed(left, stock, (values, premiums, held) -> true);
    }

    /**
     * The relaxation for so many pieces of each type and sticks of each kind.
     *
     * @return nothing when the sticks do not hold the pieces, or the rounds were ended before
     */
    Optional<Relaxed> relaxed(int[] left, int[] stock, Listener listener) {
        Program program = new Program(left, stock);
        usable(left, stock).forEach(program::add);
        long steps = 0;
        for (int round = 0; round < MOST_ROUNDS && goesOn.test(steps); round++) {
            steps = program.solve() + fill(program.values(), left);
            List<StickLoad> better = better(program, stock);
            if (!listener.told(program.values(), program.premiums(), held(program, stock))) {
                return Optional.empty();
            }
            better.forEach(this::keep);
            if (!program.addAll(better)) {
                return program.relaxed();
            }
        }
        return Optional.empty();
    }

    private long fill(long[] values, int[] left) {
        knapsack.fill(values, left);
        return Arrays.stream(left).sum() * (bins.widestRoom() + 1L) / WORK_OF_A_STEP;
    }

    /** Loads of the pool, without the pieces that are not left. */
    private List<StickLoad> usable(int[] left, int[] stock) {
        Set<StickLoad> usable = new LinkedHashSet<>();
        for (StickLoad load : pool) {
            int[] counts = load.counts().clone();
            Arrays.setAll(counts, type -> Math.min(counts[type], left[type]));
            if (stock[load.kind()] > 0 && Arrays.stream(counts).anyMatch(count -> count > 0)) {
                usable.add(new StickLoad(load.kind(), counts));
            }
        }
        return List.copyOf(usable);
    }

    /** The load of each kind that is worth most over its cost. */
    private List<StickLoad> better(Program program, int[] stock) {
        List<StickLoad> better = new ArrayList<>();
        for (int kind = 0; kind < bins.kinds.length; kind++) {
            long cost = bins.costs[kind] * StickBound.SCALE + program.premiums()[kind];
            long over = knapsack.most(0, bins.rooms[kind]) - cost;
            if (stock[kind] > 0 && over > cost * Tolerance.COINCIDENT + bins.types()) {
                better.add(new StickLoad(kind, knapsack.load(bins.rooms[kind], program.values())));
            }
        }
        return better;
    }

    private double held(Program program, int[] stock) {
        return IntStream.range(0, bins.kinds.length)
                .filter(kind -> stock[kind] > 0)
                .mapToDouble(kind -> (bins.costs[kind] * (double) StickBound.SCALE + program.premiums()[kind])
                        / Math.max(1, knapsack.most(0, bins.rooms[kind])))
                .min()
                .orElse(1);
    }

    /** The linear program over the loads known so far: a row for each type that is left and each kind of which there are few. */
    private final class Program {
        private final int[] typeOfRow;
        private final int[] rowOfType;
        private final int[] rowOfKind;
        private final int rows;
        private final ColumnSimplex simplex;
        private final Map<Integer, StickLoad> loads = new LinkedHashMap<>();
        private final Set<StickLoad> known = new LinkedHashSet<>();
        private long[] values = {};
        private long[] premiums = {};

        Program(int[] left, int[] stock) {
            typeOfRow = IntStream.range(0, left.length)
                    .filter(type -> left[type] > 0)
                    .toArray();
            rowOfType = new int[left.length];
            for (int row = 0; row < typeOfRow.length; row++) {
                rowOfType[typeOfRow[row]] = row;
            }
            int[] few = IntStream.range(0, stock.length)
                    .filter(kind -> !bins.unlimited(kind) && stock[kind] > 0)
                    .toArray();
            rowOfKind = new int[stock.length];
            Arrays.fill(rowOfKind, -1);
            for (int i = 0; i < few.length; i++) {
                rowOfKind[few[i]] = typeOfRow.length + i;
            }
            rows = typeOfRow.length + few.length;
            double[] sums = new double[rows];
            double[] lack = new double[rows];
            for (int row = 0; row < typeOfRow.length; row++) {
                sums[row] = left[typeOfRow[row]];
                lack[row] = NOWHERE * dearest;
            }
            for (int i = 0; i < few.length; i++) {
                sums[typeOfRow.length + i] = stock[few[i]];
            }
            simplex = new ColumnSimplex(sums, lack);
            for (int row = 0; row < typeOfRow.length; row++) {
                simplex.add(new ColumnSimplex.Column(new int[] {row}, new double[] {-1}, 0));
            }
        }

        /** Adds loads; whether one of them was not known. */
        boolean addAll(List<StickLoad> more) {
            int before = loads.size();
            more.forEach(this::add);
            return loads.size() > before;
        }

        void add(StickLoad load) {
            if (!known.add(load)) {
                return;
            }
            int[] types = IntStream.range(0, rowOfType.length)
                    .filter(type -> load.counts()[type] > 0)
                    .toArray();
            boolean few = rowOfKind[load.kind()] >= 0;
            int[] own = new int[types.length + (few ? 1 : 0)];
            double[] factors = new double[own.length];
            for (int i = 0; i < types.length; i++) {
                own[i] = rowOfType[types[i]];
                factors[i] = load.counts()[types[i]];
            }
            if (few) {
                own[types.length] = rowOfKind[load.kind()];
                factors[types.length] = 1;
            }
            loads.put(simplex.add(new ColumnSimplex.Column(own, factors, bins.costs[load.kind()])), load);
        }

        /** Solves it, and gives the steps that this took. */
        long solve() {
            int before = simplex.pivots();
            simplex.solve(PIVOTS_FOR_A_ROW * rows);
            values = new long[rowOfType.length];
            for (int row = 0; row < typeOfRow.length; row++) {
                values[typeOfRow[row]] = parts(simplex.price(row));
            }
            premiums = Arrays.stream(rowOfKind)
                    .mapToLong(row -> row < 0 ? 0 : parts(-simplex.price(row)))
                    .toArray();
            return (long) (simplex.pivots() - before + 1) * rows * (rows + loads.size()) / WORK_OF_A_STEP;
        }

        private static long parts(double value) {
            return (long) Math.floor(Math.max(0, value) * StickBound.SCALE);
        }

        long[] values() {
            return values;
        }

        long[] premiums() {
            return premiums;
        }

        Optional<Relaxed> relaxed() {
            double[] amounts = simplex.amounts();
            double missing = Arrays.stream(amounts).limit(typeOfRow.length).sum();
            List<Part> parts = new ArrayList<>();
            double cost = 0;
            for (Map.Entry<Integer, StickLoad> own : loads.entrySet()) {
                double amount = amounts[own.getKey()];
                if (amount > Tolerance.SAME_SHARE) {
                    parts.add(new Part(own.getValue(), amount));
                    cost += amount * bins.costs[own.getValue().kind()];
                }
            }
            return missing > Tolerance.SAME_SHARE ? Optional.empty() : Optional.of(new Relaxed(parts, cost));
        }
    }
}
