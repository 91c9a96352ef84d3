package buildup.shared.length;

import java.text.Normalizer;
import java.util.regex.Pattern;

/** Brings the characters of a written size to the plain ones: blanks, minus signs, primes, quotes, fractions. */
final class Spelling {

    private static final Pattern BLANKS = Pattern.compile("[\\s\\u00A0\\u2007\\u2009\\u200A\\u202F]+");
    private static final Pattern DASHES = Pattern.compile("[\\u2010-\\u2013\\u2212]");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");
    private static final char FRACTION_SLASH = '\u2044';

    private Spelling() {}

    /** The text with single blanks and plain minus signs; these two are never worth a word to the user. */
    static String tidy(String text) {
        return DASHES.matcher(BLANKS.matcher(text).replaceAll(" "))
                .replaceAll("-")
                .strip();
    }

    /** The tidy text in ASCII marks: {@code 1⅜″} becomes {@code 1 3/8"}, {@code 3,5} becomes {@code 3.5}. */
    static String plain(String tidy) {
        StringBuilder plain = new StringBuilder();
        for (int i = 0; i < tidy.length(); i++) {
            char c = tidy.charAt(i);
            switch (c) {
                case '\u2018', '\u2019', '\u2032', '\u02B9' -> plain.append('\'');
                case '\u201C', '\u201D', '\u2033', '\u02BA' -> plain.append('"');
                case FRACTION_SLASH, '\u2215' -> plain.append('/');
                default -> appendFraction(plain, c);
            }
        }
        return DECIMAL_COMMA.matcher(plain.toString().replace("''", "\"")).replaceAll(".");
    }

    private static void appendFraction(StringBuilder plain, char c) {
        String spelled = c < 0x80 ? "" : Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFKC);
        if (spelled.indexOf(FRACTION_SLASH) < 0) {
            plain.append(c);
            return;
        }
        boolean afterWhole = !plain.isEmpty() && Character.isDigit(plain.charAt(plain.length() - 1));
        plain.append(afterWhole ? " " : "").append(spelled.replace(FRACTION_SLASH, '/'));
    }
}
