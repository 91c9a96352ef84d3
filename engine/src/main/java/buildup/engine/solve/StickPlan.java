package buildup.engine.solve;

import java.util.List;

/**
 * Which piece comes from which stick, at the least price found, and of plans of one price with the fewest sticks found.
 *
 * @param sticks those that are cut up
 * @param price of them all
 * @param leastPrice no plan costs less
 * @param leastCount no plan of that least price takes fewer sticks
 * @param ended whether the search came to its own end, and not to its limit
 * @param steps that the search took
 */
public record StickPlan(List<CutUp> sticks, long price, long leastPrice, int leastCount, boolean ended, long steps) {
    /**
     * One stick.
     *
     * @param kind its number among the kinds
     * @param pieces their numbers, in the order in which they lie
     */
    public record CutUp(int kind, List<Integer> pieces) {
        public CutUp {
            pieces = List.copyOf(pieces);
        }
    }

    public StickPlan {
        sticks = List.copyOf(sticks);
    }

    /** Whether it is known that no plan costs less. */
    public boolean cheapest() {
        return price == leastPrice;
    }

    /** Whether it is known that no plan costs less, and none of its price takes fewer sticks. */
    public boolean best() {
        return cheapest() && sticks.size() == leastCount;
    }
}
