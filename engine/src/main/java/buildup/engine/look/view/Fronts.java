package buildup.engine.look.view;

import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What is nearest along each ray: stretches of keys, sorted and free of overlaps, each with its stretch of an outline. */
final class Fronts {
    private double[] lows;
    private double[] highs;
    private Sweep[] sweeps;
    /** For each the next lower one of the same sweep, once they are joined. */
    private int[] lower = new int[0];

    private int size;

    Fronts(int room) {
        this.lows = new double[room];
        this.highs = new double[room];
        this.sweeps = new Sweep[room];
    }

    /** Those that lie in some arrays from a place on. */
    Fronts(double[] lows, double[] highs, Sweep[] sweeps, int from) {
        this.lows = Arrays.copyOfRange(lows, from, lows.length);
        this.highs = Arrays.copyOfRange(highs, from, highs.length);
        this.sweeps = Arrays.copyOfRange(sweeps, from, sweeps.length);
        this.size = this.lows.length;
    }

    /** Lets each sweep know its fronts: what is plainly seen of it needs no asking then. */
    void join() {
        lower = new int[size];
        for (int i = 0; i < size; i++) {
            lower[i] = sweeps[i].nextFront(i);
        }
    }

    /** The next lower front of the same sweep, {@link Sweep#NONE} when there is none; known once they are joined. */
    int lower(int i) {
        return lower[i];
    }

    int size() {
        return size;
    }

    double low(int i) {
        return lows[i];
    }

    double high(int i) {
        return highs[i];
    }

    Sweep sweep(int i) {
        return sweeps[i];
    }

    /** The last that begins at a key or below it; -1 when none does. */
    int lastFrom(double key) {
        int low = 0;
        int high = size - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            if (lows[middle] <= key) {
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
        return high;
    }

    /** The nearer of two for every key. */
    static Fronts merged(Fronts a, Fronts b) {
        Fronts out = new Fronts(a.size + b.size + 2);
        out.nearer(a, b);
        return out;
    }

    private void nearer(Fronts a, Fronts b) {
        int i = 0;
        int j = 0;
        double at = Double.NEGATIVE_INFINITY;
        while (i < a.size || j < b.size) {
            double lowA = i < a.size ? Math.max(at, a.lows[i]) : Double.POSITIVE_INFINITY;
            double lowB = j < b.size ? Math.max(at, b.lows[j]) : Double.POSITIVE_INFINITY;
            double highA = i < a.size ? a.highs[i] : Double.POSITIVE_INFINITY;
            double highB = j < b.size ? b.highs[j] : Double.POSITIVE_INFINITY;
            double start = Math.min(lowA, lowB);
            boolean inA = lowA <= start;
            boolean inB = lowB <= start;
            double end = Math.min(inA ? highA : lowA, inB ? highB : lowB);
            if (inA && inB) {
                addNearer(a.sweeps[i], b.sweeps[j], start, end);
            } else {
                add(inA ? a.sweeps[i] : b.sweeps[j], start, end);
            }
            at = end;
            if (highA <= end) {
                i++;
            }
            if (highB <= end) {
                j++;
            }
        }
    }

    /**
     * Makes it hold, for every key, the nearer of some fronts that lie in arrays and a sweep, below a key that lies above
     * the lower end of each.
     */
    void nearer(double[] ownLows, double[] ownHighs, Sweep[] own, int from, int to, Sweep sweep, double below) {
        size = 0;
        double start = sweep.low();
        for (int i = from; i < to; i++) {
            double low = ownLows[i];
            double high = ownHighs[i];
            add(sweep, start, low);
            add(own[i], low, Math.min(start, high));
            if (high > start) {
                start = Math.max(start, low);
                double end = Math.min(high, below);
                addNearer(own[i], sweep, start, end);
                add(own[i], end, high);
                start = end;
            }
        }
        add(sweep, start, below);
    }

    private void addNearer(Sweep a, Sweep b, double start, double end) {
        if (end - start <= Tolerance.EDGE_ON) {
            return;
        }
        switch (a.against(b)) {
            case NEARER -> add(a, start, end);
            case FARTHER -> add(b, start, end);
            case LEVEL, UNKNOWN -> {
                a.doubt();
                b.doubt();
                List<Double> cuts = cuts(a, b, start, end);
                for (int i = 0; i + 1 < cuts.size(); i++) {
                    double middle = (cuts.get(i) + cuts.get(i + 1)) / 2;
                    add(a.depth(middle) <= b.depth(middle) ? a : b, cuts.get(i), cuts.get(i + 1));
                }
            }
        }
    }

    /** The keys from start to end between which neither of two stretches passes the other: two arcs may do so twice. */
    static List<Double> cuts(Sweep a, Sweep b, double start, double end) {
        List<Double> cuts = new ArrayList<>();
        cuts.add(start);
        if (a.segment().box().near(b.segment().box(), Tolerance.SNAP)) {
            for (Point met : Crossings.of(a.segment(), b.segment(), Tolerance.SNAP)) {
                double key = a.view().key(met);
                if (key > start && key < end) {
                    cuts.add(key);
                }
            }
        }
        cuts.add(end);
        cuts.sort(null);
        return cuts;
    }

    private void add(Sweep sweep, double start, double end) {
        if (end - start <= Tolerance.EDGE_ON) {
            return;
        }
        if (size > 0 && sweeps[size - 1] == sweep && start - highs[size - 1] <= Tolerance.EDGE_ON) {
            highs[size - 1] = end;
        } else {
            put(sweep, start, end);
        }
    }

    /** Adds one above all others. */
    void put(Sweep sweep, double low, double high) {
        if (size == lows.length) {
            lows = Arrays.copyOf(lows, 2 * size + 1);
            highs = Arrays.copyOf(highs, 2 * size + 1);
            sweeps = Arrays.copyOf(sweeps, 2 * size + 1);
        }
        lows[size] = low;
        highs[size] = high;
        sweeps[size++] = sweep;
    }
}
