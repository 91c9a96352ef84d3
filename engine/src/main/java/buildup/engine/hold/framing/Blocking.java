package buildup.engine.hold.framing;

import buildup.engine.room.plan.Framing;
import buildup.engine.room.plan.FramingRow;
import buildup.engine.room.plan.Stretch;
import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.Course;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Job;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The blocks that sprung moldings want. With S the spring and the hollow's corner where the wall behind meets what lies
 * on top, the back cuts off legs v (up) and, under a level top, v tan S (out); a clearance c square to the back takes c / sin
 * S off the one and c / cos S off the other.
 */
final class Blocking {
    /** So much air is left between block and back, in, so that the molding decides where it lies: shop practice. */
    static final double CLEAR = 0.125;

    /** Blocks where no framing is known stand so far apart, in, as nails do. */
    private static final double USUAL_SPACING = 16;

    /** Each is so long along the run, in, room for two nails into framing and one through the molding: shop practice. */
    private static final double LONG = 3;

    /** A ceiling so near over the molding, in, still covers the block: a reveal is left open there. */
    private static final double NEAR = 0.5;

    /** A leg shorter than this, in, is no block. */
    private static final double LEAST = 0.375;

    private final Section section;

    private Blocking(Section section) {
        this.section = section;
    }

    /** None for a molding that has wood behind it already, or no corner there to set a block in. */
    static List<BackingBlock> of(Section section, Optional<Job> job) {
        Blocking blocking = new Blocking(section);
        List<BackingBlock> all = new ArrayList<>();
        job.ifPresent(known -> known.fits().stream()
                .filter(fit -> fit.course().trim() && fit.course().sprung() && !fit.selfReturn())
                .filter(fit -> known.frames().get(fit.run()).contains(fit.frame()))
                .filter(fit -> !known.plan().runs().get(fit.run()).opening())
                .forEach(fit -> blocking.block(known, fit).ifPresent(all::add)));
        return all;
    }

    private Optional<BackingBlock> block(Job job, Fit fit) {
        Course course = fit.course();
        Optional<Line> back = back(section.body(course.body()).outline());
        if (back.isEmpty()) {
            return Optional.empty();
        }
        Point foot = back.get().from();
        Point head = back.get().to();
        double s = Math.atan2(head.x() - foot.x(), head.y() - foot.y());
        // under a soffit the top is level, however the ceiling above it slopes
        Optional<Corner> corner = Stream.of(section.stack().space().slope(), 0.0)
                .map(rise -> corner(foot, head, s, rise))
                .filter(found -> isFree(found, course.body()))
                .findFirst();
        if (corner.isEmpty()) {
            return Optional.empty();
        }
        WallRun run = job.plan().runs().get(fit.run());
        Stretch stretch = run.stretches().get(job.frames().get(fit.run()).indexOf(fit.frame()));
        double spacing = spacing(stretch.framing());
        int count = (int) Math.floor(Math.max(0, fit.wall() - LONG) / spacing + Tolerance.COINCIDENT) + 1;
        // one more where the last of the row leaves the end of the stick in the air
        boolean ends = fit.wall() - LONG - (count - 1) * spacing > LONG;
        return Optional.of(new BackingBlock(
                run.name(),
                fit.stretch(),
                course.body(),
                corner.get().height(),
                corner.get().width(),
                Math.toDegrees(s),
                Math.toDegrees(Math.atan(corner.get().rise())),
                spacing,
                count + (ends ? 1 : 0),
                LONG,
                Math.min(corner.get().height(), corner.get().width())));
    }

    /**
     * The corner of the hollow, and the legs of the triangle in it.
     *
     * @param rise of what lies on top, in for each inch out from the wall
     */
    private record Corner(Point at, double height, double width, double rise) {
        Point under(double out, double below) {
            return at.plus(new Point(out, rise * out - below));
        }
    }

    /**
     * The back less the clearance, x = (y - foot - c / sin S) tan S, meets the top, y = corner + rise x, at x = h tan S / (1 -
     * rise tan S), with h the leg up.
     */
    private static Corner corner(Point foot, Point head, double s, double rise) {
        Point at = new Point(foot.x(), head.y() - rise * (head.x() - foot.x()));
        double height = at.y() - foot.y() - CLEAR / Math.sin(s);
        return new Corner(at, height, height * Math.tan(s) / (1 - rise * Math.tan(s)), rise);
    }

    /** Whether something is behind the corner and over it, and nothing in it. */
    private boolean isFree(Corner corner, int piece) {
        double half = corner.width() / 2;
        return corner.height() >= LEAST
                && corner.width() >= LEAST
                && stands(corner.under(-Tolerance.TOUCHING, corner.height() / 2), piece)
                && (stands(corner.under(half, -Tolerance.TOUCHING), piece) || stands(corner.under(half, -NEAR), piece))
                && !stands(corner.under(corner.width() / 3, corner.height() / 3), piece)
                && !stands(corner.under(2 * Tolerance.TOUCHING, 2 * Tolerance.TOUCHING), piece);
    }

    /** The long straight of the back, from its foot up. */
    private static Optional<Line> back(Outline outline) {
        return outline.straights("back").stream()
                .max(Comparator.comparingDouble(Line::length))
                .map(line -> line.from().y() < line.to().y() ? line : line.reversed())
                .filter(line -> line.to().x() > line.from().x() + Tolerance.TOUCHING);
    }

    /** Whether wood, wall or ceiling is at a place, the molding left out. */
    private boolean stands(Point at, int but) {
        for (int i = 0; i < section.bodies().size(); i++) {
            if (i != but && section.body(i).outline().holds(at)) {
                return true;
            }
        }
        return false;
    }

    private static double spacing(Framing framing) {
        Optional<FramingRow> row = framing.studs()
                .flatMap(Framing.Studs::row)
                .or(() -> framing.joists().filter(joists -> !joists.along()).map(Framing.Joists::row));
        return row.map(FramingRow::every).filter(every -> every > 0).orElse(USUAL_SPACING);
    }
}
