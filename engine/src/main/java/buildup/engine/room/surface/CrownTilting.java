package buildup.engine.room.surface;

import buildup.engine.room.plan.Stretch;
import buildup.engine.room.plan.WallCorner;
import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.Course;
import buildup.engine.room.run.Job;
import buildup.engine.room.run.Saw;
import buildup.engine.room.surface.SlopedCrown.Tilt;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tilts a sprung molding to a ceiling that slopes as it comes out from the wall, by an angle F, rising. Wall and ceiling
 * then meet at 90 + F, and the molding is made for 90: tilted by d toward the ceiling, its spring is S - d, the flat on
 * the wall stands open by its length times sin d, that on the ceiling by its length times sin(F - d). Where both walls of
 * a corner have the same ceiling over them, the cut stays in the upright plane that halves the corner, and the compound
 * miter is that of the spring S - d.
 */
final class CrownTilting {
    private static final double STRAIGHT = 180;

    private final Section section;
    private final Job job;
    private final double slope;

    private CrownTilting(Section section, Job job) {
        this.section = section;
        this.job = job;
        this.slope = Math.toDegrees(Math.atan(section.stack().space().slope()));
    }

    /** Nothing under a level ceiling, or where nothing is sprung. */
    static List<SlopedCrown> of(Section section, Job job) {
        CrownTilting tilting = new CrownTilting(section, job);
        boolean slopes = Math.abs(tilting.slope) > Tolerance.SAME_DIRECTION
                && section.stack().space().ceiling().isPresent();
        List<SlopedCrown> all = new ArrayList<>();
        if (slopes) {
            job.courses().stream()
                    .filter(course -> course.trim() && course.sprung() && course.spring() > 0)
                    .forEach(course -> all.addAll(tilting.tilted(course)));
        }
        return all;
    }

    private List<SlopedCrown> tilted(Course course) {
        List<SlopedCrown> all = new ArrayList<>();
        List<WallCorner> corners = corners(course);
        for (Tilt tilt : Tilt.values()) {
            if (corners.isEmpty()) {
                all.add(tilted(course, true, 0, tilt));
            }
            corners.forEach(corner -> all.add(tilted(course, corner.inside(), corner.angle(), tilt)));
        }
        return all;
    }

    /** Each kind of corner that the molding goes round, once. */
    private List<WallCorner> corners(Course course) {
        return job.plan().runs().stream()
                .filter(run -> !run.opening())
                .map(WallRun::stretches)
                .flatMap(List::stream)
                .filter(stretch -> stretch.carries(course.name()))
                .map(Stretch::corner)
                .flatMap(Optional::stream)
                .distinct()
                .toList();
    }

    private SlopedCrown tilted(Course course, boolean inside, double corner, Tilt tilt) {
        double by = slope * tilt.share();
        Outline outline = section.body(course.body()).outline();
        Box box = outline.moved(Motion.turn(by)).box();
        double spring = course.spring() - by;
        // a straight run is cut square
        double plane = corner > 0 ? (inside ? 360 - corner : corner) : STRAIGHT;
        return new SlopedCrown(
                course,
                tilt,
                spring,
                box.height(),
                box.width(),
                flat(outline, "wall-flat") * Math.sin(Math.toRadians(Math.abs(by))),
                flat(outline, "ceiling-flat") * Math.sin(Math.toRadians(Math.abs(slope - by)))
                        + (tilt == Tilt.NONE ? under(outline) : 0),
                inside,
                corner,
                Saw.flat(plane, spring));
    }

    /** How far it stands under the ceiling as drawn, square to that, in. */
    private double under(Outline outline) {
        double left = section.stack().space().left(outline).orElse(0);
        return Math.max(0, left) * Math.cos(Math.toRadians(slope));
    }

    /** How long one of its flats is, in; 0 where it has none. */
    private static double flat(Outline outline, String name) {
        return outline.straights(name).stream()
                .mapToDouble(line -> line.length())
                .max()
                .orElse(0);
    }
}
