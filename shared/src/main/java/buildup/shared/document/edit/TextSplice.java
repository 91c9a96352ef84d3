package buildup.shared.document.edit;

import java.util.Comparator;
import java.util.List;

/**
 * A stretch of a text, and what comes in its place.
 *
 * @param from the first character, counted from 0
 * @param to the one after the last
 */
record TextSplice(int from, int to, String with) {

    static TextSplice insert(int at, String text) {
        return new TextSplice(at, at, text);
    }

    static TextSplice cut(int from, int to) {
        return new TextSplice(from, to, "");
    }

    /** The text with all of them done; they do not overlap. */
    static String all(String text, List<TextSplice> splices) {
        StringBuilder done = new StringBuilder();
        int at = 0;
        for (TextSplice splice : splices.stream()
                .sorted(Comparator.comparingInt(TextSplice::from).thenComparingInt(TextSplice::to))
                .toList()) {
            done.append(text, at, splice.from()).append(splice.with());
            at = splice.to();
        }
        return done.append(text, at, text.length()).toString();
    }
}
