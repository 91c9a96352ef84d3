package buildup.engine.buy;

import buildup.engine.room.sticks.CutList;
import java.util.List;
import java.util.Optional;

/**
 * All that is bought, sticks included.
 *
 * @param list the sticks; absent when the stack names no stock
 * @param waste what is bought besides for waste; empty when none is asked
 * @param purchases all but sticks
 */
public record Shopping(Optional<CutList> list, List<WasteSticks> waste, Purchases purchases) {
    /** Copies the list. */
    public Shopping {
        waste = List.copyOf(waste);
    }

    /** Whether the document asks for more than its sticks. */
    boolean asked() {
        return purchases.asked() || !waste.isEmpty();
    }

    long woodPrice() {
        return list.map(CutList::price).orElse(0L);
    }

    long wastePrice() {
        return waste.stream().mapToLong(one -> one.basket().price()).sum();
    }

    long labor() {
        return list.map(CutList::labor).orElse(0L);
    }

    /** Whether everything has a price, the wood among it. */
    boolean priced() {
        return list.filter(CutList::priced).isPresent()
                && waste.stream().allMatch(one -> one.basket().priced())
                && purchases.priced();
    }
}
