package buildup.profiles.trace.ring;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/** Finds the dots of a scanner in a tracing: the step of which all its coordinates are multiples. */
public final class Pitch {
    /** Fewer steps than this tell nothing. */
    private static final int FEWEST = 60;

    /** The least steps are looked for among this share of all. */
    private static final double LEAST_SHARE = 0.1;

    /** Steps come to a whole number of dots but for this share of one, and so many of them do. */
    private static final double WHOLE = 0.12;

    private static final double MOST = 0.95;

    /** The least of the steps may itself be so many dots long: a sparse tracing of a scan. */
    private static final int LEAST_DOTS = 16;

    /** Steps of more dots have gathered the rounding of the file. */
    private static final double LARGEST = 40;

    /** A step that is a greater share of the size is no dot. */
    private static final double COARSE = 0.01;

    private Pitch() {}

    /** From dot to dot, in the unit of the points; 0 when they lie anywhere. */
    public static double of(List<Dot> ring) {
        double size = RingSizes.size(ring);
        double[] steps = DoubleStream.concat(steps(ring, true), steps(ring, false))
                .filter(step -> step > Tolerance.COINCIDENT * size)
                .sorted()
                .toArray();
        if (steps.length < FEWEST) {
            return 0;
        }
        double least = steps[(int) (steps.length * LEAST_SHARE)];
        for (int dots = 1; dots <= LEAST_DOTS; dots++) {
            double dot = least / dots;
            if (dot < COARSE * size && areWhole(steps, dot)) {
                return dot;
            }
        }
        return 0;
    }

    private static boolean areWhole(double[] steps, double dot) {
        double[] small =
                Arrays.stream(steps).filter(step -> step < LARGEST * dot).toArray();
        double whole = Arrays.stream(small)
                .filter(step -> Math.abs(step / dot - Math.rint(step / dot)) < WHOLE)
                .count();
        return small.length >= FEWEST / 2 && whole > MOST * small.length;
    }

    private static DoubleStream steps(List<Dot> ring, boolean across) {
        double[] steps = new double[ring.size() - 1];
        for (int i = 0; i < steps.length; i++) {
            Point step = ring.get(i + 1).at().minus(ring.get(i).at());
            steps[i] = Math.abs(across ? step.x() : step.y());
        }
        return Arrays.stream(steps);
    }
}
