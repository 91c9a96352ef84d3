package buildup.engine.hold.season;

import buildup.engine.hold.season.Effect.Place;
import buildup.engine.room.plan.Ending;
import buildup.engine.room.plan.WallCorner;
import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.Course;
import buildup.engine.room.run.Job;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The mitered corners of a plan. Two sticks of width W that grow by e W across and not along leave a miter of m degrees
 * from square open by 2 W e sin m at one end: the inside (short point) when they shrink, the outside (long point) when
 * they swell. Exact for rigid sticks, by moving each corner of the two cuts; Notes on Building Construction, vol. 3, and
 * Old-House Journal, June 2018, say which end opens.
 */
final class Miters {
    /** The corner of a return to its own wall. */
    private static final WallCorner RETURN = new WallCorner(false, 90);

    private final Section section;
    private final Job job;

    Miters(Section section, Job job) {
        this.section = section;
        this.job = job;
    }

    /**
     * How far a miter opens.
     *
     * @param growth how much wider both sticks are, in; negative when they shrink
     * @param miter of the saw from square, degrees
     */
    static double opening(double growth, double miter) {
        return 2 * Math.abs(growth) * Math.sin(Math.toRadians(miter));
    }

    List<Effect> of(int season, List<Moved> moved) {
        List<Effect> effects = new ArrayList<>();
        for (WallRun run : job.plan().runs()) {
            String in = job.plan().runs().size() == 1 ? "" : run.name() + ": ";
            boolean opening = run.opening();
            run.left()
                    .filter(Miters::returns)
                    .ifPresent(end -> corner(in + "left end", RETURN, opening, season, moved, effects));
            for (int i = 0; i < run.stretches().size(); i++) {
                String where = in + "right of " + run.stretches().get(i).name();
                Optional<WallCorner> corner = run.copesAt(i)
                        ? Optional.empty()
                        : run.stretches().get(i).corner();
                corner.ifPresent(found -> corner(where, found, opening, season, moved, effects));
            }
            run.right()
                    .filter(Miters::returns)
                    .ifPresent(end -> corner(in + "right end", RETURN, opening, season, moved, effects));
        }
        return effects;
    }

    private static boolean returns(Ending ending) {
        return ending.kind() == Ending.Kind.RETURN;
    }

    /** @param opening whether it lies round an opening, so that the miter runs up the face of the piece, not out from the wall */
    private void corner(
            String where, WallCorner corner, boolean opening, int season, List<Moved> moved, List<Effect> effects) {
        for (Course course : job.courses()) {
            if (course.trim()) {
                int body = course.body();
                Box built = course.box();
                Box now = moved.get(body).box(section.body(body).outline());
                double growth = opening ? now.height() - built.height() : now.width() - built.width();
                // at an outside corner the long point is at the face, at an inside one at the wall
                boolean far = corner.inside() == growth < 0;
                Point end = opening
                        ? new Point(built.face(), far ? built.top() : built.bottom())
                        : new Point(
                                far ? built.face() : built.back(),
                                built.middle().y());
                double most = opening(growth, 90 - corner.angle() / 2);
                double inSight = most * inSight(body, end, opening ? built.height() : built.width(), opening);
                boolean seen = inSight > Tolerance.TOUCHING;
                effects.add(new Effect(
                        season,
                        Place.MITER,
                        "miter of " + course.name() + ", " + where + ", "
                                + (growth < 0 ? "inside (short point)" : "outside (long point)"),
                        body,
                        body,
                        seen ? inSight : most,
                        OptionalDouble.empty(),
                        seen,
                        end,
                        corner.inside() && !opening));
            }
        }
    }

    /**
     * The share of an opening that is left where its wedge first comes to the room side: 1 at the end that opens, 0 at the
     * other end.
     *
     * @param width of the stick between the two ends, in
     * @param up whether the wedge runs up the piece, not out
     */
    private double inSight(int body, Point end, double width, boolean up) {
        double least = section.members().stream()
                .filter(member -> member.body() == body)
                .map(Member::box)
                .mapToDouble(box -> up ? away(end.y(), box.bottom(), box.top()) : away(end.x(), box.back(), box.face()))
                .min()
                .orElse(width);
        return width > 0 ? Math.max(0, 1 - least / width) : 0;
    }

    private static double away(double end, double from, double to) {
        return Math.max(0, Math.max(from - end, end - to));
    }
}
