package buildup.shared.length;

import java.util.Optional;

/** What came of reading a size. */
public sealed interface Reading permits Reading.Good, Reading.Bad {

    /** A length, and what must be said about how it was taken, if anything. */
    record Good(Length length, Optional<Echo> echo) implements Reading {}

    /** No length: why, in a code and a sentence, and one cure. */
    record Bad(String code, String message, String cure) implements Reading {}

    /**
     * How a writing that could be taken otherwise was read.
     *
     * @param ordinary so usual in the trade that one note for a whole file is enough
     */
    record Echo(String code, String message, boolean ordinary) {}
}
