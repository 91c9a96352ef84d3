package buildup.engine.room.stock;

import buildup.profiles.outline.Tolerance;
import buildup.shared.length.LengthUnit;

/** How finely a job measures its wood: on one tape, so that an exact fit fits. */
public enum TapeStep {
    SIXTY_FOURTHS(LengthSteps.SIXTY_FOURTH),
    TENTHS_OF_MILLIMETERS(LengthSteps.TENTH_OF_A_MILLIMETER);

    private final int step;

    TapeStep(int step) {
        this.step = step;
    }

    /** The tape of a document. */
    static TapeStep of(LengthUnit unit) {
        return unit.isMetric() ? TENTHS_OF_MILLIMETERS : SIXTY_FOURTHS;
    }

    /** From one mark to the next, {@link LengthSteps}. */
    public int step() {
        return step;
    }

    /** What a piece needs: the next mark that is not less. */
    public int needed(double inches) {
        return (int) Math.ceil((inches - Tolerance.COINCIDENT) * LengthSteps.PER_INCH / step) * step;
    }

    /** What a stick offers: the next mark that is not more. */
    public int offered(double inches) {
        return (int) Math.floor((inches + Tolerance.COINCIDENT) * LengthSteps.PER_INCH / step) * step;
    }
}
