package buildup.shared.document.edit;

import java.util.Comparator;
import java.util.List;

/**
 * A stretch of a text, and what comes in its place.
 *
 * @param from the first character, counted from 0
 * @param to the one after the last
 */
record Splice(int from, int to, String with) {

    static Splice insert(int at, String text) {
        return new Splice(at, at, text);
    }

    static Splice cut(int from, int to) {
        return new Splice(from, to, "");
    }

    /** The text with all of them done; they do not overlap. */
    static String all(String text, List<Splice> splices) {
        StringBuilder done = new StringBuilder();
        int at = 0;
        for (Splice splice : splices.stream()
                .sorted(Comparator.comparingInt(Splice::from).thenComparingInt(Splice::to))
                .toList()) {
            done.append(text, at, splice.from()).append(splice.with());
            at = splice.to();
        }
        return done.append(text, at, text.length()).toString();
    }
}
