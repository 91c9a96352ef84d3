package buildup.engine.section.compose;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;

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
    /** A longer set-back reads as an exposed face, in: common practice, no source. */
    private static final double LONGEST = 1;

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

    /** What an eye takes it for. */
    public enum Kind {
        FLUSH,
        REVEAL,
        EXPOSED_FACE;

        /** The word for it in reports. */
        public String word() {
            return switch (this) {
                case FLUSH -> "flush";
                case REVEAL -> "reveal";
                case EXPOSED_FACE -> "exposed face";
            };
        }
    }

    /** What an eye takes it for. */
    public Kind kind() {
        return !shows() ? Kind.FLUSH : isFace(amount) ? Kind.EXPOSED_FACE : Kind.REVEAL;
    }

    /** Whether an eye compares it with others: what is set back shows, and is no face of its own. */
    public boolean compares() {
        return kind() == Kind.REVEAL;
    }

    /** Whether so long a set-back, in, reads as an exposed face. */
    public static boolean isFace(double amount) {
        return amount > LONGEST + Tolerance.TOUCHING;
    }

    private boolean shows() {
        return amount > Tolerance.TOUCHING;
    }

    /** The direction in which it is measured, from the joint; where it is flush, that in which one would be. */
    public Point way() {
        if (shows()) {
            return to.minus(at).unit();
        }
        return along == Along.LEVEL ? new Point(1, 0) : new Point(0, 1);
    }
}
