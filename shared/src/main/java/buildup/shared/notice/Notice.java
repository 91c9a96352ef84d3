package buildup.shared.notice;

import buildup.shared.length.Length;
import java.util.Optional;

/**
 * One thing that a run has to say about its input.
 *
 * @param code short, stable, in kebab-case
 * @param mark where in the input
 * @param piece the piece it is about
 * @param amount by how much
 * @param message what is the matter, in a sentence
 * @param cure one way out; empty when nothing needs doing
 */
public record Notice(
        Level level,
        String code,
        Optional<Mark> mark,
        Optional<String> piece,
        Optional<Length> amount,
        String message,
        String cure) {

    /** A note, so far without place, piece, amount and cure. */
    public static Notice note(String code, String message) {
        return plain(Level.NOTE, code, message);
    }

    /** A problem, so far without place, piece, amount and cure. */
    public static Notice problem(String code, String message) {
        return plain(Level.PROBLEM, code, message);
    }

    /** A refusal, so far without place, piece, amount and cure. */
    public static Notice refusal(String code, String message) {
        return plain(Level.REFUSAL, code, message);
    }

    private static Notice plain(Level level, String code, String message) {
        return new Notice(level, code, Optional.empty(), Optional.empty(), Optional.empty(), message, "");
    }

    /** The same, at a place. */
    public Notice at(Mark place) {
        return new Notice(level, code, Optional.of(place), piece, amount, message, cure);
    }

    /** The same, about a piece. */
    public Notice of(String name) {
        return new Notice(level, code, mark, Optional.of(name), amount, message, cure);
    }

    /** The same, with how much. */
    public Notice amount(Length howMuch) {
        return new Notice(level, code, mark, piece, Optional.of(howMuch), message, cure);
    }

    /** The same, with a way out. */
    public Notice cure(String wayOut) {
        return new Notice(level, code, mark, piece, amount, message, wayOut);
    }
}
