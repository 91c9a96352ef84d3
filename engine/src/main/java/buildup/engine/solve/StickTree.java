package buildup.engine.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongPredicate;

/**
 * Goes through all plans that could be cheaper than the best known: stick by stick, each holding one certain piece of
 * those left, filled in every way that is not plainly bettered by another, the ways that give away least against the
 * bound first.
 */
final class StickTree {
    /** A piece that can lie in fewer ways than this is worth looking for among all that are left. */
    private static final int FEW = 24;

    /** States of which it is remembered that nothing better follows. */
    private static final int MOST_REMEMBERED = 200_000;

    private static final long STEPS_BETWEEN_LOOKS = 1 << 14;

    /** Calls within calls, which have to fit into the memory that a thread has for them, whatever the job. */
    private static final int MOST_CALLS = 4_000;

    /** Calls for a stick that is filled from a list, and those for one that is filled by a walk besides one for each type. */
    private static final int CALLS_OF_A_STICK = 3;

    private static final int CALLS_OF_A_WALK = 8;

    private static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1;

        Stopped() {
            super("limit", null, false, false);
        }
    }

    private final Bins bins;
    private final StickBound bound;
    private final Filling filling;
    private final LongPredicate watch;
    private long within;
    private long enough;
    private final int[] left;
    private final int[] stock;
    private final List<StickLoad> chosen = new ArrayList<>();
    private final Map<StickLoad, Long> failed = new HashMap<>();
    private List<StickLoad> best;
    private long bestCost;
    private long cost;
    private long steps;
    private int calls;
    private boolean tooDeep;

    /**
     * @param before steps that were taken before
     * @param watch asked now and then, with the steps so far, whether to go on
     */
    StickTree(Bins bins, StickBound bound, List<StickLoad> first, long before, LongPredicate watch) {
        this.steps = before;
        this.bins = bins;
        this.bound = bound;
        this.watch = watch;
        this.left = bins.counts.clone();
        this.stock = bins.most.clone();
        this.filling = new Filling(bins, bound, left, stock, this::step);
        this.best = List.copyOf(first);
        this.bestCost = Greedy.cost(bins, first);
    }

    List<StickLoad> best() {
        return best;
    }

    long bestCost() {
        return bestCost;
    }

    long steps() {
        return steps;
    }

    /** Whether a search ended because a plan has more sticks than can be followed. */
    boolean tooDeep() {
        return tooDeep;
    }

    /**
     * Looks for plans that cost at most so much, and less than the best known.
     *
     * @param enough ends the search when the best known costs no more
     * @return whether none is left to find
     */
    boolean search(long most, long enough) {
        within = most;
        this.enough = enough;
        failed.clear();
        chosen.clear();
        cost = 0;
        calls = 0;
        Arrays.setAll(left, type -> bins.counts[type]);
        Arrays.setAll(stock, kind -> bins.most[kind]);
        try {
            stick();
            return true;
        } catch (Stopped stopped) {
            return false;
        }
    }

    /** Fills one more stick: those first of which there are only so many, then one for a piece that is left. */
    private void stick() {
        if (calls > MOST_CALLS) {
            tooDeep = true;
            throw new Stopped();
        }
        int longest = 0;
        while (longest < left.length && left[longest] == 0) {
            longest++;
        }
        if (longest == left.length) {
            best = List.copyOf(chosen);
            bestCost = cost;
            if (bestCost <= enough) {
                throw new Stopped();
            }
            return;
        }
        long spare = spare();
        if (spare < 0) {
            return;
        }
        StickLoad state = state();
        Long before = failed.get(state);
        if (before != null && before <= cost) {
            return;
        }
        int limited = 0;
        while (limited < stock.length && (bins.unlimited(limited) || stock[limited] == 0)) {
            limited++;
        }
        if (limited < stock.length) {
            fillOneOf(limited, spare);
        } else {
            placeOneOfAll(longest, spare);
        }
        if (failed.size() < MOST_REMEMBERED) {
            failed.put(state, cost);
        }
    }

    /** What is left to place and the sticks that there are, as if it were a load: two alike are one. */
    private StickLoad state() {
        int[] both = Arrays.copyOf(left, left.length + stock.length);
        System.arraycopy(stock, 0, both, left.length, stock.length);
        return new StickLoad(0, both);
    }

    /** One stick of a kind of which there are only so many, or no more of them at all. */
    private void fillOneOf(int kind, long spare) {
        inBands(new Filling.Asked(Filling.ANY, kind, kind + 1), spare);
        int unused = stock[kind];
        stock[kind] = 0;
        stick();
        stock[kind] = unused;
    }

    /** A stick that holds the piece with the fewest ways to lie, where any has few, else the longest. */
    private void placeOneOfAll(int longest, long spare) {
        List<Filling.Way> few = filling.some(holding(longest), spare, FEW);
        if (few.size() == FEW) {
            inBands(holding(longest), spare);
            return;
        }
        for (int other = longest + 1; other < left.length && few.size() > 1; other++) {
            if (left[other] > 0) {
                List<Filling.Way> fewer = filling.some(holding(other), spare, few.size());
                few = fewer.size() < few.size() ? fewer : few;
            }
        }
        List<Filling.Way> ways =
                few.stream().sorted(Comparator.comparingLong(Filling.Way::loss)).toList();
        calls += CALLS_OF_A_STICK;
        for (Filling.Way way : ways) {
            take(way);
        }
        calls -= CALLS_OF_A_STICK;
    }

    private Filling.Asked holding(int type) {
        return new Filling.Asked(type, 0, stock.length);
    }

    /** From the ways that give away little to those that give away all there is; within a band, long pieces first. */
    private void inBands(Filling.Asked asked, long spare) {
        long share = spare / sticksLeft();
        calls += CALLS_OF_A_WALK + left.length;
        filling.each(asked, -1, share / 4, this::take);
        filling.each(asked, share / 4, share, this::take);
        filling.each(asked, share, spare, this::take);
        calls -= CALLS_OF_A_WALK + left.length;
    }

    private long sticksLeft() {
        long width = 0;
        for (int type = 0; type < left.length; type++) {
            width += (long) left[type] * bins.widths[type];
        }
        return width / bins.widestRoom() + 1;
    }

    /** What may still be given away by a plan cheaper than the best, in parts; negative when there is none. */
    private long spare() {
        return (Math.min(within, bins.roundedDown(bestCost)) - cost) * StickBound.SCALE - bound.left(left, stock);
    }

    private void step() {
        if (++steps % STEPS_BETWEEN_LOOKS == 0 && !watch.test(steps)) {
            throw new Stopped();
        }
    }

    private void take(Filling.Way way) {
        if (way.loss() > spare()) {
            return;
        }
        StickLoad load = way.load();
        change(load, 1);
        chosen.add(load);
        stick();
        chosen.remove(chosen.size() - 1);
        change(load, -1);
    }

    private void change(StickLoad load, int sign) {
        stock[load.kind()] -= sign;
        cost += sign * bins.costs[load.kind()];
        for (int type = 0; type < left.length; type++) {
            left[type] -= sign * load.counts()[type];
        }
    }
}
