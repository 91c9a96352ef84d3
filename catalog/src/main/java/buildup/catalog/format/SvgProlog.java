package buildup.catalog.format;

import buildup.shared.figure.Phrase;
import java.util.regex.Pattern;

/**
 * What stands in front of the root of an XML file. A document type could open other files and blow up a few letters
 * into gigabytes; the one that drawing programs write is passed over unread, any other is refused.
 */
final class SvgProlog {
    private static final Pattern PLAIN = Pattern.compile(
            "svg\\s*(PUBLIC\\s+([\"'])-//W3C//DTD SVG [^\"']*\\2\\s+([\"'])https?://www\\.w3\\.org/[^\"']*\\3\\s*)?");
    private static final String DOCTYPE = "<!DOCTYPE";

    private SvgProlog() {}

    /** The text with its document type blanked out, every line where it was. */
    static String withoutDoctype(Source source) throws FileRefused {
        String text = source.text();
        int start = start(text);
        if (!text.startsWith(DOCTYPE, start)) {
            return text;
        }
        int end = start + DOCTYPE.length();
        char quote = 0;
        for (; end < text.length() && (quote != 0 || text.charAt(end) != '>'); end++) {
            char c = text.charAt(end);
            if (quote == 0 && c == '[') {
                throw source.refused(FormatNotices.ENTITY_DECLARED, line(text, end));
            }
            quote = quote == c ? 0 : quote == 0 && (c == '"' || c == '\'') ? c : quote;
        }
        if (end >= text.length()) {
            throw source.refused(FormatNotices.NO_END, line(text, start));
        }
        if (!PLAIN.matcher(text.substring(start + DOCTYPE.length(), end).strip())
                .matches()) {
            throw outside(source, FormatNotices.A_DOCUMENT_TYPE, line(text, start));
        }
        String blank = text.substring(start, end + 1).replaceAll("[^\\r\\n]", " ");
        return text.substring(0, start) + blank + text.substring(end + 1);
    }

    /** What is said of anything that would have to be fetched. */
    static FileRefused outside(Source source, Phrase what, int line) {
        return source.refused(FormatNotices.OUTSIDE.with("what", what), line);
    }

    /** Behind blanks, comments and instructions. */
    private static int start(String text) {
        int at = 0;
        while (at < text.length()) {
            if (Character.isWhitespace(text.charAt(at))) {
                at++;
            } else if (text.startsWith("<?", at)) {
                at = behind(text, "?>", at);
            } else if (text.startsWith("<!--", at)) {
                at = behind(text, "-->", at + "<!--".length());
            } else {
                return at;
            }
        }
        return at;
    }

    private static int behind(String text, String end, int from) {
        int found = text.indexOf(end, from);
        return found < 0 ? text.length() : found + end.length();
    }

    private static int line(String text, int at) {
        return 1 + (int) text.substring(0, at).chars().filter(c -> c == '\n').count();
    }
}
