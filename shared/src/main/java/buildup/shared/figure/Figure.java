package buildup.shared.figure;

/**
 * One figure.
 *
 * @param quantity what it counts
 * @param amount how much, in the unit of {@link Quantity}; may be infinite where nothing bounds it
 * @param rounding how people read it
 */
public record Figure(Quantity quantity, double amount, Rounding rounding) implements Value {
    /** A figure to the nearest usual step. */
    public static Figure of(Quantity quantity, double amount) {
        return new Figure(quantity, amount, Rounding.NEAREST);
    }

    /** A length to the nearest shop size. */
    public static Figure length(double inches) {
        return of(Quantity.LENGTH, inches);
    }

    /** A length that is printed as no less than it is: a need, a cure that more of does not hurt. */
    public static Figure atLeast(double inches) {
        return new Figure(Quantity.LENGTH, inches, Rounding.UP);
    }

    /** A length that is printed as no more than it is: room, bite or wood that is there. */
    public static Figure atMost(double inches) {
        return new Figure(Quantity.LENGTH, inches, Rounding.DOWN);
    }

    /** A move that closes a gap. */
    public static Figure contact(double inches) {
        return new Figure(Quantity.LENGTH, inches, Rounding.CONTACT);
    }

    /** A length of a rule of thumb or an example, round in the unit in which it is told. */
    public static Figure thumb(double inches) {
        return new Figure(Quantity.LENGTH, inches, Rounding.THUMB);
    }

    /** A length in thousandths. */
    public static Figure fine(double inches) {
        return new Figure(Quantity.LENGTH, inches, Rounding.FINE);
    }

    /** Degrees. */
    public static Figure angle(double degrees) {
        return of(Quantity.ANGLE, degrees);
    }

    /** Pounds along a foot of the run. */
    public static Figure lineForce(double poundsPerFoot) {
        return of(Quantity.LINE_FORCE, poundsPerFoot);
    }

    /** Square inches. */
    public static Figure area(double squareInches) {
        return of(Quantity.AREA, squareInches);
    }

    /** A part of one. */
    public static Figure share(double share) {
        return of(Quantity.SHARE, share);
    }

    /** A part of one, in whole percent where it is so, else to a tenth. */
    public static Figure percent(double share) {
        double tenths = Math.rint(share * 1000);
        return share(share).rounded(Rounding.decimals(tenths % 10 == 0 ? 0 : 1));
    }

    /** A whole number of things. */
    public static Figure count(long things) {
        return of(Quantity.COUNT, (double) things);
    }

    /** The same, rounded another way. */
    public Figure rounded(Rounding other) {
        return new Figure(quantity, amount, other);
    }
}
