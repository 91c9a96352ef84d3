package buildup.engine.room.plan;

import buildup.shared.notice.Mark;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A straight stretch of wall.
 *
 * @param length on the wall plane, from corner to corner, at the height of the datum, in
 * @param corner at its right end; absent at the end of a run that does not close
 * @param cope which stick at its right corner is coped
 * @param block how far a block at its right end, a rosette or a corner block, covers it and the next one, in; absent:
 *     there is none
 * @param pieces names of those that run along it; empty: all
 * @param openings from left to right, none over another
 * @param surfaces ceiling, floor and wall along it, as measured
 * @param framing what stands behind its wall and over its ceiling
 * @param lean how far the wall comes forward into the room for every inch of height; 0 is plumb
 */
public record Stretch(
        String name,
        double length,
        Optional<WallCorner> corner,
        Cope cope,
        OptionalDouble block,
        List<String> pieces,
        List<Opening> openings,
        MeasuredRoom surfaces,
        Framing framing,
        double lean,
        Mark mark) {
    public Stretch {
        pieces = List.copyOf(pieces);
        openings = List.copyOf(openings);
    }

    /** What the plan says of the cope at the right end. */
    public enum Cope {
        /** The stick to the left of the corner, this one. */
        LEFT,
        /** The stick to the right of it. */
        RIGHT,
        /** None: it is mitered. */
        NO,
        /** As the run has it. */
        UNSAID
    }

    /** Whether a piece of that name runs along it. */
    public boolean carries(String piece) {
        return pieces.isEmpty() || pieces.contains(piece);
    }
}
