package buildup.shared.notice;

/**
 * The stable name of what a notice is about; several kinds may share it, each with its own sentence.
 *
 * @param name in kebab-case
 * @param meaning one sentence for the guide: when this is said
 */
public record Code(String name, String meaning) {
    /** A code with its meaning. */
    public static Code of(String name, String meaning) {
        return new Code(name, meaning);
    }

    /** A kind of note: the answer stands. */
    public Kind note(String sentence, String cure) {
        return new Kind(Level.NOTE, this, sentence, cure);
    }

    /** A kind of problem: something is wrong with what was drawn; the answer stands. */
    public Kind problem(String sentence, String cure) {
        return new Kind(Level.PROBLEM, this, sentence, cure);
    }

    /** A kind of refusal: a figure would be false, so none is given. */
    public Kind refusal(String sentence, String cure) {
        return new Kind(Level.REFUSAL, this, sentence, cure);
    }
}
