package buildup.engine.room.plan;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;

/**
 * A corner between two stretches of wall.
 *
 * @param inside whether it is a corner of the room; else of the case or the wall that stands out
 * @param angle degrees, between 0 and 180: through the room at an inside corner, through the wall or case at an outside
 *     one
 */
public record WallCorner(boolean inside, double angle) {
    /** What is as good as square, degrees. */
    public static final double SQUARE_WITHIN = 0.01;

    /** A corner this near to square was meant to be square, degrees. */
    static final double MEANT_SQUARE = 5;

    private static final Phrase INSIDE = Phrase.of("inside {corner}");
    private static final Phrase OUTSIDE = Phrase.of("outside {corner}");

    /** How far the run turns to the left, degrees; negative to the right. */
    public double turn() {
        return inside ? angle - 180 : 180 - angle;
    }

    /** How far a course goes on past the walls' own corner for every inch of projection; negative inside. */
    public double slope() {
        double slope = 1 / Math.tan(Math.toRadians(angle / 2));
        return inside ? -slope : slope;
    }

    /** Whether it was meant to be square and is not. */
    public boolean outOfSquare() {
        double off = Math.abs(angle - 90);
        return off > SQUARE_WITHIN && off <= MEANT_SQUARE;
    }

    /** The same corner as it was meant: square when it is near to it. */
    public WallCorner meant() {
        return outOfSquare() ? new WallCorner(inside, 90) : this;
    }

    /** As {@code outside 90°}. */
    public Phrase words() {
        return (inside ? INSIDE : OUTSIDE).with("corner", Figure.angle(angle));
    }
}
