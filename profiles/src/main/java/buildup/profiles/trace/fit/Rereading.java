package buildup.profiles.trace.fit;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * Reads a ring again, cut coarser and finer, where the first reading may not be the best.
 *
 * <p>One cutting leads to one reading, and improving it member by member does not find every better one. Where no reading
 * holds together the noise was taken for too small: a smooth hand that shakes slowly was followed with a member for every
 * sway. Then more noise is tried, and of these readings that one comes first which makes the points likeliest by the walk
 * that a hand really takes ({@link Walking}).
 */
public final class Rereading {
    /** Noises to cut for, in units of what was cut for at first. */
    private static final List<Double> CUTS = List.of(0.5, 2.0);

    /** Noises to try, in units of what was weighed at first. */
    private static final List<Double> NOISES = List.of(1.7, 2.8, 4.8);

    /** More noise is cut for so many times as coarsely as less. */
    private static final double COARSER = 2;

    /** Price of a number, in units of the logarithm of the number of points; as when noise is weighed. */
    private static final double NUMBER_PRICE = 1.5;

    /** Numbers of a line and of an arc: where it ends, and its sizes. */
    private static final int LINE_NUMBERS = 3;

    private static final int ARC_NUMBERS = 4;

    private Rereading() {}

    /**
     * All readings that hold together, the best first; those with more noise are made only when they are asked for.
     *
     * @param first what the ring was read as
     * @param cutFor the noise that it was cut for, in
     * @param habits binds a reading as moldings mostly are; of two readings that is better which is so bound
     */
    public static Stream<Fitting> of(List<Point> ring, Fitting first, double cutFor, UnaryOperator<Fitting> habits) {
        Stream<Fitting> otherwise =
                CUTS.stream().flatMap(cut -> Fitting.of(ring, first.noise(), cutFor * cut).stream());
        Stream<Fitting> usual = Stream.concat(Stream.of(first), otherwise)
                .filter(Fitting::sound)
                .sorted(Comparator.comparingDouble(reading -> Pricing.price(habits.apply(reading))));
        return Stream.concat(usual, noisier(ring, first, cutFor));
    }

    /** Readings with more noise, the likeliest first; they are made only when they are asked for. */
    public static Stream<Fitting> noisier(List<Point> ring, Fitting first, double cutFor) {
        return Stream.of(first).flatMap(reading -> withMore(ring, reading, cutFor));
    }

    private static Stream<Fitting> withMore(List<Point> ring, Fitting first, double cutFor) {
        double least = Tolerance.LEAST_STRAYING * Moments.of(ring).spread();
        Noise noise = first.noise();
        return NOISES.stream()
                .map(factor -> new Noise(noise.scatter() * factor, noise.alike()))
                .flatMap(more -> Fitting.of(ring, more, COARSER * cutFor).stream())
                .filter(Fitting::sound)
                .sorted(Comparator.comparingDouble(reading -> cost(reading, least)))
                .map(reading -> weighed(reading, least));
    }

    /** Twice the negative logarithm of the likelihood of the points, every number paid for, less a constant. */
    private static double cost(Fitting fitting, double least) {
        List<double[]> rests = rests(fitting);
        int points = rests.stream().mapToInt(rest -> rest.length).sum();
        return points * Math.log(Math.max(square(rests), least * least))
                + Walking.gain(rests, least, points)
                + NUMBER_PRICE * numbers(fitting) * Math.log(points);
    }

    private static int numbers(Fitting fitting) {
        int numbers = -fitting.bonds().size();
        for (Curve curve : fitting.curves()) {
            numbers += curve instanceof Curve.Round ? ARC_NUMBERS : LINE_NUMBERS;
        }
        return numbers;
    }

    private static double square(List<double[]> rests) {
        return rests.stream()
                .flatMapToDouble(Arrays::stream)
                .map(off -> off * off)
                .average()
                .orElse(0);
    }

    private static List<double[]> rests(Fitting fitting) {
        List<double[]> rests = new ArrayList<>();
        for (int i = 0; i < fitting.curves().size(); i++) {
            rests.add(fitting.points().get(i).stream()
                    .mapToDouble(fitting.curves().get(i)::off)
                    .toArray());
        }
        return rests;
    }

    /** The same fitted again by the noise that it leaves. */
    private static Fitting weighed(Fitting fitting, double least) {
        List<double[]> rests = rests(fitting);
        Noise noise = Weighing.noise(rests, Math.max(square(rests), least * least), numbers(fitting));
        return Fitting.solved(
                fitting.curves(), fitting.points(), fitting.bonds(), noise.atLeast(Tolerance.LEAST_SCATTER));
    }
}
