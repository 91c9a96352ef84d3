package buildup.engine.judge.verdict;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import java.util.Optional;

/**
 * One row of the verdict.
 *
 * @param topic the question
 * @param answer in one word
 * @param figure the one that decides, if one does
 * @param because why, in a sentence without a stop
 * @param cure what would turn a "no", or better a "look"; in a sentence without a stop
 */
public record Ruling(Topic topic, Reply answer, Optional<Figure> figure, Phrase because, Optional<Phrase> cure) {
    /** The answer in one word. */
    public enum Reply {
        /** It will not be right. */
        NO,
        /** For a person to look at and judge. */
        LOOK,
        /** It rests on what was not given. */
        TRUST,
        /** It will be right. */
        YES
    }

    static Ruling of(Topic topic, Reply answer, Phrase because) {
        return new Ruling(topic, answer, Optional.empty(), because, Optional.empty());
    }

    static Ruling yes(Topic topic, Phrase because) {
        return of(topic, Reply.YES, because);
    }

    Ruling figure(Figure decides) {
        return new Ruling(topic, answer, Optional.of(decides), because, cure);
    }

    Ruling cure(Phrase wayOut) {
        return new Ruling(topic, answer, figure, because, Optional.of(wayOut));
    }
}
