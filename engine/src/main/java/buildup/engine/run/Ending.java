package buildup.engine.run;

import buildup.shared.notice.Mark;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * How a run ends.
 *
 * @param corner of a run that dies: the angle between its wall and the one that it dies on, through the room, degrees
 * @param lean of the wall that it dies on: how far it comes forward over the run for every inch of height
 * @param casing how far the casing that it butts stands out from the wall, in
 * @param room how much free wall goes on past a return, in
 */
public record Ending(Kind kind, double corner, double lean, OptionalDouble casing, OptionalDouble room, Mark mark) {
    /** What the run does here. */
    public String words() {
        return switch (kind) {
            case RETURN -> "returned to the wall";
            case DIE -> "dies on a wall at " + Wording.degrees(corner) + leaning();
            case BUTT -> "butts a casing";
            case SQUARE -> "cut square";
        };
    }

    private String leaning() {
        double degrees = Math.toDegrees(Math.atan(Math.abs(lean)));
        return degrees < Corner.SQUARE_WITHIN
                ? ""
                : ", leaning " + Wording.degrees(Math.max(0.1, degrees))
                        + (lean > 0 ? " over the run" : " away from it");
    }

    /** The ways in which a run ends. */
    public enum Kind {
        /** Turned back to its own wall, square: the plan's length is that of the wall behind, and the courses pass it. */
        RETURN,
        /** Runs up against another wall. */
        DIE,
        /** Runs up against a casing. */
        BUTT,
        /** Stops, its end showing. */
        SQUARE;

        /** The word of the plan. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
