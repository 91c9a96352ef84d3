package buildup.engine.run;

import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;

/** Figures in sentences. */
final class Wording {
    private Wording() {}

    /** Degrees to a tenth, as a saw is set, without a zero behind. */
    static String degrees(double angle) {
        String tenths = LengthPrinter.decimals(Length.inches(angle), 1);
        return (tenths.endsWith(".0") ? tenths.substring(0, tenths.length() - 2) : tenths) + "°";
    }

    /** To the nearest 1/16. */
    static String near(double inches) {
        return LengthPrinter.sixteenths(Length.inches(inches));
    }

    /** The next 1/16 that is not less: what is needed, what has to go. */
    static String atLeast(double inches) {
        return LengthPrinter.sixteenths(LengthPrinter.roundUp(Length.inches(inches), 16));
    }

    /** The next 1/16 that is not more: what is left. */
    static String atMost(double inches) {
        return LengthPrinter.sixteenths(LengthPrinter.roundDown(Length.inches(inches), 16));
    }
}
