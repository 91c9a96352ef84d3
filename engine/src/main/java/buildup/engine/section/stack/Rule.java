package buildup.engine.section.stack;

import buildup.shared.notice.Mark;
import java.util.Optional;

/** Where one edge of a piece goes. Offsets are inches, positive out or up. */
public sealed interface Rule permits Rule.Level, Rule.ByEdge, Rule.Touch, Rule.Unread {
    /** Where the document gives it. */
    Mark mark();

    /**
     * A known place: a length from the plane or the datum, or wall, floor, ceiling, datum with an offset.
     *
     * @param axis that the place is on; a plain length is on either
     * @param ceiling whether it is counted from the ceiling
     */
    record Level(double at, Optional<Axis> axis, boolean ceiling, Mark mark) implements Rule {
        /** A place that is not counted from the ceiling. */
        public Level(double at, Optional<Axis> axis, Mark mark) {
            this(at, axis, false, mark);
        }
    }

    /** At an edge of another piece: back, face, bottom, top or a straight member. */
    record ByEdge(String piece, String edge, double offset, Mark mark) implements Rule {}

    /** Moved until it meets something. */
    record Touch(Mark mark) implements Rule {}

    /** A rule that was refused as it was read: it places nothing, and that has been said. */
    record Unread(Mark mark) implements Rule {}
}
