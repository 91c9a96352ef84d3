package buildup.engine.judge.along;

import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import java.util.OptionalDouble;

/**
 * A place along one size, all others as they are today, where a rule turns.
 *
 * @param key the place of the size in the document
 * @param rule as written
 * @param quantity what the size counts
 * @param value where it turns, in, or in degrees, or in the unit of the quantity
 * @param shop the nearest 16th of an inch, or millimeter in a metric document, at which the rule is met;
 *     absent where neither of the two beside it does
 * @param metAbove whether the rule is met on the side of greater sizes
 * @param metBelow whether it is met on the side of smaller ones
 * @param metFrom the least size round it at which a rule of the form {@code = 50 % within 2 %} is met; absent for others
 * @param metTo the greatest such size
 */
public record Turning(
        String key,
        String rule,
        Quantity quantity,
        double value,
        OptionalDouble shop,
        boolean metAbove,
        boolean metBelow,
        OptionalDouble metFrom,
        OptionalDouble metTo) {
    /** Where it turns, as people read it: where the rule is met on one side, rounded to that side. */
    public Figure at() {
        Rounding.Side side =
                metAbove == metBelow ? Rounding.Side.NEAREST : metAbove ? Rounding.Side.UP : Rounding.Side.DOWN;
        return Figure.of(quantity, value).rounded(Rounding.FINE.to(side));
    }

    /** Whether a size is this place, or lies on the stretch round it on which the rule is met. */
    boolean reaches(double size) {
        return size >= metFrom.orElse(value) - Tolerance.TOUCHING && size <= metTo.orElse(value) + Tolerance.TOUCHING;
    }
}
