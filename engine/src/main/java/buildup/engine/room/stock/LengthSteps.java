package buildup.engine.room.stock;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Rounding;

/**
 * Lengths of wood in whole steps of 1/8128 in, of which a 64th of an inch holds 127 and a tenth of a millimeter 32: so an
 * exact fit fits in either. What is measured is first brought onto one of the two ({@link TapeStep}).
 */
public final class LengthSteps {
    public static final int PER_INCH = 8128;

    /** Steps in a 64th of an inch. */
    public static final int SIXTY_FOURTH = 127;

    /** Steps in a tenth of a millimeter. */
    static final int TENTH_OF_A_MILLIMETER = 32;

    private LengthSteps() {}

    /** So many steps in inches, exactly. */
    public static double inches(int steps) {
        return (double) steps / PER_INCH;
    }

    /** As a length. */
    public static Figure figure(int steps) {
        return Figure.length(inches(steps));
    }

    /** The length of a whole stick, as a yard names it. */
    public static Figure stick(int steps) {
        return figure(steps).rounded(Rounding.STICK);
    }
}
