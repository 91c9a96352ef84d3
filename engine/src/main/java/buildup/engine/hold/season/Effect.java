package buildup.engine.hold.season;

import buildup.profiles.outline.Point;
import java.util.OptionalDouble;

/**
 * What a season does to one place of the stack.
 *
 * @param season its number
 * @param name of the place, as {@code reveal of bead over frieze}
 * @param piece, other numbers of the bodies that meet there; the same where one alone is concerned
 * @param amount how much more there is of it, in; negative when there is less
 * @param left how much there is then; absent where nothing can be counted
 * @param seen whether it lies on the room side
 * @param at where
 * @param coped whether it is a miter that could be a cope instead: that of an inside corner of walls
 */
public record Effect(
        int season,
        Place place,
        String name,
        int piece,
        int other,
        double amount,
        OptionalDouble left,
        boolean seen,
        Point at,
        boolean coped) {
    /** What kind of place. */
    public enum Place {
        /** A straight face that runs on past a joint. */
        REVEAL,
        /** Two faces that touch: what opens is air, what is negative presses. */
        JOINT,
        /** A level face that carries. */
        BEARING,
        /** A face that covers another. */
        LAP,
        /** A gap that was there as built. */
        GAP,
        /** A mitered corner, at the end of the miter that opens. */
        MITER,
        /** Two rows of nails in one piece: what the piece would move between them. */
        NAILS,
        /** The room under the ceiling. */
        ROOM
    }

    /** What becomes of it, in a word. */
    public String result() {
        return switch (place) {
            case JOINT -> amount > 0 ? "opens" : "presses";
            case GAP, MITER -> amount > 0 ? "opens" : "closes";
            case NAILS -> amount > 0 ? "cups" : "splits";
            case REVEAL, BEARING, LAP, ROOM -> amount > 0 ? "grows" : "shrinks";
        };
    }
}
