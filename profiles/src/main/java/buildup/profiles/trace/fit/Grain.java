package buildup.profiles.trace.fit;

import buildup.profiles.outline.Point;
import java.util.Arrays;
import java.util.List;

/**
 * How far traced points lie from the true curve, found from the points themselves: the mean square distance of short
 * runs from their best circle, of which half of all runs have less. Corners spoil few runs and so do not count.
 */
final class Grain {
    private static final int LEAST_RUN = 12;

    /** Runs end to end so many times the noise; a shorter one would be all noise and no direction. */
    private static final double LEAST_LENGTH = 20;

    /** Numbers of a circle, which the points of a run have given away. */
    private static final int NUMBERS = 3;

    private Grain() {}

    /** Standard deviation of the points of a ring from the curve, in the unit of the points. */
    static double of(List<Point> ring) {
        int n = ring.size();
        int run = Math.min(LEAST_RUN, n);
        double noise = 0;
        while (run <= n) {
            noise = middle(ring, run);
            if (length(ring, run) >= LEAST_LENGTH * noise || run * 2 > n / 4) {
                break;
            }
            run *= 2;
        }
        return noise;
    }

    private static double middle(List<Point> ring, int run) {
        Moments moments = Moments.of(ring);
        double[] means = new double[Math.max(1, ring.size() / run)];
        for (int i = 0; i < means.length; i++) {
            double error =
                    Math.min(moments.lineError(i * run, (i + 1) * run), moments.circleError(i * run, (i + 1) * run));
            means[i] = error / (run - NUMBERS);
        }
        Arrays.sort(means);
        return Math.sqrt(means[means.length / 2]);
    }

    /** Usual distance between the ends of a run. */
    private static double length(List<Point> ring, int run) {
        double[] lengths = new double[Math.max(1, ring.size() / run)];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = ring.get(i * run).distance(ring.get((i + 1) * run - 1));
        }
        Arrays.sort(lengths);
        return lengths[lengths.length / 2];
    }
}
