package buildup.engine.room.sticks;

import buildup.engine.room.sticks.StickLayout.Kind;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Shop.Aim;
import buildup.engine.room.stock.Stick;
import buildup.engine.room.stock.Stick.Origin;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** How the pieces of one lot lie on their sticks or strips; what was laid once is remembered, for ways that are tried. */
final class StripLayout {
    private record Filled(Kind kind, List<Integer> pieces) {}

    private final Lot lot;
    private final Shop shop;
    private final Nesting nesting;
    private final Map<Filled, Boards.Own> strips = new HashMap<>();
    private final Map<Filled, Kind> shortest = new HashMap<>();

    StripLayout(Lot lot, Shop shop) {
        this.lot = lot;
        this.shop = shop;
        this.nesting = new Nesting(lot, shop);
    }

    Nesting nesting() {
        return nesting;
    }

    /** Whether pieces fit a stick of a kind when they are cut. */
    boolean fits(Kind kind, List<Integer> pieces) {
        int usable = shop.usable(kind.length());
        return nesting.taken(nesting.order(bundles(pieces), usable)) <= usable;
    }

    /** When sticks alone count, a longer one than needed serves nobody. */
    Kind shortest(Kind kind, List<Integer> pieces, Aim aim) {
        return aim == Aim.CHEAPEST || kind.origin() != Origin.BOUGHT
                ? kind
                : shortest.computeIfAbsent(new Filled(kind, pieces), this::shortest);
    }

    private Kind shortest(Filled filled) {
        Kind kind = filled.kind;
        int needed = nesting.taken(nesting.order(bundles(filled.pieces), shop.usable(kind.length())));
        return kind.supply().buy().stream()
                .filter(length -> shop.usable(length) >= needed)
                .findFirst()
                .map(length -> new Kind(kind.supply(), length, Origin.BOUGHT))
                .orElse(kind);
    }

    /** A stick, or a strip of one, with the pieces of these numbers. */
    Boards.Own own(Kind kind, List<Integer> pieces) {
        return strips.computeIfAbsent(new Filled(kind, pieces), this::own);
    }

    private Boards.Own own(Filled filled) {
        int width = shop.grid().offered(filled.kind.supply().width());
        return new Boards.Own(strip(filled), Math.min(width, lot.source().strip()));
    }

    private Stick.Strip strip(Filled filled) {
        Kind kind = filled.kind;
        List<Stick.LaidPiece> lies = new ArrayList<>();
        Optional<Bundle> before = Optional.empty();
        boolean turned = false;
        int at = shop.trim();
        for (Bundle bundle : nesting.order(bundles(filled.pieces), shop.usable(kind.length()))) {
            if (before.isPresent()) {
                at += nesting.gap(before.get(), bundle);
                turned = nesting.turns(before.get(), turned, bundle);
            }
            before = Optional.of(bundle);
            for (int i = 0; i < bundle.pieces().size(); i++) {
                at += i == 0 ? 0 : bundle.gaps().get(i - 1);
                lies.add(new Stick.LaidPiece(bundle.pieces().get(i), at, turned, ripped(bundle)));
                at += bundle.pieces().get(i).length();
            }
        }
        // the last cut takes its kerf from what is left
        at += before.map(nesting::lastKerf).orElse(0);
        int width = shop.grid().offered(kind.supply().width());
        return new Stick.Strip(width, false, lies, Math.max(0, kind.length() - shop.trim() - at));
    }

    /** What comes from a strip that is wider than it needs is ripped to its own width after it is cut to length. */
    private OptionalInt ripped(Bundle bundle) {
        return bundle.width() < lot.source().strip() - LengthSteps.SIXTY_FOURTH
                ? OptionalInt.of(bundle.width())
                : OptionalInt.empty();
    }

    private List<Bundle> bundles(List<Integer> pieces) {
        return pieces.stream().map(lot.bundles()::get).toList();
    }
}
