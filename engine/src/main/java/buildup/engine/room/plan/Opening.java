package buildup.engine.room.plan;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import buildup.shared.notice.Mark;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A stretch of wall where the run is interrupted: a door, a window, a chimney.
 *
 * @param from, to places on the wall from the stretch's left end, in, outsides of the casing
 * @param bottom, top heights over the datum between which it is open, in; absent: as far down or up as the stack reaches
 * @param pieces names of those that it interrupts; empty: all that it reaches in height
 * @param ends how the run ends on both its sides: butt, return or square
 */
public record Opening(
        String name,
        double from,
        double to,
        OptionalDouble bottom,
        OptionalDouble top,
        List<String> pieces,
        Ending ends,
        Mark mark) {
    public Opening {
        pieces = List.copyOf(pieces);
    }

    /** Whether it interrupts a piece of that name and box. */
    public boolean interrupts(String piece, Box box) {
        return pieces.isEmpty()
                ? box.bottom() < top.orElse(Double.POSITIVE_INFINITY) - Tolerance.TOUCHING
                        && box.top() > bottom.orElse(Double.NEGATIVE_INFINITY) + Tolerance.TOUCHING
                : pieces.contains(piece);
    }
}
