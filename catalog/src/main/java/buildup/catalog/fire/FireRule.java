package buildup.catalog.fire;

import java.util.List;

/**
 * How near combustible trim may come to the opening of a fireplace, as one text says it.
 *
 * @param name set and edition together
 * @param set the code, standard or manual
 * @param edition which one
 * @param clause where it stands there
 * @param source where the text was seen
 * @param usual whether it is asked where a stack names no rules
 * @param memory whether the text was not seen
 * @param about one line
 * @param above straight up from the top of the opening, the nearest first; nearer than the first nothing may be
 * @param sides level from a side of the opening
 */
public record FireRule(
        String name,
        String set,
        String edition,
        String clause,
        String source,
        boolean usual,
        boolean memory,
        String about,
        List<FireBand> above,
        List<FireBand> sides) {
    /** Copies the lists. */
    public FireRule {
        above = List.copyOf(above);
        sides = List.copyOf(sides);
    }
}
