package buildup.shared.document.edit;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A text and the parts it holds.
 *
 * @param root the mapping that the document is
 */
record ParsedText(String text, TextPart.Group root) {

    /** The parts of a text, if it is YAML and a mapping at its top. */
    static Optional<ParsedText> of(String text) {
        return PartReader.read(text)
                .filter(TextPart.Group.class::isInstance)
                .map(root -> new ParsedText(text, (TextPart.Group) root));
    }

    /** The marks that some place repeats. */
    Set<String> repeated() {
        return root.all()
                .filter(TextPart.Repeat.class::isInstance)
                .map(part -> ((TextPart.Repeat) part).name())
                .collect(Collectors.toUnmodifiableSet());
    }

    /** The character at a place; a line break behind the end of the text. */
    char at(int place) {
        return place < text.length() ? text.charAt(place) : '\n';
    }

    static boolean isBreak(char c) {
        return c == '\n' || c == '\r';
    }

    static boolean isBlank(char c) {
        return c == ' ' || c == '\t';
    }

    /** Where the line begins in which the place stands. */
    int lineStart(int place) {
        int at = place;
        while (at > 0 && !isBreak(text.charAt(at - 1))) {
            at--;
        }
        return at;
    }

    /** Where the line ends in which the place stands, before its line break. */
    int lineEnd(int place) {
        int at = place;
        while (at < text.length() && !isBreak(text.charAt(at))) {
            at++;
        }
        return at;
    }

    /** Behind the line break that begins here, if one does. */
    int behindBreak(int place) {
        boolean pair = text.startsWith("\r\n", place);
        return pair ? place + 2 : place < text.length() && isBreak(text.charAt(place)) ? place + 1 : place;
    }

    /** Before the line break that ends here, if one does. */
    int beforeBreak(int place) {
        boolean pair = place >= 2 && text.startsWith("\r\n", place - 2);
        return pair ? place - 2 : place > 0 && isBreak(text.charAt(place - 1)) ? place - 1 : place;
    }

    /** How many characters stand before the place in its line. */
    int column(int place) {
        return place - lineStart(place);
    }

    /** Whether only blanks stand in its line before the place. */
    boolean beginsLine(int place) {
        int at = beforeBlanks(place);
        return at == 0 || isBreak(text.charAt(at - 1));
    }

    /** Before the blanks that end here. */
    int beforeBlanks(int place) {
        int at = place;
        while (at > 0 && isBlank(text.charAt(at - 1))) {
            at--;
        }
        return at;
    }

    /** Behind the blanks that begin here. */
    int behindBlanks(int place) {
        int at = place;
        while (at < text.length() && isBlank(text.charAt(at))) {
            at++;
        }
        return at;
    }

    /** Behind blanks, line breaks and comments. */
    int behindSpace(int place) {
        int at = place;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == '#') {
                at = lineEnd(at);
            } else if (isBlank(c) || isBreak(c)) {
                at++;
            } else {
                break;
            }
        }
        return at;
    }

    /** The line break that the text uses, by its first one. */
    String lineBreak() {
        int end = lineEnd(0);
        return end < text.length() ? text.substring(end, behindBreak(end)) : "\n";
    }
}
