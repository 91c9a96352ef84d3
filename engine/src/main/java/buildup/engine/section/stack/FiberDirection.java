package buildup.engine.section.stack;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Which way the fibers of a piece run. */
public enum FiberDirection {
    /** With the run, as in every board of a stack: all its faces in the section are side grain. */
    RUN,
    /** Out from the wall, as in a short block set crosswise. */
    OUT,
    /** Upright. */
    UP;

    /** The word of the stack language. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<FiberDirection> named(String word) {
        return Arrays.stream(values())
                .filter(grain -> grain.word().equals(word))
                .findFirst();
    }
}
