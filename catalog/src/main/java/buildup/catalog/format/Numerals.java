package buildup.catalog.format;

import buildup.shared.figure.Phrase;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/** Numbers as files hold them: digits, a point, perhaps an exponent. No words such as NaN. */
final class Numerals {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,4})?");

    /** Longer is no number of a drawing, and slow to read. */
    private static final int LONGEST = 100;

    private Numerals() {}

    /** A number that a drawing can hold; empty for anything else. */
    static OptionalDouble number(String text) {
        String plain = text.strip().replace('\u2212', '-');
        if (plain.length() > LONGEST || !NUMBER.matcher(plain).matches()) {
            return OptionalDouble.empty();
        }
        double number = Double.parseDouble(plain);
        return Math.abs(number) <= Limits.FARTHEST ? OptionalDouble.of(number) : OptionalDouble.empty();
    }

    static OptionalInt whole(String text) {
        String plain = text.strip();
        return plain.matches("[+-]?\\d{1,9}") ? OptionalInt.of(Integer.parseInt(plain)) : OptionalInt.empty();
    }

    /** What is wrong with a text that is no such number. */
    static Phrase fault(String text) {
        String plain = text.strip();
        return (NUMBER.matcher(plain).matches() ? FormatNotices.NUMBER_TOO_FAR : FormatNotices.NOT_A_NUMBER)
                .with("text", shown(plain));
    }

    /** A stranger's text, short enough for a message and without control characters. */
    static String shown(String text) {
        String plain = text.replaceAll("\\p{Cntrl}", "\uFFFD");
        return plain.length() <= 40 ? plain : plain.substring(0, plain.offsetByCodePoints(0, 30)) + "...";
    }
}
