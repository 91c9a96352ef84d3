package buildup.engine.hold.season;

import buildup.profiles.outline.Point;
import java.util.List;

/**
 * From where a piece moves.
 *
 * @param body number of the piece
 * @param out what keeps its distance from the wall plane; none when nothing does
 * @param up what keeps its height; none when nothing does
 */
public record Held(int body, How how, List<Hold> out, List<Hold> up) {
    /** What keeps it in place. */
    public enum How {
        /** Fastenings. */
        NAILED,
        /** The document says what it is fixed to. */
        SAID,
        /** Its back lies flat on framing or solid wall, and nothing else is said. */
        COUNTED,
        /** It lies on others, and nothing else is said. */
        RESTS,
        /** It sits in grooves and moves in them. */
        FLOATS,
        /** Nothing touches it. */
        FREE
    }

    /**
     * A place at which it goes with another body.
     *
     * @param body number of that body
     */
    public record Hold(int body, Point at) {}

    /** Copies the lists. */
    public Held {
        out = List.copyOf(out);
        up = List.copyOf(up);
    }
}
