package buildup.engine.room.stock;

import buildup.shared.notice.Mark;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/**
 * Sticks of one profile, or boards of one size, of one wood.
 *
 * @param name as the document calls it
 * @param kind the trade's word for the profile; "board" for a board
 * @param thickness, width of the stick, in
 * @param feet board feet in a foot of it
 * @param buy lengths to be had, rising, {@link LengthSteps}
 * @param onHand those that lie in the shop
 * @param rate price in hundredths of a hundredth for each unit of it; absent when none is given
 */
public record Supply(
        String name,
        String kind,
        String wood,
        double thickness,
        double width,
        double feet,
        List<Integer> buy,
        List<OnHand> onHand,
        OptionalLong rate,
        Unit unit,
        Mark mark) {
    static final int RATE_PER_HUNDREDTH = 100;

    /** Exact: 25.4 mm to the inch. */
    private static final double METERS_IN_A_FOOT = 0.3048;

    /** What a price is for. */
    public enum Unit {
        FOOT("foot"),
        BOARD_FOOT("board-foot"),
        METER("meter"),
        STICK("stick");

        private final String word;

        Unit(String word) {
            this.word = word;
        }

        /** The word for it in reports. */
        public String word() {
            return word;
        }
    }

    /** So many sticks of a length, {@link LengthSteps}. */
    public record OnHand(int length, int count) {}

    public Supply {
        buy = List.copyOf(buy);
        onHand = List.copyOf(onHand);
    }

    /** Whether it is a board, which may be ripped, and not a molding. */
    public boolean board() {
        return kind.equals("board");
    }

    /** Price of a bought stick in hundredths, the half upward; 0 when none is given. */
    public long price(int length) {
        double runningFeet = LengthSteps.inches(length) / 12;
        double units = switch (unit) {
            case FOOT -> runningFeet;
            case BOARD_FOOT -> runningFeet * feet;
            case METER -> runningFeet * METERS_IN_A_FOOT;
            case STICK -> 1;
        };
        return Math.round(rate.orElse(0) * units / RATE_PER_HUNDREDTH);
    }

    /** Whether a bought stick has a price, or none can be bought. */
    public boolean priced() {
        return buy.isEmpty() || rate.isPresent();
    }

    /** How many lie there of each length, in the order in which they are listed. */
    public Map<Integer, Integer> lying() {
        Map<Integer, Integer> lying = new LinkedHashMap<>();
        onHand.forEach(own -> lying.merge(own.length(), own.count(), Integer::sum));
        return lying;
    }

    /** The longest that is on hand or to be bought, {@link LengthSteps}; 0 when there is none. */
    public int longest() {
        int bought = buy.isEmpty() ? 0 : buy.get(buy.size() - 1);
        return Math.max(bought, onHand.stream().mapToInt(OnHand::length).max().orElse(0));
    }
}
