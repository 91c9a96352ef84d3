package buildup.engine.mill.quote;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.length.Length;
import java.math.BigDecimal;

/** Figures as a mill writes them. */
final class Amounts {
    private static final int INCHES_PER_FOOT = 12;

    private Amounts() {}

    static Figure size(Length length) {
        return size(length.toInches());
    }

    /** As finely as a mill's own figures are written. */
    static Figure size(double inches) {
        return Figure.length(inches).rounded(Rounding.LISTED);
    }

    /** So many feet of a run. */
    static Figure run(double feet) {
        return Figure.of(Quantity.RUN, feet);
    }

    static Figure run(Length length) {
        return run(length.toInches() / INCHES_PER_FOOT);
    }

    static Figure percent(BigDecimal share) {
        return Figure.percent(share.doubleValue());
    }

    static Figure money(BigDecimal sum) {
        return Figure.of(Quantity.MONEY, sum.doubleValue());
    }

    /** A price by a measure. */
    static Figure rate(Quantity by, BigDecimal sum) {
        return Figure.of(by, sum.doubleValue());
    }

    static Figure boardFeet(double boardFeet) {
        return Figure.of(Quantity.BOARD_FEET, boardFeet);
    }
}
