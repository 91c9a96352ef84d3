package buildup.shared.notice;

import buildup.shared.figure.Phrase;
import buildup.shared.figure.Value;
import java.util.List;
import java.util.Optional;

/**
 * A kind of notice. Sentence and cure have named places in braces; {@code {piece}} stands for the piece that the notice
 * is about, {@code {amount}} for how much. All kinds of one question stand in one file of its package.
 *
 * @param level how grave
 * @param code its stable name
 * @param sentence what is the matter
 * @param cure one way out; empty when there is none, or when the notice brings its own
 */
public record Kind(Level level, Code code, String sentence, String cure) {
    /** A notice of this kind, so far with nothing in its places. */
    public Notice notice() {
        return new Notice(this, Optional.empty(), Optional.empty(), Optional.empty(), List.of(), Optional.empty());
    }

    /** A notice of this kind with words in one place. */
    public Notice with(String name, String words) {
        return notice().with(name, words);
    }

    /** A notice of this kind with a value in one place. */
    public Notice with(String name, Value value) {
        return notice().with(name, value);
    }

    /** The cure as a phrase, if the kind has one. */
    Optional<Phrase> ownCure() {
        return cure.isEmpty() ? Optional.empty() : Optional.of(Phrase.of(cure));
    }
}
