package buildup.engine.sticks;

import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;

/** Whole 64ths of an inch: fine enough for a tape, and an exact fit fits. */
public final class Fine {
    public static final int PER_INCH = 64;

    private Fine() {}

    /** What a piece needs: the next 64th that is not less. */
    static int needed(double inches) {
        return steps(LengthPrinter.roundUp(Length.inches(inches), PER_INCH));
    }

    /** What a stick offers: the next 64th that is not more. */
    static int offered(double inches) {
        return steps(LengthPrinter.roundDown(Length.inches(inches), PER_INCH));
    }

    private static int steps(Length length) {
        return (int) Math.round(length.toInches() * PER_INCH);
    }

    public static double inches(int steps) {
        return (double) steps / PER_INCH;
    }

    static Length length(int steps) {
        return Length.inches(inches(steps));
    }

    /** To the nearest 1/16. */
    static String print(int steps) {
        return LengthPrinter.sixteenths(length(steps));
    }

    /** As a yard names a stick: whole feet where it is so. */
    public static String stick(int steps) {
        int foot = 12 * PER_INCH;
        return steps % foot == 0 ? steps / foot + " ft" : print(steps);
    }
}
