package buildup.engine.judge.bound.form;

/**
 * All numbers from one to another.
 *
 * @param least no number is less; negative infinity where that is not known
 * @param most no number is more; infinity where that is not known
 */
public record Range(double least, double most) {
    /** Of which nothing is known. */
    public static final Range UNKNOWN = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** All sums of a number of each. */
    public Range plus(Range other) {
        return new Range(least + other.least, most + other.most);
    }

    /** All products of a number of each. */
    public Range times(Range other) {
        double a = least * other.least;
        double b = least * other.most;
        double c = most * other.least;
        double d = most * other.most;
        return new Range(Math.min(Math.min(a, b), Math.min(c, d)), Math.max(Math.max(a, b), Math.max(c, d)));
    }

    /** All of them so many times. */
    public Range times(double factor) {
        return factor >= 0 ? new Range(least * factor, most * factor) : new Range(most * factor, least * factor);
    }

    /** Whether all of them are one number, but for rounding. */
    public boolean isZero(double within) {
        return least >= -within && most <= within;
    }
}
