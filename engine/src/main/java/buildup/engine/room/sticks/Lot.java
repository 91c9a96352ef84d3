package buildup.engine.room.sticks;

import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Supply;
import java.util.List;

/** Pieces that are cut from the same sticks, or from strips of the same width of the same boards. */
record Lot(StockSource source, String wood, List<Bundle> bundles) {
    Lot {
        bundles = List.copyOf(bundles);
    }

    /** What is to be least: the price where everything to buy has one, unless the shop says otherwise. */
    Shop.Aim aim(Shop shop) {
        return priced() ? shop.aim().orElse(Shop.Aim.CHEAPEST) : Shop.Aim.FEWEST;
    }

    boolean priced() {
        return source.supplies().stream().allMatch(Supply::priced);
    }

    int pieces() {
        return bundles.stream().mapToInt(bundle -> bundle.pieces().size()).sum();
    }
}
