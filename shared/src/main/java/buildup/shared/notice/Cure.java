package buildup.shared.notice;

import buildup.shared.figure.Phrase;
import java.util.List;

/**
 * One way out of what a notice is about.
 *
 * @param words for people; its places may also name the values of the notice
 * @param changes the same as changes of the document, all of them together; none where a person has to decide
 */
public record Cure(Phrase words, List<Change> changes) {
    /** Copies the list. */
    public Cure {
        changes = List.copyOf(changes);
    }

    /** A way out that only a person can go. */
    public static Cure of(Phrase words) {
        return new Cure(words, List.of());
    }
}
