package buildup.engine.room.sticks;

import buildup.engine.room.sticks.StickLayout.Kind;
import buildup.engine.room.sticks.StickLayout.Laid;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Shop.Aim;
import buildup.engine.room.stock.Stick.Origin;
import buildup.engine.room.stock.Supply;
import buildup.shared.notice.Notices;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/**
 * Looks for the boards that serve all strips of a group together. Laid out one after another, lots choose their boards
 * by what of a price they are charged; several ways to charge are tried, and then each lot is held to one kind of board
 * after another, until the bound is reached or nothing more is won.
 */
final class Ripping {
    private static final List<Share> OTHER_SHARES =
            List.of(new Share.Dual(0), new Share.Dual(1), new Share.Dual(2), new Share.Dual(3));

    /** Rounds over all lots; the second rarely wins anything. */
    private static final int ROUNDS = 3;

    /** A way is worth a search when a first look at it comes out dearer by no more than this part. */
    private static final int WORTH = 500;

    private final Shop shop;
    private final LotSolver desk;
    private final LotSolver tries;
    private final LotSolver glances;
    private final BoardGroup group;
    private final Aim aim;
    private Share share = new Share.Equal();
    private IdentityHashMap<Lot, Kind> only = new IdentityHashMap<>();
    private Laid best;
    private long least;
    private long glanced;

    private Ripping(Shop shop, LotSolver desk, BoardGroup group) {
        this.shop = shop;
        this.desk = desk;
        this.tries = desk.forTries();
        this.glances = desk.forGlances();
        this.group = group;
        this.aim = group.aim(shop);
        this.best = new StickLayout(shop, desk, group, share, only).lay();
    }

    /** A group as it is laid out, and how good that is where boards are ripped and nothing is missing. */
    record Ripped(Laid laid, Optional<RipPlan> plan) {}

    static Ripped of(Shop shop, LotSolver desk, BoardGroup group, Notices notices) {
        Ripped ripped = new Ripping(shop, desk, group).ripped();
        notices.addAll(ripped.laid().notices());
        Clamping.look(shop, ripped.laid().sticks(), notices);
        return ripped;
    }

    private Ripped ripped() {
        if (!best.ripped() || best.missing() > 0) {
            return new Ripped(best, Optional.empty());
        }
        least = new RipBound(shop, desk.forTries(), group).least(aim.taken(best.sticks()));
        glanced = glance(share, only);
        OTHER_SHARES.forEach(other -> attempt(other, only));
        boolean won = true;
        for (int round = 0; round < ROUNDS && won; round++) {
            long before = aim.taken(best.sticks());
            group.lots().forEach(this::holdToOneKind);
            won = aim.taken(best.sticks()) < before;
        }
        long over = Math.max(0, aim.taken(best.sticks()) - least);
        return new Ripped(
                best,
                Optional.of(new RipPlan(group.first().thickness(), group.first().wood(), aim, over)));
    }

    private void holdToOneKind(Lot lot) {
        for (Supply supply : lot.source().supplies()) {
            for (int length : supply.buy()) {
                IdentityHashMap<Lot, Kind> other = new IdentityHashMap<>(only);
                other.put(lot, new Kind(supply, length, Origin.BOUGHT));
                attempt(share, other);
            }
        }
    }

    private void attempt(Share otherShare, IdentityHashMap<Lot, Kind> otherOnly) {
        if (aim.taken(best.sticks()) <= least || !tries.mayTry()) {
            return;
        }
        long first = glance(otherShare, otherOnly);
        if (first > glanced + glanced / WORTH) {
            return;
        }
        Laid other = new StickLayout(shop, tries, group, otherShare, otherOnly).lay();
        if (better(other)) {
            best = other;
            glanced = first;
            share = otherShare;
            only = otherOnly;
        }
    }

    /** What a way comes to at a first look, piece by piece. */
    private long glance(Share otherShare, IdentityHashMap<Lot, Kind> otherOnly) {
        Laid first = new StickLayout(shop, glances, group, otherShare, otherOnly).lay();
        return first.missing() > best.missing() ? Long.MAX_VALUE : aim.taken(first.sticks());
    }

    private boolean better(Laid other) {
        return Comparator.comparingLong(Laid::missing)
                        .thenComparingLong(one -> aim.taken(one.sticks()))
                        .thenComparingInt(one -> one.sticks().size())
                        .compare(other, best)
                < 0;
    }
}
