package buildup.engine.room.splice;

import buildup.engine.room.plan.Framing;
import buildup.engine.room.plan.FramingRow;
import buildup.engine.room.plan.Stretch;
import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Frame;
import buildup.engine.room.run.Job;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Contact;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.List;
import java.util.Optional;

/**
 * What stands behind a piece that is spliced, and from where it is looked at.
 *
 * @param from where the piece's left long point lies along its stretch, in
 * @param anywhere whether it lies all along on masonry or on a nailer, so that a joint has something behind it anywhere
 * @param studs middles of those behind it, in along the stretch; empty: none is known
 * @param frame of the stretch
 * @param eye where one comes in, in plan; absent: not known
 */
public record SpliceWall(double from, boolean anywhere, List<Double> studs, Frame frame, Optional<Point> eye) {
    public SpliceWall {
        studs = List.copyOf(studs);
    }

    /** The wall behind a stick, by the plan that it runs along. */
    public static SpliceWall of(Job job, Fit fit) {
        WallRun run = job.plan().runs().get(fit.run());
        List<Frame> frames = job.frames().get(fit.run());
        int number = frames.indexOf(fit.frame());
        if (number < 0 || run.opening()) {
            return new SpliceWall(fit.from(), nailer(job, fit), List.of(), fit.frame(), Optional.empty());
        }
        Stretch stretch = run.stretches().get(number);
        Optional<Framing.Studs> studs = stretch.framing().studs();
        boolean masonry = studs.isPresent() && studs.get().row().isEmpty();
        Optional<FramingRow> row = studs.flatMap(Framing.Studs::row);
        return new SpliceWall(
                fit.from(),
                masonry || nailer(job, fit),
                row.map(known -> known.upTo(stretch.length())).orElse(List.of()),
                fit.frame(),
                run.entry().map(entry -> frames.get(entry.stretch()).at(entry.along(), 0)));
    }

    /** Whether a nailer or framing lies against its back, or under it, all along. */
    private static boolean nailer(Job job, Fit fit) {
        int own = fit.course().body();
        return job.section().contacts().stream()
                .filter(contact -> contact.of(own) && contact.length() > Tolerance.TOUCHING)
                .filter(contact ->
                        contact.facing().filter(Contact.Facing.BACKS::equals).isPresent())
                .map(contact -> job.section().body(contact.other(own)))
                .anyMatch(SpliceWall::solid);
    }

    private static boolean solid(Body body) {
        return body.nailer() || body.framing();
    }

    /** Whether something lies behind a joint there, as far as is known: where no studs are given none is missed. */
    public boolean holds(double along) {
        return anywhere || studs.isEmpty() || studAt(along).isPresent();
    }

    /** The stud behind a place along the stretch, if there is one. */
    public Optional<Double> studAt(double along) {
        return studs.stream().filter(stud -> Math.abs(stud - along) <= NEAR).findFirst();
    }

    /** A joint so far from the middle of a stud, in, still lies on it: places go by the marks of a tape. */
    private static final double NEAR = 1.0 / 16;

    /**
     * How large an inch of the wall looks from where one comes in: across the line of sight, over the square of the
     * distance. A joint far away, or looked at along the wall, is seen least.
     */
    public double seen(double along) {
        return eye.map(at -> {
                    Point sight = frame.at(along, 0).minus(at);
                    double aside = Math.abs(sight.cross(frame.along()));
                    // along the wall that one comes in by nothing is seen but the last digits of its direction
                    return aside < Tolerance.TOUCHING ? 0 : aside / Math.max(1, sight.dot(sight));
                })
                .orElse(0.0);
    }

    /** How far a place is from where one comes in, in; 0 when that is not known. */
    public double away(double along) {
        return eye.map(at -> frame.at(along, 0).minus(at).length()).orElse(0.0);
    }

    /**
     * Whether the stick to the left of a joint lies over the one to the right: then one who looks from the left does not
     * look into the joint. The usual way where nothing is known.
     */
    public boolean leftLiesOver(double along) {
        return eye.map(at -> frame.at(along, 0).minus(at).dot(frame.along()) >= 0)
                .orElse(true);
    }
}
