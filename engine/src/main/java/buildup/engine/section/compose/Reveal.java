package buildup.engine.section.compose;

import buildup.profiles.outline.Point;

/**
 * At the end of a contact on the walk, the straight face of one piece runs on in the line of the contact.
 *
 * @param piece body that shows
 * @param over body that stops short
 * @param amount length to the next corner, tangent point or neighbor, in; 0 = flush
 * @param at the joint
 * @param to the far end of the reveal; the joint itself when flush
 * @param step projection of the later of the two on the walk less that of the one before
 */
public record Reveal(int piece, int over, double amount, Along along, Point at, Point to, double step) {
    /** How the line of the contact lies. */
    public enum Along {
        LEVEL,
        UPRIGHT,
        SLOPED;

        /** The word for it in reports. */
        public String word() {
            return switch (this) {
                case LEVEL -> "level";
                case UPRIGHT -> "upright";
                case SLOPED -> "sloped";
            };
        }
    }
}
