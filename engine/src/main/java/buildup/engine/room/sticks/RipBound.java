package buildup.engine.room.sticks;

import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Shop.Aim;
import buildup.engine.room.stock.Supply;
import buildup.engine.solve.BoardBound;
import buildup.engine.solve.StickProblem;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/**
 * What no way to rip boards into strips, and to cut these to length, takes less than. Of several bounds the greatest: the
 * wood that the pieces hold, at the least price of wood; a board that holds the longest piece; and what boards must cost
 * that give every lot the strips that it needs at least, each strip counted by its length's price
 * ({@link Share.ByLength}), the boards in parts ({@link BoardBound}).
 */
final class RipBound {
    /** Sums beyond are not looked at one by one. */
    private static final long MOST_PAID = 1_000_000;

    private final Shop shop;
    private final LotSolver desk;
    private final BoardGroup group;
    private final Aim aim;
    private final Share.ByLength lengths;

    RipBound(Shop shop, LotSolver desk, BoardGroup group) {
        this.shop = shop;
        this.desk = desk;
        this.group = group;
        this.aim = group.aim(shop);
        this.lengths = Share.ByLength.of(group.supplies(), aim);
    }

    /** The least that the group can take, in the unit of its aim; no more than {@code taken}, which some way takes. */
    long least(long taken) {
        long least = Math.max(byArea(), byLongest());
        boolean lying =
                group.supplies().stream().anyMatch(supply -> !supply.lying().isEmpty());
        if (lying && payable(least, taken) < taken && desk.mayTry()) {
            least = Math.max(least, byStrips(0));
        }
        if (payable(least, taken) < taken && desk.mayTry()) {
            least = Math.max(least, byStrips(lengths.rate()));
        }
        return payable(least, taken);
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
                long price = aim.price(supply, length);
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
                                .mapToLong(own -> aim.price(supply, own)))
                        .min()
                        .orElse(0);
    }

    /**
     * Every lot by itself, at the least, and then the boards for all. Lots may each take the same board on hand; one that
     * is charged for its strips takes them as if it had to share, and the board gives them once (Lagrange's multipliers:
     * any charge gives a bound).
     *
     * @param rate charge for a step of a strip on hand
     */
    private long byStrips(double rate) {
        List<BoardBound.Strip> strips = group.lots().stream()
                .map(lot -> new BoardBound.Strip(lot.source().strip() + shop.ripKerf(), desk.least(problem(lot, rate))))
                .toList();
        List<BoardBound.Board> boards = new ArrayList<>();
        for (Supply supply : group.supplies()) {
            int width = shop.grid().offered(supply.width()) + shop.ripKerf();
            supply.buy().stream()
                    .mapToDouble(length -> (double) aim.price(supply, length) / charge(supply, length))
                    .min()
                    .ifPresent(price -> boards.add(new BoardBound.Board(width, price, Double.POSITIVE_INFINITY)));
            double lying = supply.lying().entrySet().stream()
                    .mapToDouble(own -> own.getValue() * charge(own.getKey(), rate))
                    .sum();
            if (lying > 0) {
                boards.add(new BoardBound.Board(width, 0, lying));
            }
        }
        // a whole number of hundredths or of boards
        return (long) Math.ceil(BoardBound.least(strips, boards));
    }

    private long charge(Supply supply, int length) {
        return lengths.charge(Share.Rip.of(1, 1, 0), length, aim.price(supply, length));
    }

    private static long charge(int length, double rate) {
        return (long) (length * rate);
    }

    private StickProblem problem(Lot lot, double rate) {
        List<StickProblem.Stick> sticks = new ArrayList<>();
        for (Supply supply : lot.source().supplies()) {
            Share.Rip rip = Share.Rip.of(lot.source().strip(), shop.grid().offered(supply.width()), shop.ripKerf());
            supply.lying()
                    .forEach((length, count) -> sticks.add(
                            new StickProblem.Stick(shop.usable(length), charge(length, rate), rip.each() * count)));
            for (int length : supply.buy()) {
                sticks.add(new StickProblem.Stick(shop.usable(length), charge(supply, length), StickProblem.NO_END));
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
                        .mapToDouble(
                                length -> aim.price(supply, length) / (supply.width() * LengthSteps.inches(length))))
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
