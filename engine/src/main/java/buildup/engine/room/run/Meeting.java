package buildup.engine.room.run;

import buildup.engine.room.plan.WallCorner;
import buildup.engine.room.run.Saw.Hand;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Phrase;
import java.util.Optional;

/**
 * What a course meets at one end of a stretch, as one upright plane: at projection x the course goes on past the end of
 * the wall by {@code fixed + x / tan(plane/2)}.
 *
 * @param corner the corner that it is cut for, degrees, as the plan gives it
 * @param plane twice the angle between the cut and the run, degrees, 0 to 360: the corner itself where two courses meet
 *     outside, 360 less the corner inside, 180 for a square cut
 * @param meant the same if a corner that is near to square were square
 * @param fixed in, of it {@code lean} because a wall is out of plumb
 * @param against what it meets
 */
record Meeting(EndCut.Kind kind, double corner, double plane, double meant, double fixed, double lean, Stop against) {
    private static final double SQUARE = 180;

    private static final Phrase CUT_SQUARE = Phrase.of("square");
    private static final Phrase THEN_COPE = Phrase.of("{how}; then cope along the line of the face");
    private static final Phrase THEN_GLUE = Phrase.of("{how}; glue");
    private static final Phrase AGAINST = Phrase.of("{how}, against {against}");
    private static final Phrase CLEAR = Phrase.of("{how}, clear of {against}");

    /** Two courses at a corner. */
    static Meeting miter(EndCut.Kind kind, WallCorner corner, double lean) {
        return new Meeting(kind, corner.angle(), plane(corner), plane(corner.meant()), lean, lean, Stop.NOTHING);
    }

    private static double plane(WallCorner corner) {
        return corner.inside() ? 360 - corner.angle() : corner.angle();
    }

    /** A course that runs on to a wall at an angle to its own, and stops {@code short} of it, square to that wall. */
    static Meeting wall(WallCorner corner, double clear, double lean, Stop against) {
        double sin = Math.sin(Math.toRadians(corner.angle()));
        return new Meeting(
                EndCut.Kind.BUTT,
                corner.angle(),
                360 - 2 * corner.angle(),
                360 - 2 * corner.meant().angle(),
                lean - clear / sin,
                lean,
                against);
    }

    static Meeting square(EndCut.Kind kind, double fixed, Stop against) {
        return new Meeting(kind, 90, SQUARE, SQUARE, fixed, 0, against);
    }

    /** The same plane so much nearer to the middle of the stretch, in. */
    Meeting inset(double by) {
        return new Meeting(kind, corner, plane, meant, fixed - by, lean, against);
    }

    /** How far the course goes on for every inch of projection. */
    double slope() {
        return slope(plane);
    }

    private static double slope(double plane) {
        double half = Math.toRadians(plane / 2);
        return Math.abs(plane - SQUARE) < Tolerance.COINCIDENT ? 0 : Math.cos(half) / Math.sin(half);
    }

    double past(double projection) {
        return fixed + projection * slope();
    }

    /** How far its face is seen: where a coped or butted corner hides a part of it, to the line of the faces. */
    double seenPast(double projection) {
        return against.hidden() ? lean + projection * slope(360 - corner) : past(projection);
    }

    /** What of it is there because the corner is out of square. */
    double pastSquare(double projection) {
        return projection * (slope() - slope(meant));
    }

    boolean isSquare() {
        return Math.abs(plane - SQUARE) < WallCorner.SQUARE_WITHIN;
    }

    /** The cut for it on a course. */
    EndCut cut(Course course, Hand hand) {
        Saw.Flat flat = isSquare() ? new Saw.Flat(0, 0) : Saw.flat(plane, course.spring());
        Optional<Saw.Setting> setting = setting(course, hand);
        Phrase how = setting.map(Saw.Setting::words).orElse(CUT_SQUARE);
        Phrase words = switch (kind) {
            case COPE -> THEN_COPE.with("how", how);
            case RETURN -> THEN_GLUE.with("how", how);
            case BUTT -> (against.clear() ? CLEAR : AGAINST).with("how", how).with("against", against.words());
            case SQUARE, MITER -> how;
        };
        return new EndCut(kind, corner, Math.abs(flat.miter()), Math.abs(flat.bevel()), setting, words);
    }

    /** Whether the stick is to be fitted to a wall that may not be true. */
    boolean meetsWall() {
        return kind == EndCut.Kind.BUTT && against.wall();
    }

    /** The position in which the cut is easiest: a sprung stick flat, the rest held as they stand; none when square. */
    Optional<Saw.Setting> setting(Course course, Hand hand) {
        if (isSquare()) {
            return Optional.empty();
        }
        if (course.turned()) {
            // seen from the outer edge with the face up, left and right change places
            Hand other = hand == Hand.LEFT ? Hand.RIGHT : Hand.LEFT;
            Saw.Setting setting = Saw.flat(plane, course.spring(), other);
            return Optional.of(course.sprung() ? setting : setting.inner());
        }
        return Optional.of(
                course.sprung() ? Saw.flat(plane, course.spring(), hand) : Saw.nested(plane, course.spring(), hand));
    }
}
