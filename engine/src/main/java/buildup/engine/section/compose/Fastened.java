package buildup.engine.section.compose;

import java.util.Set;

/**
 * What the fastenings of a document do for the pieces of a section, by their numbers.
 *
 * @param given the pieces for which fastenings are given: those decide what holds them
 * @param held the pieces that fastenings hold to framing or solid wall
 * @param pinned the pieces that fastenings hold to those, or to trim that itself is held; {@code held} among them
 */
public record Fastened(Set<Integer> given, Set<Integer> held, Set<Integer> pinned) {
    /** No fastenings are given. */
    public static final Fastened NOTHING = new Fastened(Set.of(), Set.of(), Set.of());

    /** Copies the sets. */
    public Fastened {
        given = Set.copyOf(given);
        held = Set.copyOf(held);
        pinned = Set.copyOf(pinned);
    }
}
