package buildup.engine.section.free;

import buildup.shared.figure.Quantity;
import buildup.shared.length.Length;
import buildup.shared.length.LengthUnit;
import buildup.shared.length.LengthWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How the sizes of one place are typed.
 *
 * @param quantity a length or an angle
 * @param unit of bare numbers
 * @param bare whether its sizes are bare numbers, without a unit or a fraction
 */
public record SizeSpelling(Quantity quantity, LengthUnit unit, boolean bare) {
    private static final int SIXTEENTHS = 16;

    /** As many decimals as a length can be typed with. */
    private static final int DECIMALS = 9;

    /** @param amount in, or in degrees */
    String typed(double amount) {
        if (quantity != Quantity.LENGTH) {
            return decimal(amount);
        }
        if (bare) {
            return decimal(amount / unit.of(1).toInches());
        }
        if (unit.isMetric()) {
            return decimal(amount / unit.of(1).toInches()) + " " + unit.symbol();
        }
        String fraction = LengthWriter.inches(Length.inches(amount));
        boolean exact = !fraction.endsWith("+") && !fraction.endsWith("-");
        return exact ? fraction : decimal(amount) + " in";
    }

    /** The same for sizes near it, the shortest first. */
    List<String> typedNear(double amount) {
        boolean inches = quantity == Quantity.LENGTH && !unit.isMetric();
        double one = quantity == Quantity.LENGTH ? unit.of(1).toInches() : 1;
        Stream<Double> shop = inches ? Stream.of(Math.rint(amount * SIXTEENTHS) / SIXTEENTHS) : Stream.of();
        Stream<Double> decimals = IntStream.rangeClosed(inches ? 2 : 0, DECIMALS)
                .mapToObj(places -> {
                    double scale = Math.pow(10, places);
                    return Math.rint(amount / one * scale) / scale * one;
                });
        return Stream.of(shop, decimals, Stream.of(amount))
                .flatMap(some -> some)
                .map(this::typed)
                .distinct()
                .toList();
    }

    private static String decimal(double number) {
        return BigDecimal.valueOf(number)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
