package buildup.engine.solve;

/** What one stick is cut into: so many of each type. */
record Load(int kind, int[] counts) {
    int taken(Bins bins) {
        int taken = 0;
        for (int type = 0; type < counts.length; type++) {
            taken += counts[type] * bins.widths[type];
        }
        return taken;
    }
}
