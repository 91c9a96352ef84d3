package buildup.engine.room.run;

import buildup.engine.room.plan.Ending;
import buildup.engine.room.plan.Opening;
import buildup.engine.room.plan.Stretch;
import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.Saw.Hand;
import buildup.profiles.outline.Tolerance;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Where a returned course turns back to the wall. It turns the corner of what it lies on: where that returns as well, the
 * layers keep their order round the corner; where that is cut square, the return runs back along its end; where that runs
 * on, the return stops on its face; where what shares its heights butts a casing, the
 * return stops on the casing (common practice, no source).
 */
final class ReturnCorners {
    private final WallRun run;
    private final List<Course> courses;

    ReturnCorners(WallRun run, List<Course> courses) {
        this.run = run;
        this.courses = courses;
    }

    /**
     * A corner between a course and its return.
     *
     * @param inset how much nearer to the middle of the stretch it turns than where all that is behind it returns, in
     * @param stop the projection at which the return ends: 0 at the wall
     * @param on what it ends on: the wall, a casing, or what runs on behind it
     */
    record ReturnCorner(double inset, double stop, Stop on) {
        /** The return's length at the face of the course, in; not positive where a casing covers its whole end. */
        double length(Course course) {
            return course.face() - stop;
        }

        /** Whether there is nothing to return: what stands there comes out as far as the course. */
        boolean covers(Course course) {
            return length(course) <= Tolerance.TOUCHING;
        }

        /** Too short to hold a miter: the return is glued on whole, across the square end. */
        boolean planted(Course course) {
            return length(course) < course.thickness() - Tolerance.TOUCHING;
        }
    }

    /** The corner at an end of the run. */
    ReturnCorner atEnd(Course course, Hand hand) {
        Stretch stretch =
                run.stretches().get(hand == Hand.LEFT ? 0 : run.stretches().size() - 1);
        ReturnCorner corner = corner(course, stretch, behind -> end(behind, hand));
        double casing = butting(course, hand)
                .mapToDouble(other -> end(other, hand).orElseThrow().casing().orElse(0))
                .max()
                .orElse(0);
        return casing > corner.stop() ? new ReturnCorner(corner.inset(), casing, Stop.CASING) : corner;
    }

    /** What butts a casing at an end of the run, at some of the heights of a course. */
    Stream<Course> butting(Course course, Hand hand) {
        Stretch stretch =
                run.stretches().get(hand == Hand.LEFT ? 0 : run.stretches().size() - 1);
        return courses.stream()
                .filter(other -> stretch.carries(other.name()) && sharesHeights(other, course))
                .filter(other -> end(other, hand)
                        .filter(end -> end.kind() == Ending.Kind.BUTT)
                        .isPresent());
    }

    /** The corner at a side of an opening: what it does not interrupt runs on. */
    ReturnCorner atOpening(Course course, Stretch stretch, Opening opening) {
        return corner(
                course,
                stretch,
                behind -> opening.interrupts(behind.name(), behind.asDrawn())
                        ? Optional.of(opening.ends())
                        : Optional.empty());
    }

    private Optional<Ending> end(Course course, Hand hand) {
        return hand == Hand.LEFT ? run.left(course.name()) : run.right(course.name());
    }

    private ReturnCorner corner(Course course, Stretch stretch, Function<Course, Optional<Ending>> ends) {
        double depth = 0;
        double past = Double.NEGATIVE_INFINITY;
        double stop = 0;
        Stop on = Stop.WALL;
        for (Course behind : courses) {
            if (!stretch.carries(behind.name()) || !liesBehind(behind, course)) {
                continue;
            }
            double face = Math.min(behind.face(), course.back());
            Optional<Ending> end = ends.apply(behind);
            if (end.isEmpty() && face > stop) {
                stop = face;
                on = Stop.face(behind.name());
            }
            depth = Math.max(depth, face);
            past = Math.max(
                    past, end.map(one -> past(behind, face, one, stretch, ends)).orElse(0.0));
        }
        // what lies on the wall itself has nothing behind it to turn round
        return new ReturnCorner(Double.isFinite(past) ? Math.max(0, depth - past) : 0, stop, on);
    }

    /** How far a course goes on past the end of the wall, counted up to a projection. */
    private double past(
            Course course, double face, Ending end, Stretch stretch, Function<Course, Optional<Ending>> ends) {
        return switch (end.kind()) {
            case RETURN -> course.trim() ? face - corner(course, stretch, ends).inset() : face;
            case BLOCK -> -end.block().orElse(0);
            case DIE, BUTT, SQUARE -> 0;
        };
    }

    /** Nearer to the wall, at some of the same heights. */
    private static boolean liesBehind(Course behind, Course course) {
        return behind.back() < course.back() - Tolerance.TOUCHING && sharesHeights(behind, course);
    }

    private static boolean sharesHeights(Course one, Course other) {
        double shared = Math.min(one.box().top(), other.box().top())
                - Math.max(one.box().bottom(), other.box().bottom());
        return shared > Tolerance.TOUCHING;
    }
}
