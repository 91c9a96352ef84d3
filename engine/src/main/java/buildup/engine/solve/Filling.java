package buildup.engine.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** The ways to fill one stick that holds a certain piece. */
final class Filling {
    /** A way to fill a stick, what it gives away against the bound, in parts of a cost. */
    record Way(StickLoad load, long loss) {}

    private final Bins bins;
    private final StickBound bound;
    private final Knapsack values;
    private final int[] left;
    private final int[] stock;
    private final Runnable step;

    /**
     * @param left how many there are of each type, now and later
     * @param stock how many sticks of each kind
     * @param step told of every step
     */
    Filling(Bins bins, StickBound bound, int[] left, int[] stock, Runnable step) {
        this.bins = bins;
        this.bound = bound;
        this.values = new Knapsack(bins);
        this.left = left;
        this.stock = stock;
        this.step = step;
        values.fill(bound.values());
    }

    /**
     * Which sticks are asked for.
     *
     * @param held the type that must lie in them, or {@link #ANY}
     * @param from the first of the kinds
     * @param to after the last of them
     */
    record Asked(int held, int from, int to) {}

    static final int ANY = -1;

    /** The ways that give away at most so much, or the first of them when there are more. */
    List<Way> some(Asked asked, long within, int most) {
        List<Way> ways = new ArrayList<>();
        new Walk(asked, -1, within, ways::add, () -> ways.size() == most).all();
        return ways;
    }

    /** All ways that give away more than {@code above} and at most {@code within}, those with long pieces first. */
    void each(Asked asked, long above, long within, Consumer<Way> taker) {
        new Walk(asked, above, within, taker, () -> false).all();
    }

    private final class Walk {
        private final Asked asked;
        private final long above;
        private final long within;
        private final Consumer<Way> taker;
        private final BooleanSupplier full;
        private final int[] counts = new int[left.length];
        private int kind;

        Walk(Asked asked, long above, long within, Consumer<Way> taker, BooleanSupplier full) {
            this.asked = asked;
            this.above = above;
            this.within = within;
            this.taker = taker;
            this.full = full;
        }

        void all() {
            int held = asked.held;
            int width = held == ANY ? 0 : bins.widths[held];
            long value = held == ANY ? 0 : bound.values()[held];
            if (held != ANY) {
                counts[held] = 1;
            }
            for (kind = asked.from; kind < asked.to; kind++) {
                if (stock[kind] > 0 && bins.rooms[kind] >= width) {
                    fill(0, bins.rooms[kind] - width, bound.worth(bins, kind) - value);
                }
            }
        }

        /** @param loss what the stick gives away if nothing more comes into it */
        private void fill(int type, int room, long loss) {
            if (full.getAsBoolean()) {
                return;
            }
            step.run();
            if (loss - values.most(type, room) > within) {
                return;
            }
            int next = type;
            while (next < left.length && (bins.widths[next] > room || counts[next] >= left[next])) {
                next++;
            }
            if (next == left.length) {
                if (loss > above && loss <= within && !bettered(room)) {
                    taker.accept(new Way(new StickLoad(kind, counts.clone()), loss));
                }
                return;
            }
            int before = counts[next];
            for (int more = Math.min(left[next] - before, room / bins.widths[next]); more >= 0; more--) {
                counts[next] = before + more;
                fill(next + 1, room - more * bins.widths[next], loss - more * bound.values()[next]);
            }
            counts[next] = before;
        }

        /**
         * Whether the stick would hold a piece more, or a longer one in place of one or two that lie in it: every plan
         * with this stick is then a plan with that one, what came out lying where the longer piece would have lain
         * (Martello and Toth, Knapsack Problems, 1990, section 8.4).
         */
        private boolean bettered(int room) {
            for (int other = 0; other < left.length; other++) {
                if (left[other] - counts[other] > 0 && betters(bins.widths[other], room)) {
                    return true;
                }
            }
            return false;
        }

        private boolean betters(int width, int room) {
            if (width <= room) {
                return true;
            }
            for (int one = 0; one < left.length; one++) {
                int first = bins.widths[one];
                if (free(one) == 0 || first >= width) {
                    continue;
                }
                if (width - first <= room) {
                    return true;
                }
                for (int two = one; two < left.length; two++) {
                    int both = first + bins.widths[two];
                    if (free(two) > (two == one ? 1 : 0) && both <= width && width - both <= room) {
                        return true;
                    }
                }
            }
            return false;
        }

        /** Pieces of a type in the stick that may come out again: one was put there. */
        private int free(int type) {
            return type == asked.held ? counts[type] - 1 : counts[type];
        }
    }
}
