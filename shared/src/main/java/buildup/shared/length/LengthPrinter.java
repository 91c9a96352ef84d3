package buildup.shared.length;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as text. Digits, signs and points are the same under every default locale. */
public final class LengthPrinter {

    /** Places of a decimal figure that computing does not blur. */
    private static final int COMPUTED = 9;

    private LengthPrinter() {}

    /**
     * The nearest sixteenth of an inch, as {@code 6-5/8}, with {@code +} behind it when the true size is more and
     * {@code -} when it is less; a size halfway goes away from zero. Behind a negative size such a mark could be read
     * both ways, so one that lies on no sixteenth is printed with three decimals.
     */
    public static String sixteenths(Length length) {
        return fraction(length, 16);
    }

    /**
     * As {@link #sixteenths}, to any step.
     *
     * @param denominator steps in an inch, at least 1
     */
    public static String fraction(Length length, int denominator) {
        double inches = length.toInches();
        long steps = Math.round(Math.abs(inches) * denominator);
        double printed = Math.copySign((double) steps / denominator, inches);
        String sign = inches < 0 && steps > 0 ? "-" : "";
        String mark = mark(inches - printed);
        return inches < 0 && !mark.isEmpty() ? decimals(length, 3) : sign + mixed(steps, denominator) + mark;
    }

    /**
     * A size that, typed back, is the same within what counts as touching: a fraction down to 1/64 where it is one, else
     * thousandths.
     */
    public static String toContact(Length length) {
        for (int denominator : new int[] {16, 32, 64}) {
            double steps = length.toInches() * denominator;
            if (Math.abs(steps - Math.rint(steps)) <= PrintTolerance.CONTACT * denominator) {
                return fraction(Length.inches(Math.rint(steps) / denominator), denominator);
            }
        }
        return decimals(length, 3);
    }

    /** Millimeters to one decimal, {@code +} or {@code -} behind it when the true size is more or less. */
    public static String tenths(Length length) {
        double millimeters = length.toMillimeters();
        BigDecimal computed = BigDecimal.valueOf(millimeters).setScale(COMPUTED, RoundingMode.HALF_UP);
        BigDecimal printed = computed.setScale(1, RoundingMode.HALF_UP);
        double more = millimeters - printed.doubleValue();
        String mark = mark(more / 25.4);
        if (millimeters < 0 && !mark.isEmpty()) {
            return computed.setScale(2, RoundingMode.HALF_UP).toPlainString();
        }
        return printed.stripTrailingZeros().toPlainString() + mark;
    }

    private static String mark(double more) {
        return Math.abs(more) <= PrintTolerance.MARKED ? "" : more > 0 ? "+" : "-";
    }

    private static String mixed(long steps, int denominator) {
        long whole = steps / denominator;
        long rest = steps % denominator;
        if (rest == 0) {
            return Long.toString(whole);
        }
        long divisor = greatestCommonDivisor(rest, denominator);
        String fraction = rest / divisor + "/" + denominator / divisor;
        return whole == 0 ? fraction : whole + "-" + fraction;
    }

    private static long greatestCommonDivisor(long a, long b) {
        return b == 0 ? a : greatestCommonDivisor(b, a % b);
    }

    /**
     * Inches with exactly that many places, halves away from zero, never {@code -0}. The digits past the ninth are those
     * of computing: a half that misses by so little is a half.
     */
    public static String decimals(Length length, int places) {
        return BigDecimal.valueOf(length.toInches())
                .setScale(Math.max(places, COMPUTED), RoundingMode.HALF_UP)
                .setScale(places, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** Millimeters with at most that many places and no zeros behind. */
    public static String millimeters(Length length, int places) {
        return trimmed(length.toMillimeters(), places);
    }

    /** The least multiple of the step that is not less; a length within 1e-9 in of a multiple is that multiple. */
    public static Length roundUp(Length length, int denominator) {
        return onStep(length, denominator, RoundingMode.CEILING);
    }

    /** The greatest multiple of the step that is not more; a length within 1e-9 in of a multiple is that multiple. */
    public static Length roundDown(Length length, int denominator) {
        return onStep(length, denominator, RoundingMode.FLOOR);
    }

    private static Length onStep(Length length, int denominator, RoundingMode mode) {
        double steps = length.toInches() * denominator;
        double nearest = Math.rint(steps);
        double chosen = Math.abs(steps - nearest) <= PrintTolerance.ON_A_STEP * denominator
                ? nearest
                : mode == RoundingMode.CEILING ? Math.ceil(steps) : Math.floor(steps);
        return Length.inches(chosen / denominator);
    }

    /** A number with at most that many places and no zeros behind. */
    static String trimmed(double number, int places) {
        BigDecimal rounded = rounded(number, places).stripTrailingZeros();
        return rounded.toPlainString();
    }

    private static BigDecimal rounded(double number, int places) {
        return BigDecimal.valueOf(number).setScale(places, RoundingMode.HALF_UP);
    }
}
