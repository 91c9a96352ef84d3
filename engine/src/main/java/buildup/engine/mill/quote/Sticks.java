package buildup.engine.mill.quote;

import buildup.profiles.outline.Tolerance;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * Whole sticks of the lengths that an order asks for, as many of each as it takes.
 *
 * @param each how many of each length
 * @param lengths asked for, in; none when they may be random
 * @param feet that are delivered
 */
public record Sticks(int each, List<Double> lengths, BigDecimal feet) {
    private static final int INCHES_PER_FOOT = 12;

    /** Decimals of a length in feet that computing does not blur. */
    private static final int COMPUTED = 9;

    /** Copies the list. */
    public Sticks {
        lengths = List.copyOf(lengths);
    }

    /** So many feet, rounded up to whole sticks where lengths are asked for. */
    static Sticks of(List<Double> lengths, BigDecimal feet) {
        double round = lengths.stream().mapToDouble(Double::doubleValue).sum() / INCHES_PER_FOOT;
        if (round <= 0) {
            return new Sticks(0, lengths, feet);
        }
        int each = (int) Math.ceil(feet.doubleValue() / round - Tolerance.COINCIDENT);
        return new Sticks(
                each,
                lengths,
                BigDecimal.valueOf(each * round)
                        .setScale(COMPUTED, RoundingMode.HALF_UP)
                        .stripTrailingZeros());
    }
}
