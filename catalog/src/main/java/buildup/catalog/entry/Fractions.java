package buildup.catalog.entry;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Plain numbers as books print them: {@code 3/7}, {@code 1-1/4}, {@code 0.675}, {@code 40}. */
public final class Fractions {
    private static final Pattern NUMBER =
            Pattern.compile("(?:(\\d{1,6})[- ])?(\\d{1,6})/(\\d{1,6})|(\\d{1,6}(?:\\.\\d{1,9})?)");

    private Fractions() {}

    /** The number of a text; nothing when it is none, or divides by nothing. */
    public static Optional<BigDecimal> read(String text) {
        Matcher number = NUMBER.matcher(text.strip());
        if (!number.matches()) {
            return Optional.empty();
        }
        if (number.group(4) != null) {
            return Optional.of(new BigDecimal(number.group(4)));
        }
        BigDecimal below = new BigDecimal(number.group(3));
        if (below.signum() == 0) {
            return Optional.empty();
        }
        BigDecimal whole = number.group(1) == null ? BigDecimal.ZERO : new BigDecimal(number.group(1));
        return Optional.of(whole.add(new BigDecimal(number.group(2)).divide(below, MathContext.DECIMAL64)));
    }
}
