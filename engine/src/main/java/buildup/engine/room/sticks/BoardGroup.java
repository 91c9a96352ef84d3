package buildup.engine.room.sticks;

import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Shop.Aim;
import buildup.engine.room.stock.Supply;
import buildup.engine.room.stock.TapeStep;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lots that share boards of one thickness and wood; a molding is a group by itself. */
record BoardGroup(List<Lot> lots) {
    BoardGroup {
        lots = List.copyOf(lots);
    }

    static List<BoardGroup> of(List<Lot> lots) {
        Map<Object, List<Lot>> groups = new LinkedHashMap<>();
        lots.forEach(lot ->
                groups.computeIfAbsent(shared(lot), key -> new ArrayList<>()).add(lot));
        return groups.values().stream().map(BoardGroup::new).toList();
    }

    private static Object shared(Lot lot) {
        Supply first = lot.source().supplies().get(0);
        return first.board() ? List.of(TapeStep.SIXTY_FOURTHS.offered(first.thickness()), first.wood()) : lot;
    }

    /** One of the boards, or the molding. */
    Supply first() {
        return lots.get(0).source().supplies().get(0);
    }

    List<Supply> supplies() {
        return lots.stream()
                .flatMap(lot -> lot.source().supplies().stream())
                .distinct()
                .toList();
    }

    /** The aim of all lots: the price where all have one and nothing else is wanted. */
    Aim aim(Shop shop) {
        return lots.stream().allMatch(lot -> lot.aim(shop) == Aim.CHEAPEST) ? Aim.CHEAPEST : Aim.FEWEST;
    }
}
