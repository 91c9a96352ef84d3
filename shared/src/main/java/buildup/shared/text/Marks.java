package buildup.shared.text;

import java.util.List;
import java.util.function.IntUnaryOperator;

/**
 * Marks in a text that nobody sees and that change what is seen: they steer a terminal, break a line, turn the writing
 * direction of what follows, or make two names that look alike (Unicode Technical Report #36, sections 2.5 and 2.6).
 * Joiners, and the marks of direction that only say how one letter runs, belong to the writing of several languages and
 * are none of them.
 */
public final class Marks {
    private static final int FIRST_HIDDEN = 0xAD;

    /**
     * What takes no room: all that Unicode 15 calls default ignorable (DerivedCoreProperties.txt, from memory), but for
     * joiners, marks of direction, and what chooses the form of a letter of Mongolian, of a Chinese name or of a picture;
     * and what sets notes between lines. In rising order.
     */
    private static final List<Span> HIDDEN = List.of(
            new Span(FIRST_HIDDEN, FIRST_HIDDEN),
            new Span(0x34F, 0x34F),
            new Span(0x115F, 0x1160),
            new Span(0x17B4, 0x17B5),
            new Span(0x180E, 0x180E),
            new Span(0x200B, 0x200B),
            new Span(0x2060, 0x2065),
            new Span(0x206A, 0x206F),
            new Span(0x3164, 0x3164),
            new Span(0xFEFF, 0xFEFF),
            new Span(0xFFA0, 0xFFA0),
            new Span(0xFFF0, 0xFFFB),
            new Span(0x1BCA0, 0x1BCA3),
            new Span(0x1D173, 0x1D17A),
            new Span(0xE0000, 0xE00FF),
            new Span(0xE01F0, 0xE0FFF));

    private static final List<Span> TURNING = List.of(new Span(0x202A, 0x202E), new Span(0x2066, 0x2069));

    private record Span(int first, int last) {
        boolean holds(int letter) {
            return first <= letter && letter <= last;
        }
    }

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
        return among(TURNING, letter);
    }

    /** What takes no room, and halves of letters. */
    private static boolean hides(int letter) {
        // most letters that there are, are of English
        return letter >= FIRST_HIDDEN && (among(HIDDEN, letter) || Character.getType(letter) == Character.SURROGATE);
    }

    private static boolean among(List<Span> spans, int letter) {
        for (Span span : spans) {
            if (span.holds(letter)) {
                return true;
            }
        }
        return false;
    }
}
