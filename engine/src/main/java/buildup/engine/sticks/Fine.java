package buildup.engine.sticks;

import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;

/**
 * Lengths of wood in whole steps of 1/8128 in, of which a 64th of an inch holds 127 and a tenth of a millimetre 32: so an
 * exact fit fits in either. What is measured is first brought onto one of the two ({@link Grid}).
 */
public final class Fine {
    public static final int PER_INCH = 8128;

    /** Steps in a 64th of an inch. */
    static final int SIXTY_FOURTH = 127;

    /** Steps in a tenth of a millimetre. */
    static final int TENTH_OF_A_MILLIMETRE = 32;

    private Fine() {}

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
