package buildup.cli.write;

import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The order in which the letters of a text stand on paper (Unicode Standard Annex 9, as the Java library has it). */
final class TextOrder {
    /** Signs that open on one side: read from the right, each stands for its counterpart. */
    private static final String PAIRS = "()[]{}<>\u00ab\u00bb";

    /** Makes what follows it be read from the left (U+200E, never seen). */
    private static final String FROM_LEFT = "\u200e";

    /** A size such as 1-1/2: behind an Arabic name its parts would change places, and it would be another size. */
    private static final Pattern SIZE = Pattern.compile("(?<![\\d/.,-])\\d+[-/.,' \"]+\\d[\\d/ -]*[\"']?");

    private TextOrder() {}

    /** The text with every size in it held together where a script is read from the right. */
    static String guarded(String text) {
        char[] characters = text.toCharArray();
        return Bidi.requiresBidi(characters, 0, characters.length)
                ? SIZE.matcher(text).replaceAll(FROM_LEFT + "$0" + FROM_LEFT)
                : text;
    }

    /**
     * A stretch of text that is read in one direction.
     *
     * @param text in the order in which it is spoken
     */
    record Stretch(String text, boolean fromRight) {
        /** In the order in which it stands, for letters that do not join. */
        String leftToRight() {
            if (!fromRight) {
                return text;
            }
            StringBuilder turned = new StringBuilder();
            new StringBuilder(text)
                    .reverse()
                    .codePoints()
                    .map(Stretch::mirrored)
                    .forEach(turned::appendCodePoint);
            return turned.toString();
        }

        private static int mirrored(int letter) {
            int at = PAIRS.indexOf(letter);
            return at < 0 ? letter : PAIRS.charAt(at ^ 1);
        }
    }

    /** The stretches of a text, from left to right. */
    static List<Stretch> of(String plain) {
        String text = guarded(plain);
        char[] characters = text.toCharArray();
        if (!Bidi.requiresBidi(characters, 0, characters.length)) {
            return List.of(new Stretch(text, false));
        }
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_LEFT_TO_RIGHT);
        int count = bidi.getRunCount();
        byte[] levels = new byte[count];
        Stretch[] stretches = new Stretch[count];
        for (int i = 0; i < count; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            stretches[i] = new Stretch(text.substring(bidi.getRunStart(i), bidi.getRunLimit(i)), levels[i] % 2 != 0);
        }
        Bidi.reorderVisually(levels, 0, stretches, 0, count);
        return new ArrayList<>(List.of(stretches));
    }
}
