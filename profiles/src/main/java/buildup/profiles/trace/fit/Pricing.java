package buildup.profiles.trace.fit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What a reading of a ring costs, so that readings of more and of fewer members can be told apart. */
final class Pricing {
    /** Price of a number that is free to be chosen, in units of the logarithm of the number of points. */
    private static final double NUMBER_PRICE = 1.5;

    /**
     * What an arc that is seldom meant must bring in (distance / noise)^2 over a flat: arrises are eased, inside corners
     * mostly are not, no tool leaves a cusp but between two rounds, and a flat that goes over into an arc is mostly flat.
     */
    static final double DOUBTFUL_GAIN = 20;

    /** A hollow of fewer standard deviations is mostly an inside corner. */
    private static final double SMALL_HOLLOW = 16;

    /** Price of one member more, for there are many places where one could begin. */
    private static final double MEMBER_PRICE = 1;

    private Pricing() {}

    private static int count(Fitting fitting) {
        return fitting.points().stream().mapToInt(List::size).sum();
    }

    /** What a reading costs: how far its points lie, and the price of its numbers. */
    static double price(Fitting fitting) {
        int free = -fitting.bonds().size();
        int doubtful = 0;
        for (int i = 0; i < fitting.curves().size(); i++) {
            Curve curve = fitting.curves().get(i);
            free += curve instanceof Curve.Round ? 3 : 2;
            boolean corner = curve instanceof Curve.Round round
                    && round.bend() < 0
                    && round.radius() < SMALL_HOLLOW * fitting.noise().scatter();
            doubtful += corner ? 1 : 0;
        }
        double price = NUMBER_PRICE * free + MEMBER_PRICE * fitting.curves().size();
        return fitting.error() + DOUBTFUL_GAIN * doubtful + Math.log(count(fitting)) * price - square(fitting);
    }

    /** What it saves that lines stand along or square to the longest one: the price of an angle, less what it costs. */
    private static double square(Fitting fitting) {
        Optional<Curve.Straight> longest = longest(fitting);
        if (longest.isEmpty()) {
            return 0;
        }
        double price = NUMBER_PRICE * Math.log(count(fitting));
        double saved = 0;
        for (int i = 0; i < fitting.curves().size(); i++) {
            if (fitting.curves().get(i) instanceof Curve.Straight line
                    && !line.equals(longest.get())
                    && !isTurned(fitting, i)) {
                double off = Math.IEEEremainder(line.angle() - longest.get().angle(), Math.PI / 2) / slack(fitting, i);
                saved += Math.max(0, price - off * off);
            }
        }
        return saved;
    }

    private static boolean isTurned(Fitting fitting, int line) {
        return fitting.bonds().stream().anyMatch(bond -> bond instanceof Bond.Angle angle && angle.line() == line);
    }

    /** Standard deviation of the angle of a line by its own points, radians. */
    private static double slack(Fitting fitting, int line) {
        double length = Math.max(fitting.span(line), fitting.noise().scatter());
        return fitting.noise().weighed()
                * Math.sqrt(12)
                / (length * Math.sqrt(fitting.points().get(line).size()));
    }

    /** The line on the longest stretch; absent when all is curved. */
    static Optional<Curve.Straight> longest(Fitting fitting) {
        return IntStream.range(0, fitting.curves().size())
                .filter(k -> fitting.curves().get(k) instanceof Curve.Straight)
                .boxed()
                .max(Comparator.comparingDouble(fitting::span))
                .map(k -> (Curve.Straight) fitting.curves().get(k));
    }

    /** What one more member costs that needs so many numbers. */
    static double ofMember(Fitting fitting, int numbers) {
        return Math.log(count(fitting)) * (NUMBER_PRICE * numbers + MEMBER_PRICE);
    }
}
