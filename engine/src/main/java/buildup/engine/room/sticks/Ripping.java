package buildup.engine.room.sticks;

import buildup.engine.room.sticks.StickLayout.Kind;
import buildup.engine.room.sticks.StickLayout.Laid;
import buildup.engine.room.sticks.StickLayout.Way;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Shop.Aim;
import buildup.engine.room.stock.Stick;
import buildup.engine.room.stock.StickPiece;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Looks for the boards that serve all strips of a group together. Laid out one after another, lots choose their boards
 * by what of a price they are charged; several such ways are tried, and from each of them every lot is cut anew to fill what
 * the others leave of their boards, until the bound is all but reached or nothing more is won.
 */
final class Ripping {
    /** A way that takes more than the bound by no more than this part of it is good enough. */
    private static final int ENOUGH = 1_000;

    /** Lots that are laid out again and again, before the best of them must do. */
    private static final int MOST_LAID_OUT = 250;

    /** And so many more with lengths that are not bought for each of them. */
    private static final int MOST_SPARED = 60;

    /** Larger jobs fill their boards without cutting two widths from one strip. */
    private static final int MOST_PIECES = 60;

    private static final int MOST_LOTS = 8;

    private final Shop shop;
    private final LotSolver desk;
    private final LotSolver tries;
    private final BoardGroup group;
    private final Aim aim;
    private Laid best;
    private long least;
    private int laidOut;
    private int most = MOST_LAID_OUT;

    private Ripping(Shop shop, LotSolver desk, BoardGroup group) {
        this.shop = shop;
        this.group = group;
        this.aim = group.aim(shop);
        this.desk = group.ripped(shop) ? desk.forStrips() : desk;
        this.tries = this.desk.forTries();
        Share share = group.ripped(shop) ? Share.ByLength.of(group.supplies(), aim) : new Share.Equal();
        Way first = new Way(share, 0, Set.of(), new IdentityHashMap<>(), group.lots(), new IdentityHashMap<>());
        this.best = new StickLayout(shop, this.desk, group, first).lay();
    }

    /** A group as it is laid out, and how good that is where boards are ripped and nothing is missing. */
    record Ripped(Laid laid, Optional<RipPlan> plan) {}

    static Ripped of(Shop shop, LotSolver desk, BoardGroup group, Notices notices) {
        Ripped ripped = crosscutFirst(shop, desk, group, new Ripping(shop, desk, group).ripped());
        notices.addAll(ripped.laid().notices());
        Clamping.look(shop, ripped.laid().sticks(), notices);
        return ripped;
    }

    /**
     * Two widths that are cut from the same strips take less where short pieces of both would each leave most of a board.
     * Each pair of lots is tried as one, as long as that wins something, in jobs so small that nobody waits for it.
     */
    private static Ripped crosscutFirst(Shop shop, LotSolver desk, BoardGroup group, Ripped apart) {
        int pieces = group.lots().stream().mapToInt(Lot::pieces).sum();
        if (apart.plan().isEmpty() || pieces > MOST_PIECES || group.lots().size() > MOST_LOTS) {
            return apart;
        }
        for (int i = 0; i < group.lots().size(); i++) {
            for (int j = 0; j < i; j++) {
                if (!group.mayBeOne(i, j, shop)) {
                    continue;
                }
                BoardGroup fewer = group.with(i, j, shop);
                Ripping ripping = new Ripping(shop, desk, fewer);
                Ripped together = ripping.ripped();
                if (together.plan().isPresent() && ripping.takes(together) < ripping.takes(apart)) {
                    return crosscutFirst(shop, desk, fewer, together);
                }
            }
        }
        return apart;
    }

    private long takes(Ripped ripped) {
        return aim.taken(ripped.laid().sticks());
    }

    private Ripped ripped() {
        if (!group.ripped(shop) || best.missing() > 0) {
            return new Ripped(best, Optional.empty());
        }
        least = new RipBound(shop, desk, group).least(aim.taken(best.sticks()));
        List<Laid> starts = new ArrayList<>(List.of(best));
        starts().stream().takeWhile(start -> !done()).map(this::lay).forEach(starts::add);
        starts.sort(this::compare);
        starts.stream().takeWhile(start -> !done()).forEach(this::follow);
        spare();
        long over = Math.max(0, aim.taken(best.sticks()) - least);
        return new Ripped(
                best,
                Optional.of(new RipPlan(group.first().thickness(), group.first().wood(), aim, over)));
    }

    /**
     * Ways to begin with: both ways to charge; what is on hand for nothing, for half of its worth or for all of it, each lot
     * in turn the first to choose from it; and one length left out after another.
     */
    private List<Way> starts() {
        Way first = best.way();
        List<Way> starts = new ArrayList<>();
        lengths().forEach(length -> starts.add(first.without(length)));
        starts.add(first.with(new Share.Equal()));
        lengths().forEach(length -> starts.add(first.with(new Share.Equal()).without(length)));
        if (group.supplies().stream().anyMatch(supply -> !supply.lying().isEmpty())) {
            for (double worth : List.of(0.0, 0.5, 1.0)) {
                for (int i = 0; i < group.lots().size(); i++) {
                    int lot = i;
                    starts.add(first.with(worth, lot));
                    lengths()
                            .forEach(length -> starts.add(first.with(worth, lot).without(length)));
                }
            }
        }
        return starts;
    }

    private static int longest(List<Lot> lots) {
        return lots.stream()
                .flatMap(lot -> lot.bundles().stream())
                .mapToInt(Bundle::length)
                .max()
                .orElse(0);
    }

    private List<Integer> lengths() {
        return lengths(group.lots());
    }

    /** Lengths without which the longest of all pieces of some lots can still be cut. */
    private List<Integer> lengths(List<Lot> lots) {
        int longest = longest(lots);
        List<Integer> all = group.supplies().stream()
                .flatMap(supply -> supply.buy().stream())
                .distinct()
                .sorted()
                .toList();
        return all.stream()
                .filter(length ->
                        all.stream().anyMatch(other -> other != (int) length && shop.usable(other) >= longest))
                .toList();
    }

    /** Betters the best by lengths that are bought for other lots alone, as long as something is won. */
    private void spare() {
        most = laidOut + MOST_SPARED;
        Laid before;
        do {
            before = best;
            for (Lot lot : group.lots()) {
                for (int length : lengths(List.of(lot))) {
                    better(best, best.way().without(lot, length));
                }
            }
            if (compare(best, before) < 0) {
                follow(best);
            }
        } while (compare(best, before) < 0);
    }

    /** Betters a way by one length less, then lot by lot, round after round, as long as something is won. */
    private void follow(Laid start) {
        Laid here = start;
        Laid before;
        do {
            before = here;
            for (int length : lengths()) {
                here = better(here, before.way().without(length));
            }
            for (Lot lot : group.lots()) {
                here = better(here, fillingGaps(here, lot));
            }
        } while (compare(here, before) < 0);
    }

    private Laid better(Laid here, Way other) {
        if (done() || other.equals(here.way())) {
            return here;
        }
        Laid laid = lay(other);
        return compare(laid, here) < 0 ? laid : here;
    }

    /** A lot is cut anew, so that it fills what the others leave of their boards. */
    private Way fillingGaps(Laid here, Lot lot) {
        IdentityHashMap<Lot, Map<Kind, Integer>> gaps =
                new IdentityHashMap<>(here.way().gaps());
        gaps.put(lot, gaps(here, lot));
        return here.way().with(gaps);
    }

    /** How many strips of a lot find room on boards that others take. */
    private Map<Kind, Integer> gaps(Laid here, Lot lot) {
        Set<String> own = lot.bundles().stream()
                .flatMap(bundle -> bundle.pieces().stream())
                .map(StickPiece::id)
                .collect(Collectors.toSet());
        Map<Kind, Integer> gaps = new LinkedHashMap<>();
        for (Stick stick : here.sticks()) {
            List<Stick.Strip> others = stick.strips().stream()
                    .filter(strip -> !own.contains(strip.pieces().get(0).piece().id()))
                    .toList();
            int each = each(lot, stick, others);
            if (!others.isEmpty() && each > 0) {
                gaps.merge(new Kind(stick.supply(), stick.length(), stick.origin()), each, Integer::sum);
            }
        }
        return gaps;
    }

    private int each(Lot lot, Stick stick, List<Stick.Strip> others) {
        int kerf = shop.ripKerf();
        int taken = others.stream().mapToInt(strip -> strip.width() + kerf).sum();
        int board = shop.grid().offered(stick.supply().width());
        return lot.source().supplies().contains(stick.supply())
                ? (board + kerf - taken) / (lot.source().strip() + kerf)
                : 0;
    }

    private boolean done() {
        return aim.taken(best.sticks()) <= least + least / ENOUGH || laidOut > most || !tries.mayTry();
    }

    private Laid lay(Way other) {
        laidOut += group.lots().size();
        Laid laid = new StickLayout(shop, tries, group, other).lay();
        best = compare(laid, best) < 0 ? laid : best;
        return laid;
    }

    private int compare(Laid one, Laid other) {
        return Comparator.comparingLong(Laid::missing)
                .thenComparingLong(laid -> aim.taken(laid.sticks()))
                .thenComparingInt(laid -> laid.sticks().size())
                .compare(one, other);
    }
}
