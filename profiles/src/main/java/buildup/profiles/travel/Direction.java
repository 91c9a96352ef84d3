package buildup.profiles.travel;

import buildup.profiles.outline.Motion;

/** Which way an outline comes: down from above, up from below, or back from the room toward the wall. */
public enum Direction {
    DOWN(Motion.NONE, 1),
    UP(Motion.turn(180), -1),
    BACK(Motion.turn(90), 1);

    private final Motion turn;
    private final int sign;

    Direction(Motion turn, int sign) {
        this.turn = turn;
        this.sign = sign;
    }

    /** Turns the plane so that this way points down. */
    Motion turn() {
        return turn;
    }

    /** Whether a shift up in the turned plane is a shift along (1) or against (-1) the axis of this way. */
    int sign() {
        return sign;
    }
}
