package buildup.shared.length;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The fractions on a tape: denominators that are powers of two up to 64. */
final class ShopFraction {

    private static final Set<String> DENOMINATORS = Set.of("2", "4", "8", "16", "32", "64");

    private ShopFraction() {}

    static boolean isShop(String denominator) {
        return DENOMINATORS.contains(denominator);
    }

    static Reading.Bad mistyped(String numerator, String denominator, boolean unitMissing, LengthUnit unit) {
        return new Reading.Bad(
                Reading.Fault.NO_SHOP_FRACTION,
                numerator + "/" + denominator,
                slip(numerator, denominator)
                        .or(() -> nearest(numerator, denominator))
                        .map(meant -> unitMissing ? meant + " in" : meant)
                        .stream()
                        .toList(),
                unit);
    }

    /** One digit too many in the denominator, or two digits swapped, that makes a proper shop fraction. */
    private static Optional<String> slip(String numerator, String denominator) {
        List<String> tries = new ArrayList<>();
        for (int i = denominator.length() - 1; i >= 0; i--) {
            tries.add(denominator.substring(0, i) + denominator.substring(i + 1));
        }
        for (int i = denominator.length() - 2; i >= 0; i--) {
            tries.add(denominator.substring(0, i)
                    + denominator.charAt(i + 1)
                    + denominator.charAt(i)
                    + denominator.substring(i + 2));
        }
        return tries.stream()
                .filter(ShopFraction::isShop)
                .filter(tried -> Double.parseDouble(numerator) < Double.parseDouble(tried))
                .findFirst()
                .map(tried -> numerator + "/" + tried);
    }

    private static Optional<String> nearest(String numerator, String denominator) {
        double value = Double.parseDouble(numerator) / Double.parseDouble(denominator);
        long sixteenths = Math.round(value * 16);
        return sixteenths == 0 || value > 1000
                ? Optional.empty()
                : Optional.of(LengthPrinter.sixteenths(Length.inches(sixteenths / 16.0)));
    }
}
