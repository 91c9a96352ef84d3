package buildup.engine.room.run;

import buildup.shared.figure.Phrase;
import java.util.Optional;

/**
 * The cut at one end of a stick.
 *
 * @param corner the corner it is cut for, degrees, as the plan gives it; 90 for a square cut
 * @param miter saw's miter from square with the stick flat on the table, degrees, 0 to 90
 * @param bevel blade's bevel from upright in the same position, degrees, 0 to 90
 * @param setting the easiest position on the saw; none for a square cut
 * @param words what to do, in a few words
 */
public record EndCut(
        Kind kind, double corner, double miter, double bevel, Optional<Saw.Setting> setting, Phrase words) {
    /** What the cut is for. */
    public enum Kind {
        /** Through stick and stick, square: at a free end, or behind. */
        SQUARE("square"),
        /** Half of a corner. */
        MITER("miter"),
        /** Half of an inside corner, cut out along its profile over the face of the stick it meets. */
        COPE("cope"),
        /** Against a wall, a casing or the face of another stick. */
        BUTT("butt"),
        /** Half of the corner between a course and its own return. */
        RETURN("return");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** As it is called in a table. */
        public String word() {
            return word;
        }
    }

    public EndCut {
        miter = miter + 0.0; // turns -0.0 into 0.0
        bevel = bevel + 0.0;
    }
}
