package buildup.catalog.words;

import java.util.List;
import java.util.regex.Pattern;

/** Sizes joined by an x. */
public final class SizeText {

    /** What may end or begin a written number. */
    private static final String NUMBER = "\\d.\u00BC-\u00BE\u2150-\u215E";

    /** An x between blanks, or one that two numbers stand round; names may hold the letter. */
    private static final Pattern JOINT = Pattern.compile(
            "\\s+[xX\u00D7]\\s+|(?<=[" + NUMBER + "\"\u2033\u201D'])\\s*[xX\u00D7]\\s*(?=[" + NUMBER + "])");

    private SizeText() {}

    /** The sizes as written: {@code 3/4 x 5-1/2} and {@code 3/4x5-1/2} give two. */
    public static List<String> split(String text) {
        return JOINT.splitAsStream(text.strip()).map(String::strip).toList();
    }
}
