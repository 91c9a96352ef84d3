package buildup.engine.hold.season;

import buildup.engine.hold.season.Effect.Place;
import buildup.engine.room.plan.Ending;
import buildup.engine.room.plan.Stretch;
import buildup.engine.room.plan.WallCorner;
import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.Course;
import buildup.engine.room.run.Job;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
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
            run.left()
                    .filter(Miters::returns)
                    .ifPresent(end -> corner(in + "left end", RETURN, season, moved, effects));
            for (int i = 0; i < run.stretches().size(); i++) {
                Stretch stretch = run.stretches().get(i);
                Optional<WallCorner> corner = run.copesAt(i) ? Optional.empty() : stretch.corner();
                corner.ifPresent(found -> corner(in + "right of " + stretch.name(), found, season, moved, effects));
            }
            run.right()
                    .filter(Miters::returns)
                    .ifPresent(end -> corner(in + "right end", RETURN, season, moved, effects));
        }
        return effects;
    }

    private static boolean returns(Ending ending) {
        return ending.kind() == Ending.Kind.RETURN;
    }

    private void corner(String where, WallCorner corner, int season, List<Moved> moved, List<Effect> effects) {
        for (Course course : job.courses()) {
            if (course.trim()) {
                Box built = course.box();
                Box now =
                        moved.get(course.body()).box(section.body(course.body()).outline());
                double growth = now.width() - built.width();
                // at an outside corner the long point is at the face, at an inside one at the wall
                boolean face = corner.inside() == growth < 0;
                effects.add(new Effect(
                        season,
                        Place.MITER,
                        "miter of " + course.name() + ", " + where + ", "
                                + (growth < 0 ? "inside (short point)" : "outside (long point)"),
                        course.body(),
                        course.body(),
                        opening(growth, 90 - corner.angle() / 2),
                        OptionalDouble.empty(),
                        face,
                        new Point(
                                face ? built.face() : built.back(),
                                built.middle().y())));
            }
        }
    }
}
