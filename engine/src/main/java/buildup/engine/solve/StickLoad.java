package buildup.engine.solve;

import java.util.Arrays;

/** What one stick is cut into: so many of each type. */
final class StickLoad {
    private final int kind;
    private final int[] counts;

    /** Keeps the counts as they are; nobody changes them from here on. */
    StickLoad(int kind, int[] counts) {
        this.kind = kind;
        this.counts = counts;
    }

    int kind() {
        return kind;
    }

    int[] counts() {
        return counts;
    }

    int taken(Bins bins) {
        int taken = 0;
        for (int type = 0; type < counts.length; type++) {
            taken += counts[type] * bins.widths[type];
        }
        return taken;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof StickLoad load && load.kind == kind && Arrays.equals(load.counts, counts);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(counts) + kind;
    }
}
