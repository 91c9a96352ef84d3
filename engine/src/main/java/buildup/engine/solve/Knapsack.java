package buildup.engine.solve;

/**
 * The greatest value that fits into every room, from the types beginning with each; by dynamic programming over whole
 * widths and whole values, hence exact.
 */
final class Knapsack {
    private final Bins bins;
    private final long[][] best;

    Knapsack(Bins bins) {
        this.bins = bins;
        this.best = new long[bins.types() + 1][bins.widestRoom() + 1];
    }

    /** Fills the table for these values of the types. */
    void fill(long[] values) {
        fill(values, bins.counts);
    }

    /** Fills the table for these values of the types, of which there are so many. */
    void fill(long[] values, int[] counts) {
        for (int type = bins.types() - 1; type >= 0; type--) {
            long[] row = best[type];
            System.arraycopy(best[type + 1], 0, row, 0, row.length);
            int width = bins.widths[type];
            long value = values[type];
            if (value == 0) {
                continue;
            }
            for (int copy = Math.min(counts[type], (row.length - 1) / width); copy > 0; copy--) {
                for (int room = row.length - 1; room >= width; room--) {
                    row[room] = Math.max(row[room], row[room - width] + value);
                }
            }
        }
    }

    /** The most that types from this one on bring in so much room. */
    long most(int type, int room) {
        return best[type][room];
    }

    /** A load that brings in the most. */
    int[] load(int room, long[] values) {
        int[] counts = new int[bins.types()];
        int left = room;
        for (int type = 0; type < counts.length; type++) {
            int taken = 0;
            while (best[type][left] != taken * values[type] + best[type + 1][left - taken * bins.widths[type]]) {
                taken++;
            }
            counts[type] = taken;
            left -= taken * bins.widths[type];
        }
        return counts;
    }
}
