package buildup.engine.judge.proportion;

import buildup.catalog.book.EntablaturePart;
import java.util.List;

/**
 * One part of a stack as it is seen.
 *
 * @param bodies of it, by number
 * @param bottom where it begins to be seen over the datum, in
 * @param top where the next part begins, else its own top, in
 * @param face greatest projection of what is seen of it, in
 * @param share of its height in that of all parts
 */
public record PartShare(
        EntablaturePart part, List<Integer> bodies, double bottom, double top, double face, double share) {
    /** Copies the list. */
    public PartShare {
        bodies = List.copyOf(bodies);
    }

    /** How high it is as seen, in. */
    public double height() {
        return top - bottom;
    }
}
