package buildup.engine.room.sticks;

import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Shop.Aim;
import buildup.engine.room.stock.Supply;
import buildup.engine.room.stock.TapeStep;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Lots that share boards of one thickness and wood; a molding is a group by itself. */
final class BoardGroup {
    private final List<Lot> lots;
    private final IdentityHashMap<Lot, StripLayout> layouts = new IdentityHashMap<>();

    private BoardGroup(List<Lot> lots, Shop shop) {
        this.lots = List.copyOf(lots);
        lots.forEach(lot -> layouts.put(lot, new StripLayout(lot, shop)));
    }

    static List<BoardGroup> of(List<Lot> lots, Shop shop) {
        Map<Object, List<Lot>> groups = new LinkedHashMap<>();
        lots.forEach(lot ->
                groups.computeIfAbsent(shared(lot), key -> new ArrayList<>()).add(lot));
        return groups.values().stream().map(own -> new BoardGroup(own, shop)).toList();
    }

    /** Whether the boards for the wider of two lots, by their places, are long enough for both. */
    boolean mayBeOne(int one, int other, Shop shop) {
        Lot both = lots.get(one).with(lots.get(other));
        int longest = shop.usable(both.source().longest());
        return both.bundles().stream().allMatch(bundle -> bundle.length() <= longest);
    }

    /** The same boards, where two of the lots, by their places, are one. */
    BoardGroup with(int one, int other, Shop shop) {
        List<Lot> fewer = new ArrayList<>(lots);
        Lot second = fewer.remove(Math.max(one, other));
        fewer.set(Math.min(one, other), fewer.get(Math.min(one, other)).with(second));
        return new BoardGroup(fewer, shop);
    }

    private static Object shared(Lot lot) {
        Supply first = lot.source().supplies().get(0);
        return first.board() ? List.of(TapeStep.SIXTY_FOURTHS.offered(first.thickness()), first.wood()) : lot;
    }

    List<Lot> lots() {
        return lots;
    }

    /** How the pieces of one of the lots lie on a stick. */
    StripLayout layout(Lot lot) {
        return Objects.requireNonNull(layouts.get(lot), "a lot of another group");
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

    /** Whether some of its lots come from boards wider than they are. */
    boolean ripped(Shop shop) {
        return lots.stream().anyMatch(lot -> ripped(lot, shop));
    }

    static boolean ripped(Lot lot, Shop shop) {
        return lot.source().supplies().stream()
                .anyMatch(supply ->
                        shop.grid().offered(supply.width()) > lot.source().strip() + LengthSteps.SIXTY_FOURTH);
    }

    /** The aim of all lots: the price where all have one and nothing else is wanted. */
    Aim aim(Shop shop) {
        return lots.stream().allMatch(lot -> lot.aim(shop) == Aim.CHEAPEST) ? Aim.CHEAPEST : Aim.FEWEST;
    }
}
