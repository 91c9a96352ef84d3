package buildup.engine.room.sticks;

import buildup.engine.room.stock.Shop.Aim;
import buildup.engine.room.stock.Supply;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What of a board's price each of its strips is charged, so that lots of strips can be laid out one after another.
 * Widths and lengths are whole {@link buildup.engine.room.stock.LengthSteps}.
 */
sealed interface Share {
    /**
     * The charge for a strip of a board.
     *
     * @param length of the board
     * @param price of the board
     */
    long charge(Rip rip, int length, long price);

    /** What a strip of a length on hand is worth beside those that are bought; 0 where that is not known. */
    default long worth(int length) {
        return 0;
    }

    /**
     * A strip of a board; both widths with one kerf, so that strips fit that together are no wider than the board.
     *
     * @param strip at least 1
     * @param board at least as wide
     */
    record Rip(int strip, int board) {
        static Rip of(int strip, int board, int kerf) {
            return new Rip(Math.min(strip, board) + kerf, board + kerf);
        }

        /** Strips that a board gives. */
        int each() {
            return board / strip;
        }
    }

    /** An equal part for each of as many strips as fit, rounded up. */
    record Equal() implements Share {
        @Override
        public long charge(Rip rip, int length, long price) {
            return (price + rip.each() - 1) / rip.each();
        }
    }

    /**
     * As much for a strip of any width, by its length alone: lots of the same lengths are then cut alike, and their strips
     * lie side by side on boards of the same length.
     */
    record ByLength(Map<Integer, Long> prices) implements Share {
        /** Parts of a unit of the price in which lengths are told apart whose best boards are not alike. */
        private static final long PARTS = 64;

        /** Prices in the proportion of those of the boards that cost least for their width. */
        static ByLength of(List<Supply> supplies, Aim aim) {
            Map<Integer, Supply> best = new TreeMap<>();
            Comparator<Supply> width = Comparator.comparingDouble(Supply::width);
            for (Supply supply : supplies) {
                for (int length : supply.buy()) {
                    best.merge(
                            length,
                            supply,
                            (one, other) ->
                                    Comparator.comparingDouble((Supply own) -> aim.price(own, length) / own.width())
                                                            .thenComparing(width.reversed())
                                                            .compare(one, other)
                                                    <= 0
                                            ? one
                                            : other);
                }
            }
            Optional<Supply> first = best.values().stream().findFirst();
            boolean alike = best.values().stream().distinct().count() == 1;
            Map<Integer, Long> prices = new TreeMap<>();
            best.forEach((length, supply) -> prices.put(
                    length,
                    alike
                            ? aim.price(supply, length)
                            : (long) (PARTS
                                    * aim.price(supply, length)
                                    * first.orElseThrow().width()
                                    / supply.width())));
            return new ByLength(prices);
        }

        @Override
        public long charge(Rip rip, int length, long price) {
            return prices.getOrDefault(length, price);
        }

        @Override
        public long worth(int length) {
            return (long) (rate() * length);
        }

        /** The least price of a length, for each of its steps. */
        double rate() {
            return prices.entrySet().stream()
                    .mapToDouble(own -> (double) own.getValue() / own.getKey())
                    .min()
                    .orElse(0);
        }
    }
}
