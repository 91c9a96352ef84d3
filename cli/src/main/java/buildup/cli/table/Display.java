package buildup.cli.table;

import buildup.shared.text.Marks;
import java.util.ArrayList;
import java.util.List;

/**
 * Text as a terminal shows it: in columns, of which a letter takes one, an East Asian wide letter two and a combining
 * mark none (Unicode Standard Annex #11, East Asian Width; the wide blocks only).
 */
public final class Display {
    private record Range(int first, int last) {}

    /** Blocks whose letters are wide or fullwidth in UAX #11, and pictographs, which terminals draw as wide. */
    private static final List<Range> WIDE = List.of(
            new Range(0x1100, 0x115F),
            new Range(0x2E80, 0x303E),
            new Range(0x3041, 0xA4CF),
            new Range(0xA960, 0xA97F),
            new Range(0xAC00, 0xD7A3),
            new Range(0xF900, 0xFAFF),
            new Range(0xFE10, 0xFE19),
            new Range(0xFE30, 0xFE6F),
            new Range(0xFF00, 0xFF60),
            new Range(0xFFE0, 0xFFE6),
            new Range(0x16FE0, 0x18AFF),
            new Range(0x1B000, 0x1B2FF),
            new Range(0x1F300, 0x1F64F),
            new Range(0x1F680, 0x1F6FF),
            new Range(0x1F900, 0x1F9FF),
            new Range(0x1FA70, 0x1FAFF),
            new Range(0x20000, 0x3FFFD));

    private Display() {}

    /** Columns that the text takes. */
    public static int width(String text) {
        return isPrintableAscii(text)
                ? text.length()
                : text.codePoints().map(Display::width).sum();
    }

    /** Nearly every cell of a report is, and a report asks some ten thousand times. */
    private static boolean isPrintableAscii(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < ' ' || text.charAt(i) > '~') {
                return false;
            }
        }
        return true;
    }

    private static int width(int letter) {
        return switch (Character.getType(letter)) {
            case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> 0;
            default -> WIDE.stream().anyMatch(range -> range.first <= letter && letter <= range.last) ? 2 : 1;
        };
    }

    /**
     * The text in one line, with nothing in it that steers a terminal: control characters and line breaks become
     * blanks, and marks that turn the writing direction of what follows or are not seen at all are left out.
     */
    public static String plain(String text) {
        return isPrintableAscii(text) ? text : Marks.without(text);
    }

    /**
     * The plain text in lines no wider than that, broken at blanks, or within a word that is wider by itself. A
     * no-break space (U+00A0) keeps its neighbors together where it can and is written as a blank.
     */
    public static List<String> wrap(String text, int width) {
        // nearly every cell is one line as it stands
        if (text.length() <= width && isPrintableAscii(text) && !text.contains("  ")) {
            return List.of(text.strip());
        }
        return lines(text, width).stream()
                .map(line -> line.replace('\u00A0', ' '))
                .toList();
    }

    private static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : plain(text).strip().split(" +", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            List<String> parts = broken(word, width);
            lines.addAll(parts.subList(0, parts.size() - 1));
            line = parts.get(parts.size() - 1);
        }
        lines.add(line);
        return lines;
    }

    /** Behind these a long word is broken rather than within a name: a place of a document, a file, a size. */
    private static final String JOINTS = ".-/_";

    /** A word in parts no wider than that, broken behind a joint where one is near; marks stay with their letter. */
    private static List<String> broken(String word, int width) {
        List<String> parts = new ArrayList<>();
        StringBuilder part = new StringBuilder();
        int taken = 0;
        for (int letter : word.codePoints().toArray()) {
            int own = width(letter);
            if (taken + own > width && taken > 0) {
                int joint = joint(part, width);
                parts.add(part.substring(0, joint));
                part.delete(0, joint);
                taken = width(part.toString());
            }
            part.appendCodePoint(letter);
            taken += own;
        }
        parts.add(part.toString());
        return parts;
    }

    /** Where a part that is full is broken: behind its last joint, unless that leaves too little, else at its end. */
    private static int joint(CharSequence part, int width) {
        for (int end = part.length(); 2 * end > width; end--) {
            if (JOINTS.indexOf(part.charAt(end - 1)) >= 0) {
                return end;
            }
        }
        return part.length();
    }

    /** The text with blanks behind it up to the width. */
    static String padded(String text, int width, Table.Align align) {
        String blanks = " ".repeat(Math.max(0, width - width(text)));
        return align == Table.Align.LEFT ? text + blanks : blanks + text;
    }
}
