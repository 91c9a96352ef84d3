package buildup.shared.length;

import java.util.Locale;
import java.util.Optional;

/** The units in which a size may be written. */
public enum LengthUnit {
    INCH("in"),
    MILLIMETRE("mm"),
    CENTIMETRE("cm"),
    FOOT("ft");

    private final String symbol;

    LengthUnit(String symbol) {
        this.symbol = symbol;
    }

    /** The unit of that name or mark, in any case, singular or plural, British or American spelling. */
    public static Optional<LengthUnit> named(String name) {
        return switch (name.strip().toLowerCase(Locale.ROOT)) {
            case "in", "in.", "inch", "inches", "\"" -> Optional.of(INCH);
            case "mm", "millimetre", "millimetres", "millimeter", "millimeters" -> Optional.of(MILLIMETRE);
            case "cm", "centimetre", "centimetres", "centimeter", "centimeters" -> Optional.of(CENTIMETRE);
            case "ft", "ft.", "foot", "feet", "'" -> Optional.of(FOOT);
            default -> Optional.empty();
        };
    }

    /** Whether sizes in it are told in millimetres; else in inches. */
    public boolean isMetric() {
        return this == MILLIMETRE || this == CENTIMETRE;
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
            case MILLIMETRE -> Length.millimetres(amount);
            case CENTIMETRE -> Length.millimetres(amount * 10);
            case FOOT -> Length.inches(amount * 12);
        };
    }
}
