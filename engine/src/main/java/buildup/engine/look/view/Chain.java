package buildup.engine.look.view;

import buildup.profiles.outline.Tolerance;

/**
 * Fronts of an outline as it is walked. Keys fall along a walk, so that the next stretch lies below all fronts so far or
 * reaches over a few of the lowest, and only these are compared with it.
 */
final class Chain {
    /** A stretch that reaches over more than this begins a chain of its own: chains are merged in the end. */
    private static final int MOST = 8;

    /** Filled from their ends down: the lowest front comes first. */
    private double[] lows = new double[16];

    private double[] highs = new double[16];
    private Sweep[] sweeps = new Sweep[16];
    private int first = 16;

    private final Fronts nearer = new Fronts(2 * MOST);

    /** Takes the next stretch; not one that reaches over many fronts. */
    boolean takes(Sweep sweep) {
        int below = first;
        while (below < lows.length && lows[below] < sweep.high()) {
            below++;
        }
        if (below - first > MOST) {
            return false;
        }
        // the highest of them that keep all they have stay where they are
        int kept = below;
        double at = sweep.high();
        while (kept > first && keeps(kept - 1, sweep, at)) {
            kept--;
            at = lows[kept];
        }
        if (kept > first && hidesAll(kept, sweep)) {
            // only the highest of them may reach above what hides them
            first = highs[kept - 1] - at > Tolerance.EDGE_ON ? kept - 1 : kept;
            if (first < kept) {
                lows[first] = at;
            }
            push(sweep, sweep.low(), at);
        } else if (kept > first) {
            nearer.nearer(lows, highs, sweeps, first, kept, sweep, at);
            first = kept;
            for (int i = nearer.size() - 1; i >= 0; i--) {
                push(nearer.sweep(i), nearer.low(i), nearer.high(i));
            }
        } else if (at - sweep.low() > Tolerance.EDGE_ON) {
            push(sweep, sweep.low(), at);
        }
        return true;
    }

    /** Whether a stretch, below a key, takes nothing from a front nor shows above it. */
    private boolean keeps(int i, Sweep sweep, double at) {
        if (at - highs[i] > Tolerance.EDGE_ON) {
            return false;
        }
        double shared = Math.min(highs[i], at) - Math.max(lows[i], sweep.low());
        return shared <= Tolerance.EDGE_ON || sweeps[i].against(sweep) == Sweep.Order.NEARER;
    }

    /** Whether a stretch plainly lies before all fronts below a place, down to the lowest. */
    private boolean hidesAll(int kept, Sweep sweep) {
        if (sweep.low() > lows[first]) {
            return false;
        }
        for (int i = first; i < kept; i++) {
            if (sweeps[i].against(sweep) != Sweep.Order.FARTHER) {
                return false;
            }
        }
        return true;
    }

    private void push(Sweep sweep, double low, double high) {
        if (first == 0) {
            grow();
        }
        first--;
        lows[first] = low;
        highs[first] = high;
        sweeps[first] = sweep;
    }

    private void grow() {
        int size = lows.length;
        double[] moreLows = new double[2 * size];
        double[] moreHighs = new double[2 * size];
        Sweep[] moreSweeps = new Sweep[2 * size];
        System.arraycopy(lows, 0, moreLows, size, size);
        System.arraycopy(highs, 0, moreHighs, size, size);
        System.arraycopy(sweeps, 0, moreSweeps, size, size);
        lows = moreLows;
        highs = moreHighs;
        sweeps = moreSweeps;
        first = size;
    }

    /** Its fronts, the lowest first; it is empty after that. */
    Fronts taken() {
        Fronts fronts = new Fronts(lows, highs, sweeps, first);
        first = lows.length;
        return fronts;
    }
}
