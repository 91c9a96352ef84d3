package buildup.shared.length;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A signed length. Stored in inches; one inch is exactly 25.4 mm by definition (NIST Special Publication 811, 2008
 * edition, Appendix B.8). Always finite, never minus zero. {@link #equals} is exact; compare computed lengths with
 * {@link #near}.
 */
public final class Length implements Comparable<Length> {

    public static final Length ZERO = new Length(0);

    private static final BigDecimal MILLIMETERS = new BigDecimal("25.4");

    private static final BigDecimal CENTIMETERS = new BigDecimal("2.54");

    private final double inches;

    private Length(double inches) {
        if (!Double.isFinite(inches)) {
            throw new IllegalArgumentException("A length must be finite, not " + inches);
        }
        this.inches = inches + 0.0; // turns -0.0 into 0.0
    }

    /**
     * A length of so many inches.
     *
     * @throws IllegalArgumentException when not finite
     */
    public static Length inches(double inches) {
        return new Length(inches);
    }

    /**
     * A length of so many millimeters, rounded once: 19.05 mm is 3/4 in to the last bit, so that a size is one number in
     * whichever unit it is written.
     *
     * @throws IllegalArgumentException when not finite
     */
    public static Length millimeters(double millimeters) {
        return metric(millimeters, MILLIMETERS);
    }

    /**
     * A length of so many centimeters, rounded once as {@link #millimeters}.
     *
     * @throws IllegalArgumentException when not finite
     */
    public static Length centimeters(double centimeters) {
        return metric(centimeters, CENTIMETERS);
    }

    private static Length metric(double amount, BigDecimal perInch) {
        return Double.isFinite(amount)
                ? new Length(BigDecimal.valueOf(amount)
                        .divide(perInch, MathContext.DECIMAL128)
                        .doubleValue())
                : new Length(amount);
    }

    /** In inches, exactly as stored. */
    public double toInches() {
        return inches;
    }

    /** In millimeters, rounded once: 3/4 in is 19.05 mm to the last bit. */
    public double toMillimeters() {
        return new BigDecimal(inches).multiply(MILLIMETERS).doubleValue();
    }

    /** The sum of the two, unrounded. */
    public Length plus(Length other) {
        return new Length(inches + other.inches);
    }

    /** This length less the other, unrounded; it may be negative. */
    public Length minus(Length other) {
        return new Length(inches - other.inches);
    }

    /** The same length with the other sign. */
    public Length negated() {
        return new Length(-inches);
    }

    /** The same length without its sign. */
    public Length abs() {
        return new Length(Math.abs(inches));
    }

    /**
     * This length so many times.
     *
     * @throws IllegalArgumentException when the product is not finite
     */
    public Length times(double ratio) {
        return new Length(inches * ratio);
    }

    /** Whether it is more than 0, by however little. */
    public boolean isPositive() {
        return inches > 0;
    }

    /** Whether the two differ by at most {@code within}. */
    public boolean near(Length other, Length within) {
        return Math.abs(inches - other.inches) <= within.inches;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(inches, other.inches);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Length length && Double.compare(inches, length.inches) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(inches);
    }

    @Override
    public String toString() {
        return inches + " in";
    }
}
