package buildup.profiles.trace.fit;

import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** How a ring would be with one member more or one less, and how well the points tell that it is not so. */
public final class OneMember {
    /**
     * What one more member gains by chance is mostly less than this, as (distance / noise)^2, and what the two likeliest gain
     * together less than that. Found from true outlines with known noise: where members were lost, they gained more.
     */
    private static final double ONE = 12;

    private static final double ONE_OF_TWO = 13.5;

    /** A member more that gains so much may be there: a little under two standard deviations. */
    private static final double PERHAPS = 3;

    /** A member that earns no more than this beyond its price may be none: twice the logarithm of a hundred and fifty. */
    private static final double SPARE = 10;

    private final Fitting fitting;

    /** What points are believed at most, as a share of what they were weighed by; squared, since it multiplies gains. */
    private final double share;

    /** For every curve, the rings with a member more there. */
    private final List<List<Fitting>> more;

    private OneMember(Fitting fitting, double share, List<List<Fitting>> more) {
        this.fitting = fitting;
        this.share = share;
        this.more = more;
    }

    /**
     * Of a ring.
     *
     * @param least what points are never believed more than, in
     */
    public static OneMember of(Fitting fitting, double least) {
        double share = Math.min(1, fitting.noise().weighed() / least);
        return new OneMember(fitting, share * share, Improving.withOneMore(fitting));
    }

    private double gain(Fitting other) {
        return share * (fitting.error() - other.error());
    }

    /**
     * Where the points may well show a member that was not worth its price: numbers of points, of all in their order, the
     * likeliest first.
     */
    public List<Integer> missing() {
        List<Double> gains = more.stream()
                .map(here -> here.stream().mapToDouble(this::gain).max().orElse(0))
                .toList();
        List<Integer> byGain =
                new ArrayList<>(IntStream.range(0, gains.size()).boxed().toList());
        byGain.sort(Comparator.comparingDouble(i -> -gains.get(i)));
        double first = gains.get(byGain.get(0));
        double second = gains.size() > 1 ? gains.get(byGain.get(1)) : 0;
        int suspect = first + second > ONE_OF_TWO ? 2 : first > ONE ? 1 : 0;
        return byGain.stream().limit(suspect).map(this::middleOfAll).toList();
    }

    /**
     * Where the points may as well show one member less: numbers of points, of all in their order. Points that stray less
     * than any hand are drawn, and were weighed as if they strayed more: a member that they show was meant.
     */
    public List<Integer> spare() {
        if (fitting.noise().scatter() <= Tolerance.LEAST_SCATTER + Tolerance.COINCIDENT) {
            return List.of();
        }
        List<Double> losses = Improving.losses(fitting);
        return IntStream.range(0, losses.size())
                .filter(i -> losses.get(i) < SPARE)
                .mapToObj(this::middleOfAll)
                .toList();
    }

    /**
     * How far a figure of the outline, such as its height, may be off because a member is missing that the points tell too
     * little of to be drawn, and say more for than against. An arc that hardly bends is none.
     *
     * @param most a change beyond this, in, is none of the figure: it is a corner that stands out where no point lies
     */
    public double hidden(ToDoubleFunction<List<Segment>> figure, double most) {
        double own = figure(fitting, figure);
        return more.stream()
                .flatMap(List::stream)
                .filter(other -> gain(other) > PERHAPS
                        && IntStream.range(0, other.curves().size()).noneMatch(i -> Improving.hardlyBends(other, i)))
                .mapToDouble(other -> Math.abs(figure(other, figure) - own))
                .filter(change -> change <= most)
                .max()
                .orElse(0);
    }

    private static double figure(Fitting of, ToDoubleFunction<List<Segment>> figure) {
        return Corners.segments(of.curves(), of.kinds(), of.starts())
                .map(figure::applyAsDouble)
                .orElse(Double.NaN);
    }

    private int middleOfAll(int curve) {
        return fitting.points().stream().limit(curve).mapToInt(List::size).sum()
                + fitting.points().get(curve).size() / 2;
    }
}
