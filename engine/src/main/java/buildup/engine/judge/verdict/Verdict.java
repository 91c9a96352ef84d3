package buildup.engine.judge.verdict;

import buildup.engine.judge.verdict.Ruling.Reply;
import buildup.shared.figure.Phrase;
import java.util.List;

/**
 * Will it be right?
 *
 * @param rulings one a question that applies, in the order in which a mistake hurts
 * @param trusted what the answers rest on that was not given
 * @param notAsked questions that the document does not ask, with the key that asks them
 */
public record Verdict(List<Ruling> rulings, List<Phrase> trusted, List<NotAsked> notAsked) {
    /**
     * A question that was not asked.
     *
     * @param key of the document that asks it
     * @param question in a few words
     */
    public record NotAsked(String key, String question) {
        /** The key, and the question in brackets. */
        public String words() {
            return key + " (" + question + ")";
        }
    }

    /** Copies the lists. */
    public Verdict {
        rulings = List.copyOf(rulings);
        trusted = List.copyOf(trusted);
        notAsked = List.copyOf(notAsked);
    }

    /** How many rows give that answer. */
    public long count(Reply answer) {
        return rulings.stream().filter(ruling -> ruling.answer() == answer).count();
    }
}
