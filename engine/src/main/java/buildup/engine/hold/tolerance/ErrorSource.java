package buildup.engine.hold.tolerance;

/**
 * A size that strays.
 *
 * @param name as {@code width of frieze}
 * @param piece number of the body; -1 for the wall and the ceiling
 * @param spread plus and minus, in; of the wall an inch of lean for every inch of height
 */
public record ErrorSource(String name, What what, int piece, double spread) {
    /** What strays. */
    public enum What {
        /** The width of a stick. */
        WIDTH,
        /** The thickness of a stick. */
        THICKNESS,
        /** The plumb of the wall. */
        WALL,
        /** The height of the ceiling. */
        CEILING
    }

    /** The same size, held closer. */
    ErrorSource heldTo(double other) {
        return new ErrorSource(name, what, piece, Math.min(spread, other));
    }
}
