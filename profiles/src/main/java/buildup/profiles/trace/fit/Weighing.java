package buildup.profiles.trace.fit;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds how far the points of a tracing stray, of which nobody told. The ring is cut as for one noise after another,
 * each greater than the one before; that cutting is believed which makes the points most likely, every number that it
 * takes paid for.
 *
 * <p>A hand does not stray anew at every point, so the likelihood is that of a first-order autoregressive walk along
 * each stretch: to within a constant {@code n log(innovation variance)} (G. Box, G. Jenkins, "Time Series Analysis",
 * 1970, section 7.1), and the price of a number is that of G. Schwarz, "Estimating the dimension of a model", Ann.
 * Statist. 6 (1978) 461-464. That cuttings of such walks can be chosen so is shown by S. Chakar, E. Lebarbier, C.
 * Levy-Leduc, S. Robin, "A robust approach for estimating change-points in the mean of an AR(1) process", Bernoulli 23
 * (2017) 1408-1447. How many points in a row stray as one is the integrated autocorrelation time of what is left over,
 * its window set as in A. Sokal, "Monte Carlo Methods in Statistical Mechanics", Lausanne 1989, section 3. All of these
 * are cited from memory.
 */
public final class Weighing {
    /** Each noise is so many times the one before. */
    private static final double STEP = 1.3;

    /** A tracing that strays by more than this share of its size shows nothing. */
    private static final double GREATEST = 0.05;

    /** Price of a number, in units of the logarithm of the number of points. */
    private static final double NUMBER_PRICE = 1.5;

    /** Numbers of a straight stretch and of a round one: where it ends, and its sizes. */
    private static final int LINE_NUMBERS = 3;

    private static final int ARC_NUMBERS = 4;

    /** When so many cuttings in a row are so much worse than the best, coarser ones are no better. */
    private static final int GIVEN_UP = 8;

    private static final double HOPELESS = 100;

    /** Shorter stretches follow their points, and say nothing of the noise. */
    private static final int LEAST_STRETCH = 8;

    /** The window of the autocorrelation is so many times what it comes to. */
    private static final double WINDOW = 3;

    /** Standard deviations by which an autocorrelation shows. */
    private static final double SEEN = 2;

    private static final int LONGEST_LAG = 200;

    /** A drawing of a molding has no more lines and arcs, and so many points on one of them at least in the mean. */
    private static final int MOST_DRAWN = 40;

    private static final int POINTS_DRAWN = 6;

    /** Cut so much finer, two arcs that passed for one part; a spline falls to many pieces. */
    private static final int MORE_DRAWN = 1;

    /** The pieces of a spline leave more than this share of what they were cut for; true lines and arcs nothing at all. */
    private static final double EXACTLY = 0.1;

    /** Points in a row are never taken to be so many that fewer than this are left that stray alone. */
    private static final double LEAST_WORTH = 12;

    private final List<Point> ring;
    private final Moments moments;
    private final double least;

    private Weighing(List<Point> ring) {
        this.ring = Splitting.fromFarthest(ring);
        this.moments = Moments.of(this.ring);
        this.least = Tolerance.LEAST_STRAYING * moments.spread();
    }

    /**
     * A cutting and how well it does.
     *
     * @param cutFor the noise that it was cut for, in
     * @param cost twice the negative logarithm of its likelihood with all prices, less a constant
     */
    private record Trial(double cutFor, Noise noise, int members, double cost) {}

    /**
     * What points stray by.
     *
     * @param cutFor the noise to cut the ring for: that of the points, but where another number of members would come of
     *     it than of the cutting that is believed
     * @param rival how much less likely the best cutting is that has two members more or fewer, as twice the logarithm of
     *     how many times; infinite when there is none
     */
    public record Weighed(Noise noise, double cutFor, double rival) {}

    /** How far points stray from their nearest neighbors' curve; less than all of it when they stray alike. */
    public static double grain(List<Point> ring) {
        return Grain.of(ring);
    }

    /**
     * Whether the points lie on a few true lines and arcs, as no hand's do: those of a drawing.
     *
     * <p>Fitted for any noise that is greater, what two arcs leave that pass for one looks like a smooth hand.
     *
     * @param byEnds whether some of its lines were drawn by their ends; one of even steps was followed
     */
    public static boolean isDrawn(List<Point> ring, boolean byEnds) {
        Weighing weighing = new Weighing(ring);
        List<Splitting.Stretch> stretches = Splitting.roughly(weighing.ring, weighing.moments, Tolerance.DRAWN_CUT);
        double square = stretches.stream()
                        .map(weighing::rest)
                        .flatMapToDouble(Arrays::stream)
                        .map(off -> off * off)
                        .sum()
                / ring.size();
        int coarse = Splitting.roughly(weighing.ring, weighing.moments, Tolerance.TRACED_CUT)
                .size();
        double rest = Math.sqrt(square);
        return stretches.size() <= MOST_DRAWN
                && (stretches.size() <= coarse + MORE_DRAWN || (byEnds && rest <= EXACTLY * Tolerance.DRAWN_CUT))
                && POINTS_DRAWN * stretches.size() <= ring.size()
                && rest <= Tolerance.DRAWN_CUT;
    }

    /**
     * What the points of a ring stray by, if nothing was said.
     *
     * @param least the noise that it is cut for at least, in
     */
    public static Weighed of(List<Point> ring, double least) {
        List<Trial> trials = new Weighing(ring).trials(Math.max(Grain.of(ring), least));
        int best = 0;
        for (int i = 1; i < trials.size(); i++) {
            best = trials.get(i).cost() < trials.get(best).cost() ? i : best;
        }
        int members = trials.get(best).members();
        int from = best;
        while (from > 0 && trials.get(from - 1).members() == members) {
            from--;
        }
        int to = best;
        while (to + 1 < trials.size() && trials.get(to + 1).members() == members) {
            to++;
        }
        Noise noise = trials.get(best).noise();
        double cutFor = Math.max(
                trials.get(from).cutFor(),
                Math.min(noise.weighed(), trials.get(to).cutFor()));
        double cost = trials.get(best).cost();
        double rival = trials.stream()
                .filter(trial -> Math.abs(trial.members() - members) > 1)
                .mapToDouble(trial -> trial.cost() - cost)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        return new Weighed(noise, cutFor, rival);
    }

    /** All cuttings that are weighed, the finest first; at least one. */
    private List<Trial> trials(double finest) {
        double greatest = GREATEST * moments.spread();
        List<Trial> trials = new ArrayList<>();
        double best = Double.POSITIVE_INFINITY;
        int lost = 0;
        for (double noise = Math.max(finest, least);
                trials.isEmpty() || (noise < greatest && lost < GIVEN_UP);
                noise *= STEP) {
            Trial trial = trial(noise);
            trials.add(trial);
            best = Math.min(best, trial.cost());
            lost = trial.cost() > best + HOPELESS ? lost + 1 : 0;
        }
        return trials;
    }

    private Trial trial(double cutFor) {
        List<Splitting.Stretch> stretches = Splitting.roughly(ring, moments, cutFor);
        List<double[]> rests = stretches.stream()
                .filter(stretch -> stretch.count() >= LEAST_STRETCH)
                .map(this::rest)
                .toList();
        int numbers = stretches.stream()
                .mapToInt(stretch -> stretch.curved() ? ARC_NUMBERS : LINE_NUMBERS)
                .sum();
        double variance = Math.max(lagged(rests, 0), least * least);
        double cost = ring.size() * Math.log(variance)
                + Walking.gain(rests, least, ring.size())
                + NUMBER_PRICE * numbers * Math.log(ring.size());
        return new Trial(cutFor, noise(rests, variance, numbers), stretches.size(), cost);
    }

    /** Distances of the points of a stretch from its own best line or circle, in order. */
    private double[] rest(Splitting.Stretch stretch) {
        double[] rest = new double[stretch.count()];
        if (stretch.curved()) {
            Moments.Circle circle = moments.circle(stretch.from(), stretch.to());
            for (int i = 0; i < rest.length; i++) {
                rest[i] = ring.get(stretch.from() + i).distance(circle.center()) - circle.radius();
            }
            return rest;
        }
        Point way = Point.towards(moments.lineAngle(stretch.from(), stretch.to()));
        Point mean = moments.mean(stretch.from(), stretch.to());
        for (int i = 0; i < rest.length; i++) {
            rest[i] = way.cross(ring.get(stretch.from() + i).minus(mean));
        }
        return rest;
    }

    /** Mean product of what is left over at two points so far apart in a row. */
    private static double lagged(List<double[]> rests, int lag) {
        double sum = 0;
        int count = 0;
        for (double[] rest : rests) {
            for (int i = 0; i + lag < rest.length; i++) {
                sum += rest[i] * rest[i + lag];
                count++;
            }
        }
        return count > 0 ? sum / count : 0;
    }

    /**
     * What points stray by.
     *
     * @param rests distances of the points of each stretch from its curve, in order, in
     * @param variance mean square of all of them
     * @param numbers that were fitted to them
     */
    static Noise noise(List<double[]> rests, double variance, int numbers) {
        double alike = 1;
        int points = rests.stream().mapToInt(rest -> rest.length).sum();
        // what is less than so much may come of points that stray alone
        double seen = SEEN / Math.sqrt(points);
        for (int lag = 1; lag <= LONGEST_LAG && lag < WINDOW * alike + 1; lag++) {
            double one = lagged(rests, lag) / variance;
            if (one < seen) {
                break;
            }
            alike += 2 * one;
        }
        double bounded = Math.max(1, Math.min(alike, points / LEAST_WORTH));
        // each number that was fitted has taken away as much as a point that strays alone
        double worth = points / bounded;
        double left = Math.max(worth / 4, worth - numbers);
        return Noise.measured(Math.sqrt(variance), bounded * worth / left, points);
    }
}
