package buildup.engine.room.sticks;

import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Supply;
import buildup.shared.figure.Phrase;
import java.util.List;
import java.util.stream.Stream;

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

    /**
     * The two as one: their pieces are crosscut from strips that are as wide as the wider of them wants, and each is ripped
     * to its own width then.
     */
    Lot with(Lot other) {
        boolean wider = source.strip() >= other.source.strip();
        Lot wide = wider ? this : other;
        Lot slim = wider ? other : this;
        StockSource both = wide.source.named(
                Phrase.of("{wide} and {slim}").with("wide", wide.source.name()).with("slim", slim.source.name()));
        return new Lot(
                both,
                wood,
                Stream.concat(wide.bundles.stream(), slim.bundles.stream()).toList());
    }

    int pieces() {
        return bundles.stream().mapToInt(bundle -> bundle.pieces().size()).sum();
    }
}
