package buildup.engine.room.plan;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Mark;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * How a run ends.
 *
 * @param corner of a run that dies: the angle between its wall and the one that it dies on, through the room, degrees
 * @param lean of the wall that it dies on: how far it comes forward over the run for every inch of height
 * @param casing how far the casing that it butts stands out from the wall, in
 * @param room how much free wall goes on past a return, in
 * @param block how far a block on which it ends covers the stretch, in
 * @param pieces names of those that end so; empty: all for which nothing else is said
 */
public record Ending(
        Kind kind,
        double corner,
        double lean,
        OptionalDouble casing,
        OptionalDouble room,
        OptionalDouble block,
        List<String> pieces,
        Mark mark) {
    public Ending {
        pieces = List.copyOf(pieces);
    }

    private static final Phrase RETURNED = Phrase.of("returned to the wall");
    private static final Phrase DIES = Phrase.of("dies on a wall at {corner}");
    private static final Phrase DIES_UNDER = Phrase.of("dies on a wall at {corner}, leaning {lean} over the run");
    private static final Phrase DIES_BEHIND = Phrase.of("dies on a wall at {corner}, leaning {lean} away from it");
    private static final Phrase BUTTS = Phrase.of("butts a casing");
    private static final Phrase ON_A_BLOCK = Phrase.of("ends on a block");
    private static final Phrase SQUARE = Phrase.of("cut square");

    /** An end of a kind about which nothing more is said. */
    static Ending plain(Kind kind, Mark mark) {
        return new Ending(
                kind, 90, 0, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), List.of(), mark);
    }

    /** The same for some pieces alone. */
    Ending of(List<String> some) {
        return new Ending(kind, corner, lean, casing, room, block, some, mark);
    }

    /** What the run does here. */
    public Phrase words() {
        return switch (kind) {
            case RETURN -> RETURNED;
            case DIE -> dies().with("corner", Figure.angle(corner));
            case BUTT -> BUTTS;
            case BLOCK -> ON_A_BLOCK;
            case SQUARE -> SQUARE;
        };
    }

    private Phrase dies() {
        double degrees = Math.toDegrees(Math.atan(Math.abs(lean)));
        return degrees < WallCorner.SQUARE_WITHIN
                ? DIES
                : (lean > 0 ? DIES_UNDER : DIES_BEHIND).with("lean", Figure.angle(Math.max(0.1, degrees)));
    }

    /** The ways in which a run ends. */
    public enum Kind {
        /** Turned back to its own wall, square: the plan's length is that of the wall behind, and the courses pass it. */
        RETURN,
        /** Runs up against another wall. */
        DIE,
        /** Runs up against a casing. */
        BUTT,
        /** Runs up against a block that stands on the stretch: a plinth block, a rosette. */
        BLOCK,
        /** Stops, its end showing. */
        SQUARE;

        /** The word of the plan. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
