package buildup.engine.look.light;

import buildup.profiles.outline.Segment;

/**
 * A stretch of one member that is lit in one way throughout.
 *
 * @param member its number on the walk
 * @param whole segment of the member
 * @param start, end of the stretch, shares of that segment
 */
public record Band(int member, Lit lit, Segment whole, double start, double end) {
    /** The stretch itself. */
    public Segment segment() {
        return whole.part(start, end);
    }

    /** How light meets a surface. */
    public enum Lit {
        /** The ray arrives. */
        LIT,
        /** Turned away from the light. */
        SHADE,
        /** Turned to the light, with wood in between. */
        CAST;

        /** The word for it in reports and pictures. */
        public String word() {
            return switch (this) {
                case LIT -> "lit";
                case SHADE -> "shade";
                case CAST -> "cast";
            };
        }
    }
}
