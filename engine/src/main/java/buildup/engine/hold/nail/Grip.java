package buildup.engine.hold.nail;

import java.util.List;

/**
 * How one body holds one nail against being drawn out; lb.
 *
 * @param body number in the section
 * @param bite inches of the nail in it; of a screw, of its thread
 * @param gravity G that was used: ovendry weight on volume at 12 %, as the catalog gives it; 0 of masonry
 * @param endGrain whether the nail runs with the fibers
 * @param design value of the design formula for this bite, square to side grain
 * @param test value at which it came out in tests
 * @param otherTest what the other published formula gives for the same; {@link Strength} says which they are
 * @param factors what the design value is reduced by
 */
public record Grip(
        int body,
        double bite,
        double gravity,
        boolean endGrain,
        double design,
        double test,
        double otherTest,
        List<Factor> factors) {
    /** Copies the list. */
    public Grip {
        factors = List.copyOf(factors);
    }

    /** Whether it is masonry that it bites in. */
    public boolean inMasonry() {
        return factors.stream().anyMatch(factor -> factor.why() == Factor.Why.MASONRY);
    }

    /** What is left of the design value. */
    public double factor() {
        return Factor.product(factors);
    }

    /** What it may hold. */
    public double allowable() {
        return design * factor();
    }
}
