package buildup.shared.notice;

import buildup.shared.figure.Phrase;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One way out of what a notice is about.
 *
 * @param words for people; its places may also name the values of the notice
 * @param changes the same as changes of the document, all of them together; none where a person has to decide
 * @param others ways out to be told if this one turns out to bring worse
 */
public record Cure(Phrase words, List<Change> changes, List<Cure> others) {
    private static final int MOST_OTHERS = 3;

    /** How each says it that tells that ways out were looked for and none helps. */
    private static final String NOTHING = "None of the changes tried cures this";

    /** Said where ways out were looked for and none helps. */
    public static final Phrase NONE = Phrase.of(NOTHING + ".");

    /** Copies the lists. */
    public Cure {
        changes = List.copyOf(changes);
        others = List.copyOf(others);
    }

    /** One way out, and no other. */
    public Cure(Phrase words, List<Change> changes) {
        this(words, changes, List.of());
    }

    /** The same, with others behind it. */
    public Cure or(List<Cure> more) {
        return new Cure(words, changes, more);
    }

    /** The first of some ways out, the next behind it to be told if that turns out to bring worse. */
    public static Optional<Cure> firstOf(Stream<Cure> ways) {
        List<Cure> all = ways.limit(1 + MOST_OTHERS).toList();
        return all.stream().findFirst().map(first -> first.or(all.subList(1, all.size())));
    }

    /** Whether this says that ways out were looked for and none helps. */
    public static boolean none(Phrase words) {
        return words.template().startsWith(NOTHING);
    }

    /** A way out that only a person can go. */
    public static Cure of(Phrase words) {
        return new Cure(words, List.of());
    }
}
