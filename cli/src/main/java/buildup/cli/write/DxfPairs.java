package buildup.cli.write;

import buildup.profiles.outline.Point;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.Charset;
import java.util.Locale;

/** The text of a DXF file as it grows: a group code on one line, its value on the next. */
final class DxfPairs {
    /** A file that is cut from keeps more digits than a picture: far below what any machine can follow. */
    private static final int PLACES = 9;

    /** What the format's release writes text in, and what it calls that. */
    static final Charset LETTERS = Charset.forName("windows-1252");

    static final String LETTERS_NAME = "ANSI_1252";

    private static final String END = "\r\n";

    private final StringBuilder text = new StringBuilder();

    DxfPairs put(int code, String value) {
        text.append(String.format(Locale.ROOT, "%3d", code))
                .append(END)
                .append(value)
                .append(END);
        return this;
    }

    DxfPairs put(int code, int value) {
        return put(code, Integer.toString(value));
    }

    DxfPairs put(int code, double value) {
        String plain = BigDecimal.valueOf(value)
                .setScale(PLACES, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
        return put(code, plain.contains(".") ? plain : plain + ".0");
    }

    /** A place under a code for x, the one ten above it for y and the one twenty above it for z, which is 0. */
    DxfPairs put(int code, Point at) {
        return put(code, at.x()).put(code + 10, at.y()).put(code + 20, 0.0);
    }

    /**
     * A text in the letters of {@link #LETTERS}. Others are written by their number; a caret, a backslash and two percent
     * signs mean something else in the format.
     */
    DxfPairs putText(int code, String words) {
        StringBuilder plain = new StringBuilder();
        words.replace("%%", "% %").codePoints().forEach(letter -> {
            if (letter == '^') {
                plain.append("^ ");
            } else if (Character.isISOControl(letter) || letter > 0xFFFF || (letter >= 0xD800 && letter <= 0xDFFF)) {
                plain.append('?');
            } else if (letter != '\\' && LETTERS.newEncoder().canEncode((char) letter)) {
                plain.append((char) letter);
            } else {
                plain.append(String.format(Locale.ROOT, "\\U+%04X", letter));
            }
        });
        return put(code, plain.toString());
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
