package buildup.engine.hold.tolerance;

import buildup.engine.section.stack.Axis;
import buildup.profiles.outline.Point;

/**
 * One axis of one piece, made ready to be placed very often.
 *
 * @param piece its number
 * @param how by which of its edges
 * @param rule where that edge goes; of a ripped piece the low one; of one that touches it means nothing
 * @param second where the high edge of a ripped piece goes; else the same as the first
 * @param member a place on the member that the rule places, from the home of the piece
 */
record PlaceNode(int piece, Axis axis, How how, PlaceRule rule, PlaceRule second, Point member) {
    /** By which edge a piece is placed. */
    enum How {
        /** Back or bottom. */
        LOW,
        /** Face or top. */
        HIGH,
        /** Both: it is ripped to fit. */
        RIPPED,
        /** A member of its own. */
        MEMBER,
        /** Back or bottom meets what comes first. */
        TOUCH_LOW,
        /** The top meets what comes first. */
        TOUCH_HIGH
    }

    boolean touches() {
        return how == How.TOUCH_LOW || how == How.TOUCH_HIGH;
    }
}
