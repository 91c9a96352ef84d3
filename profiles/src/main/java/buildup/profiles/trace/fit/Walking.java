package buildup.profiles.trace.fit;

import buildup.profiles.outline.Tolerance;
import java.util.Arrays;
import java.util.List;

/**
 * How far what is left over at a point follows from what was left over at the points before it. A rough hand starts anew
 * from where it is, and one point tells all; a smooth one also goes on as it went, and it takes several.
 *
 * <p>The walk is autoregressive, its order that which is worth its numbers, its coefficients found from both ends of every
 * stretch (J. P. Burg, "A new analysis technique for time series data", 1968, from memory).
 */
final class Walking {
    private static final int LONGEST = 6;

    private static final int ENDS = 3;

    /** An order that can be asked of fewer than this share of the points tells more of them than of the hand. */
    private static final double TOLD = 0.6;

    private Walking() {}

    /**
     * How much likelier the rests are as a walk than as points that stray alone: the change of twice the negative
     * logarithm, with the price of the walk's own numbers; 0 or less.
     *
     * @param rests distances of the points of each stretch from its own best curve, in order, in
     * @param least what is never believed to be smaller, in
     * @param points for how many it is asked
     */
    static double gain(List<double[]> rests, double least, int points) {
        List<double[]> inner = rests.stream().map(Walking::inner).toList();
        List<double[]> ahead = inner.stream().map(double[]::clone).toList();
        List<double[]> back = inner.stream().map(double[]::clone).toList();
        double power = middle(inner, 0);
        double floor =
                Math.min(1, Math.max(least, Tolerance.FRESH_STROKE) * Math.max(least, Tolerance.FRESH_STROKE) / power);
        double best = 0;
        for (int order = 1; order <= LONGEST && told(inner, order) > TOLD * points; order++) {
            double reflection = reflection(ahead, back, order);
            step(ahead, back, order, reflection);
            double left = Math.max(floor, middle(ahead, order) / power);
            best = Math.min(best, points * Math.log(left) + order * Math.log(points));
        }
        return best;
    }

    /** Without the ends, where a point or two may belong to the neighbor. */
    private static double[] inner(double[] rest) {
        return rest.length > 4 * ENDS ? Arrays.copyOfRange(rest, ENDS, rest.length - ENDS) : rest;
    }

    /** How many points have so many before them in their own stretch. */
    private static int told(List<double[]> rests, int order) {
        return rests.stream().mapToInt(rest -> Math.max(0, rest.length - order)).sum();
    }

    /**
     * The middle one of all squares, those left out that have too few points before them. Where a stretch ends a point too
     * early or too late, some few squares are a thousand times all others.
     */
    private static double middle(List<double[]> rests, int order) {
        double[] squares = rests.stream()
                .flatMapToDouble(rest -> Arrays.stream(rest).skip(order))
                .map(off -> off * off)
                .sorted()
                .toArray();
        return squares.length > 0 ? Math.max(Double.MIN_NORMAL, squares[squares.length / 2]) : Double.MIN_NORMAL;
    }

    private static double reflection(List<double[]> ahead, List<double[]> back, int order) {
        double product = 0;
        double squares = 0;
        for (int s = 0; s < ahead.size(); s++) {
            double[] f = ahead.get(s);
            double[] b = back.get(s);
            for (int i = order; i < f.length; i++) {
                product += f[i] * b[i - 1];
                squares += f[i] * f[i] + b[i - 1] * b[i - 1];
            }
        }
        return squares > 0 ? 2 * product / squares : 0;
    }

    private static void step(List<double[]> ahead, List<double[]> back, int order, double reflection) {
        for (int s = 0; s < ahead.size(); s++) {
            double[] f = ahead.get(s);
            double[] b = back.get(s);
            for (int i = f.length - 1; i >= order; i--) {
                double was = f[i];
                f[i] = was - reflection * b[i - 1];
                b[i] = b[i - 1] - reflection * was;
            }
        }
    }
}
