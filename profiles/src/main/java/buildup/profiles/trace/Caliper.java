package buildup.profiles.trace;

import buildup.profiles.outline.Box;

/**
 * A size of the traced piece as measured with calipers.
 *
 * @param size in
 */
public record Caliper(Across across, double size) {
    /** What the jaws lay on, on the piece with its back upright. */
    public enum Across {
        /** From back to face. */
        WIDTH,
        /** From bottom to top. */
        HEIGHT,
        /** The lesser of the two. */
        THICKNESS;

        double of(Box box) {
            return switch (this) {
                case WIDTH -> box.width();
                case HEIGHT -> box.height();
                case THICKNESS -> Math.min(box.width(), box.height());
            };
        }
    }
}
