package buildup.engine.judge.proportion;

import buildup.catalog.book.BookOrder;
import buildup.catalog.book.EntablaturePart;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * An order of the books at the height of the stack.
 *
 * @param heights of its parts, in; of those parts that the stack has
 * @param projection of its cornice beyond its frieze, in; absent when the book does not say
 * @param off the share of the height that is parted otherwise in the stack: half the sum of all differences of shares
 * @param inRoom height of its cornice where the order fills the room, in; absent when the room's height is not known
 */
public record OrderRow(
        BookOrder order,
        Map<EntablaturePart, Double> heights,
        OptionalDouble projection,
        double off,
        OptionalDouble inRoom) {
    /** Copies the map. */
    public OrderRow {
        heights = Map.copyOf(heights);
    }

    /** The height of a part, in; absent when the stack does not have it. */
    public OptionalDouble height(EntablaturePart part) {
        Double found = heights.get(part);
        return found == null ? OptionalDouble.empty() : OptionalDouble.of(found);
    }
}
