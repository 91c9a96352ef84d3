package buildup.engine.section.stack;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads days and hours as people write them. */
final class SunTime {
    /** The sun of a day without a year: from year to year it moves by less than a quarter of a degree. */
    private static final int ANY_YEAR = 2025;

    private static final Pattern WORDS = Pattern.compile("(\\d{1,2})\\.? +([A-Za-z]{3,9})(?: +(\\d{4}))?");
    private static final Pattern NUMBERS = Pattern.compile("(?:(\\d{4})-)?(\\d{1,2})-(\\d{1,2})");
    private static final Pattern HOUR = Pattern.compile("(\\d{1,2})(?::([0-5]\\d))?");
    private static final Pattern DECIMAL = Pattern.compile("[+-]?\\d{1,2}(?:\\.\\d{1,9})?");

    private SunTime() {}

    static Optional<LocalDate> day(String text) {
        Matcher words = WORDS.matcher(text.trim());
        if (words.matches()) {
            String start = words.group(2).toUpperCase(Locale.ROOT);
            for (Month month : Month.values()) {
                if (month.name().startsWith(start)) {
                    return date(words.group(3), month.getValue(), words.group(1));
                }
            }
            return Optional.empty();
        }
        Matcher numbers = NUMBERS.matcher(text.trim());
        return numbers.matches()
                ? date(numbers.group(1), Integer.parseInt(numbers.group(2)), numbers.group(3))
                : Optional.empty();
    }

    private static Optional<LocalDate> date(String year, int month, String day) {
        try {
            int of = year == null ? ANY_YEAR : Integer.parseInt(year);
            return Optional.of(LocalDate.of(of, month, Integer.parseInt(day)));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    /** Hours from 0 to 24, as 15, 15:30 or 15.5. */
    static OptionalDouble hour(String text) {
        Matcher clock = HOUR.matcher(text.trim());
        if (clock.matches()) {
            double minutes = clock.group(2) == null ? 0 : Integer.parseInt(clock.group(2));
            return within(Integer.parseInt(clock.group(1)) + minutes / 60, 0, 24);
        }
        return decimal(text, 0, 24);
    }

    /** Hours ahead of UTC, -12 to 14. */
    static OptionalDouble offset(String text) {
        return decimal(text, -12, 14);
    }

    private static OptionalDouble decimal(String text, double least, double most) {
        return DECIMAL.matcher(text.trim()).matches()
                ? within(Double.parseDouble(text.trim()), least, most)
                : OptionalDouble.empty();
    }

    private static OptionalDouble within(double value, double least, double most) {
        return value >= least && value <= most ? OptionalDouble.of(value) : OptionalDouble.empty();
    }
}
