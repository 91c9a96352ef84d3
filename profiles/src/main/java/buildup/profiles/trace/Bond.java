package buildup.profiles.trace;

import buildup.profiles.outline.Point;

/** What fitted curves must keep to, exactly; curves are called by their numbers in the ring. */
sealed interface Bond permits Bond.Tangent, Bond.Angle, Bond.Offset, Bond.Radius, Bond.Through {
    /**
     * Two neighbours touch where the walk passes from one to the other.
     *
     * @param back whether the walk turns right back there, as between two beads, and does not go on without a corner
     */
    record Tangent(int first, int second, boolean back) implements Bond {}

    /** The normal of a line has this angle, radians. */
    record Angle(int line, double angle) implements Bond {}

    record Offset(int line, double offset) implements Bond {}

    record Radius(int round, double radius) implements Bond {}

    record Through(int curve, Point point) implements Bond {}
}
