package buildup.shared.length;

import java.util.Locale;
import java.util.Optional;

/** The units in which a size may be written. */
public enum LengthUnit {
    INCH("in"),
    MILLIMETER("mm"),
    CENTIMETER("cm"),
    FOOT("ft");

    private final String symbol;

    LengthUnit(String symbol) {
        this.symbol = symbol;
    }

    /** The unit of that name or mark, in any case, singular or plural, British or American spelling. */
    public static Optional<LengthUnit> named(String name) {
        return switch (name.strip().toLowerCase(Locale.ROOT)) {
            case "in", "in.", "inch", "inches", "\"" -> Optional.of(INCH);
            case "mm", "millimetre", "millimetres", "millimeter", "millimeters" -> Optional.of(MILLIMETER);
            case "cm", "centimetre", "centimetres", "centimeter", "centimeters" -> Optional.of(CENTIMETER);
            case "ft", "ft.", "foot", "feet", "'" -> Optional.of(FOOT);
            default -> Optional.empty();
        };
    }

    /** Whether sizes in it are told in millimeters; else in inches. */
    public boolean isMetric() {
        return this == MILLIMETER || this == CENTIMETER;
    }

    /** The short form, as printed behind a number. */
    public String symbol() {
        return symbol;
    }

    /**
     * A length of so many of this unit.
     *
     * @throws IllegalArgumentException when not finite
     */
    public Length of(double amount) {
        return switch (this) {
            case INCH -> Length.inches(amount);
            case MILLIMETER -> Length.millimeters(amount);
            case CENTIMETER -> Length.centimeters(amount);
            case FOOT -> Length.inches(amount * 12);
        };
    }
}
