package buildup.profiles.trace.ring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds where a closed tracing leaps: a step many times as long as the others, in a tracing that else goes along its
 * straight lines in small steps. A program that draws a line by its ends leaps along all of them, and is believed.
 */
final class Skips {
    /** A leap is so many times as long as a usual step, and no shorter than the least member that is milled. */
    private static final double LEAP = 8;

    private static final double LEAST = 1.0 / 16;

    /** A line of so many small steps was not drawn by its ends. */
    private static final int DENSE = 12;

    /** So straight is a line, as a share of its length. */
    private static final double STRAIGHT = 0.05;

    /** And within so much: what bends more is no line that a hand shakes on, but a shallow curve. In. */
    private static final double SHAKEN = 1.0 / 32;

    private Skips() {}

    /** The ring, open where it leaps. */
    static List<Dot> opened(List<Dot> ring) {
        int n = ring.size();
        double[] steps = new double[n];
        for (int i = 0; i < n; i++) {
            steps[i] = ring.get(i).at().distance(ring.get((i + 1) % n).at());
        }
        double[] sorted = steps.clone();
        Arrays.sort(sorted);
        double leap = Math.max(LEAST, LEAP * sorted[n / 2]);
        if (!(sorted[n - 1] > leap) || !goesAlongLines(ring, steps, leap)) {
            return ring;
        }
        List<Dot> opened = new ArrayList<>(ring);
        for (int i = 0; i < n; i++) {
            if (steps[i] > leap) {
                opened.set(i, ring.get(i).opened(true));
            }
        }
        return opened;
    }

    /** Whether there is a straight stretch of small steps that is as long as a leap. */
    private static boolean goesAlongLines(List<Dot> ring, double[] steps, double leap) {
        int n = ring.size();
        double longest = Arrays.stream(steps).max().orElse(0);
        for (int from = 0; from < n; from += DENSE / 2) {
            int to = from;
            double way = 0;
            while (to < from + n && steps[to % n] <= leap && (way < longest || to < from + DENSE)) {
                way += steps[to % n];
                to++;
            }
            double straight = ring.get(from).at().distance(ring.get(to % n).at());
            if (to >= from + DENSE && way >= longest && straightly(ring, from, to, straight)) {
                return true;
            }
        }
        return false;
    }

    private static boolean straightly(List<Dot> ring, int from, int to, double length) {
        for (int i = from; i < to; i++) {
            double off = ring.get(i % ring.size())
                    .at()
                    .distance(RingSizes.foot(
                            ring.get(i % ring.size()).at(),
                            ring.get(from).at(),
                            ring.get(to % ring.size()).at()));
            if (off > Math.min(STRAIGHT * length, SHAKEN)) {
                return false;
            }
        }
        return true;
    }
}
