package buildup.engine.room.sticks;

import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Shop.Aim;
import buildup.engine.room.stock.Supply;
import buildup.engine.solve.StickProblem;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/**
 * What no way to rip boards into strips, and to cut these to length, takes less than. Of several bounds the greatest: the
 * wood that the pieces hold, at the least price of wood; a board that holds the longest piece; and each lot at its least
 * price when its strips are charged by a dual feasible function, so that no board earns more than it costs.
 */
final class RipBound {
    /** More steps tell next to nothing: the function is then nearly the part of the width itself. */
    private static final int MOST_STEPS = 6;

    /** Parts of a unit of the aim in which charges are counted, so that little is lost by rounding them down. */
    private static final long PARTS = 64;

    /** Sums beyond are not looked at one by one. */
    private static final long MOST_PAID = 1_000_000;

    private final Shop shop;
    private final LotSolver desk;
    private final BoardGroup group;
    private final Aim aim;

    RipBound(Shop shop, LotSolver desk, BoardGroup group) {
        this.shop = shop;
        this.desk = desk;
        this.group = group;
        this.aim = group.aim(shop);
    }

    /** The least that the group can take, in the unit of its aim; no more than {@code taken}, which some way takes. */
    long least(long taken) {
        long least = Math.max(byArea(), byLongest());
        for (int steps = 0; steps <= MOST_STEPS && desk.mayTry() && payable(least, taken) < taken; steps++) {
            Share.Dual share = new Share.Dual(steps);
            least = Math.max(least, Math.max(byShares(share, 0), byShares(share, rate())));
        }
        return payable(least, taken);
    }

    private long price(Supply supply, int length) {
        return aim == Aim.CHEAPEST ? supply.price(length) : 1;
    }

    /** The least that whole boards can come to when they come to at least so much, as far as {@code taken}. */
    private long payable(long least, long taken) {
        if (taken > MOST_PAID) {
            return Math.min(least, taken);
        }
        boolean[] paid = new boolean[(int) taken + 1];
        paid[0] = true;
        for (Supply supply : group.supplies()) {
            for (int length : supply.buy()) {
                long price = price(supply, length);
                for (int sum = (int) Math.min(price, paid.length); price > 0 && sum < paid.length; sum++) {
                    paid[sum] |= paid[sum - (int) price];
                }
            }
        }
        int sum = (int) Math.min(least, taken);
        while (sum < taken && !paid[sum]) {
            sum++;
        }
        return sum;
    }

    private long byLongest() {
        return group.lots().stream()
                .mapToLong(lot -> lot.bundles().stream()
                        .mapToLong(bundle -> leastBoard(lot, bundle.length()))
                        .max()
                        .orElse(0))
                .max()
                .orElse(0);
    }

    /** The cheapest board of a lot that holds so much; those on hand cost nothing. */
    private long leastBoard(Lot lot, int length) {
        boolean lies = lot.source().supplies().stream()
                .flatMap(supply -> supply.lying().keySet().stream())
                .anyMatch(own -> shop.usable(own) >= length);
        return lies
                ? 0
                : lot.source().supplies().stream()
                        .flatMapToLong(supply -> supply.buy().stream()
                                .filter(own -> shop.usable(own) >= length)
                                .mapToLong(own -> price(supply, own)))
                        .min()
                        .orElse(0);
    }

    /**
     * Every lot by itself, at the least. All lots may then take the same board on hand; one that is charged for them, and
     * given back what all that lie there are worth, takes them as if it had to share (Lagrange's multipliers: any charge
     * gives a bound).
     *
     * @param rate charge for a square inch on hand
     */
    private long byShares(Share.Dual share, double rate) {
        long parts = group.lots().stream()
                .mapToLong(lot -> desk.least(problem(lot, share, rate)))
                .sum();
        long given = group.supplies().stream()
                .flatMap(supply -> supply.lying().entrySet().stream()
                        .map(own -> own.getValue() * worth(supply, own.getKey(), rate)))
                .mapToLong(worth -> worth)
                .sum();
        return Math.max(0, (parts - given + PARTS - 1) / PARTS);
    }

    private static long worth(Supply supply, int length, double rate) {
        return (long) (PARTS * rate * supply.width() * LengthSteps.inches(length));
    }

    private StickProblem problem(Lot lot, Share.Dual share, double rate) {
        List<StickProblem.Stick> sticks = new ArrayList<>();
        for (Supply supply : lot.source().supplies()) {
            Share.Rip rip = Share.Rip.of(lot.source().strip(), shop.grid().offered(supply.width()), shop.ripKerf());
            supply.lying()
                    .forEach((length, count) -> sticks.add(new StickProblem.Stick(
                            shop.usable(length), share.least(rip, worth(supply, length, rate)), rip.each() * count)));
            for (int length : supply.buy()) {
                sticks.add(new StickProblem.Stick(
                        shop.usable(length), share.least(rip, PARTS * price(supply, length)), StickProblem.NO_END));
            }
        }
        return group.layout(lot).nesting().problem(sticks, true);
    }

    private long byArea() {
        double lying = group.supplies().stream()
                .flatMapToDouble(supply -> supply.onHand().stream()
                        .mapToDouble(own -> supply.width() * LengthSteps.inches(own.length()) * own.count()))
                .sum();
        double wanted = group.lots().stream().mapToDouble(RipBound::area).sum();
        // a whole number of hundredths or of boards; what the last digits of a sum may be off is let go
        return (long) Math.ceil(Math.max(0, wanted - lying) * rate() - Tolerance.SAME_SHARE);
    }

    /** The least that a square inch of bought board costs. */
    private double rate() {
        return group.supplies().stream()
                .flatMapToDouble(supply -> supply.buy().stream()
                        .mapToDouble(length -> price(supply, length) / (supply.width() * LengthSteps.inches(length))))
                .min()
                .orElse(0);
    }

    private static double area(Lot lot) {
        return LengthSteps.inches(lot.source().strip())
                * lot.bundles().stream()
                        .flatMap(bundle -> bundle.pieces().stream())
                        .mapToDouble(piece -> LengthSteps.inches(piece.length()))
                        .sum();
    }
}
