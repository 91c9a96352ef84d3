package buildup.catalog.supply;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How much of something that is poured or squeezed.
 *
 * @param cubicInches not negative
 * @param words as it was written: {@code 1 qt}, {@code 2.5 L}
 */
public record Volume(BigDecimal cubicInches, String words) {
    /** Cubic inches in a US gallon, exact (NIST Handbook 44, Appendix C). */
    private static final BigDecimal GALLON = BigDecimal.valueOf(231);

    /** Cubic millimeters in a cubic inch, exact: 25.4 mm to the inch. */
    private static final BigDecimal INCH = new BigDecimal("16387.064");

    /** A container that nobody lifts: a slip of the point or of the unit. */
    private static final BigDecimal MOST = GALLON.multiply(BigDecimal.valueOf(1000));

    private static final Pattern VOLUME = Pattern.compile("(\\d{1,6}(?:\\.\\d{1,9})?|\\d{1,3}/\\d{1,3}) ?([a-z ]+)");

    /** A volume with its unit; nothing when it cannot be read, is nothing, or is more than 1,000 gallons. */
    public static Optional<Volume> read(String text) {
        String plain = text.strip();
        Matcher volume = VOLUME.matcher(plain.toLowerCase(Locale.ROOT));
        if (!volume.matches()) {
            return Optional.empty();
        }
        return unit(volume.group(2).strip())
                .flatMap(unit -> number(volume.group(1)).map(count -> count.multiply(unit)))
                .filter(inches -> inches.signum() > 0 && inches.compareTo(MOST) <= 0)
                .map(inches -> new Volume(inches, plain));
    }

    private static Optional<BigDecimal> number(String text) {
        int bar = text.indexOf('/');
        if (bar < 0) {
            return Optional.of(new BigDecimal(text));
        }
        BigDecimal below = new BigDecimal(text.substring(bar + 1));
        return below.signum() == 0
                ? Optional.empty()
                : Optional.of(new BigDecimal(text.substring(0, bar)).divide(below, MathContext.DECIMAL64));
    }

    private static Optional<BigDecimal> unit(String word) {
        return switch (word) {
            case "gal" -> Optional.of(GALLON);
            case "qt" -> Optional.of(part(4));
            case "pt" -> Optional.of(part(8));
            case "oz", "fl oz" -> Optional.of(part(128));
            case "l" -> Optional.of(metric(1_000_000));
            case "ml" -> Optional.of(metric(1_000));
            default -> Optional.empty();
        };
    }

    private static BigDecimal part(int of) {
        return GALLON.divide(BigDecimal.valueOf(of), MathContext.DECIMAL64);
    }

    private static BigDecimal metric(int cubicMillimeters) {
        return BigDecimal.valueOf(cubicMillimeters).divide(INCH, MathContext.DECIMAL64);
    }
}
