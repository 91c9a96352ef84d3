package buildup.catalog.format;

import buildup.shared.length.LengthUnit;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length of an SVG file: so many of a unit, and so many user units. A class, for a record's numbers would be open to
 * everyone.
 */
final class SvgLength {
    /** CSS 2.1, section 4.3.2. */
    static final double USER_UNITS_PER_INCH = 96;

    private static final Pattern LENGTH = Pattern.compile("([-+.\\deE]*[\\d.])\\s*+([a-zA-Z]*+)");

    private final double amount;
    private final double userUnits;
    private final Optional<LengthUnit> unit;

    private SvgLength(double amount, double userUnits, Optional<LengthUnit> unit) {
        this.amount = amount;
        this.userUnits = userUnits;
        this.unit = unit;
    }

    double amount() {
        return amount;
    }

    double userUnits() {
        return userUnits;
    }

    /** In which a true size is stated; empty for user units and pixels, which have none of their own. */
    Optional<LengthUnit> unit() {
        return unit;
    }

    /** Empty for what is no length, and for shares of something else. */
    static Optional<SvgLength> read(String text) {
        Matcher matcher = LENGTH.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        OptionalDouble number = Numerals.number(matcher.group(1));
        if (number.isEmpty()) {
            return Optional.empty();
        }
        double n = number.getAsDouble();
        double inch = USER_UNITS_PER_INCH;
        return switch (matcher.group(2).toLowerCase(Locale.ROOT)) {
            case "", "px" -> Optional.of(new SvgLength(n, n, Optional.empty()));
            case "in" -> Optional.of(in(LengthUnit.INCH, n, n * inch));
            case "mm" -> Optional.of(in(LengthUnit.MILLIMETER, n, n * inch / 25.4));
            case "cm" -> Optional.of(in(LengthUnit.CENTIMETER, n, n * inch / 2.54));
            case "pt" -> Optional.of(in(LengthUnit.INCH, n / 72, n * inch / 72));
            case "pc" -> Optional.of(in(LengthUnit.INCH, n / 6, n * inch / 6));
            default -> Optional.empty();
        };
    }

    private static SvgLength in(LengthUnit unit, double amount, double userUnits) {
        return new SvgLength(amount, userUnits, Optional.of(unit));
    }
}
