package buildup.engine.judge.proportion;

import buildup.catalog.book.BookOrder;
import buildup.catalog.book.EntablaturePart;
import buildup.shared.notice.Mark;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the document asks of its proportions.
 *
 * @param asked whether it asks at all
 * @param parts names of pieces by part; empty when they are to be read from the stack
 * @param beside the order that the stack is laid beside; absent for the nearest
 * @param room height of the room, in, where it is not that from floor to ceiling
 * @param doorWidth, doorHeight of the opening that the trim is round, in
 */
public record ProportionWish(
        boolean asked,
        Map<EntablaturePart, List<String>> parts,
        Optional<BookOrder> beside,
        OptionalDouble room,
        OptionalDouble doorWidth,
        OptionalDouble doorHeight,
        Mark mark) {
    /** Copies the map. */
    public ProportionWish {
        parts = Map.copyOf(parts);
    }
}
