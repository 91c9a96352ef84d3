package buildup.shared.text;

import java.util.function.IntUnaryOperator;

/**
 * Marks in a text that nobody sees and that change what is seen: they steer a terminal, break a line, turn the writing
 * direction of what follows, or make two names that look alike (Unicode Technical Report #36, sections 2.5 and 2.6).
 * Joiners, and the marks of direction that only say how one letter runs, belong to the writing of several languages and
 * are none of them.
 */
public final class Marks {
    private static final int SOFT_HYPHEN = 0xAD;
    private static final int ZERO_WIDTH_SPACE = 0x200B;
    private static final int BYTE_ORDER_MARK = 0xFEFF;

    private Marks() {}

    /** Whether the text holds none but line breaks and tabs. */
    public static boolean none(String text) {
        return text.codePoints().allMatch(letter -> ofLines(letter) || !unseen(letter));
    }

    /** Whether the code point is one; a line break and a tab too. */
    public static boolean unseen(int letter) {
        return parts(letter) || turns(letter) || hides(letter);
    }

    private static boolean ofLines(int letter) {
        return letter == '\n' || letter == '\r' || letter == '\t';
    }

    /** The text without them: those that part words become blanks. */
    public static String without(String text) {
        return mapped(text, letter -> parts(letter) ? ' ' : letter);
    }

    /** The text without them but for its line breaks and tabs. */
    public static String keepingLines(String text) {
        return mapped(text, letter -> parts(letter) && !ofLines(letter) ? ' ' : letter);
    }

    private static String mapped(String text, IntUnaryOperator letters) {
        StringBuilder plain = new StringBuilder();
        text.codePoints()
                .filter(letter -> !turns(letter) && !hides(letter))
                .map(letters)
                .forEach(plain::appendCodePoint);
        return plain.toString();
    }

    /** Control characters and breaks of lines. */
    private static boolean parts(int letter) {
        return switch (Character.getType(letter)) {
            case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> true;
            default -> false;
        };
    }

    private static boolean turns(int letter) {
        return within(letter, 0x202A, 0x202E) || within(letter, 0x2066, 0x2069);
    }

    private static boolean within(int letter, int first, int last) {
        return first <= letter && letter <= last;
    }

    /** What takes no room, and halves of letters. */
    private static boolean hides(int letter) {
        return letter == SOFT_HYPHEN
                || letter == ZERO_WIDTH_SPACE
                || letter == BYTE_ORDER_MARK
                || within(letter, 0x2060, 0x2064)
                || within(letter, 0xFFF9, 0xFFFB)
                || within(letter, 0xE0000, 0xE007F)
                || Character.getType(letter) == Character.SURROGATE;
    }
}
