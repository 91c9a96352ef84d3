package buildup.engine.room.run;

import buildup.engine.room.plan.Stretch;
import buildup.engine.room.plan.WallRun;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.List;
import java.util.Optional;

/**
 * Chooses which stick is coped at an inside corner. What opens beside a cope is a slit along the face of the stick that
 * runs through, and one sees into it when looking along that face; so the one whose face is looked at more squarely from
 * the entry runs through and the other is coped (common practice, no source; the geometry is that of the slit).
 */
public final class CopeSides {
    private CopeSides() {}

    /**
     * The stick that is coped at the right end of a stretch; none where the corner is mitered.
     *
     * @param frames of the stretches of the run
     */
    public static Optional<CopeSide> at(WallRun run, List<Frame> frames, int stretch) {
        if (!run.copesAt(stretch)) {
            return Optional.empty();
        }
        Stretch.Cope said = run.stretches().get(stretch).cope();
        return Optional.of(
                said == Stretch.Cope.UNSAID
                        ? seen(run, frames, stretch)
                        : new CopeSide(said == Stretch.Cope.LEFT, CopeSide.Why.GIVEN));
    }

    private static CopeSide seen(WallRun run, List<Frame> frames, int stretch) {
        if (run.entry().isEmpty()) {
            return new CopeSide(false, CopeSide.Why.USUAL);
        }
        WallRun.Entry entry = run.entry().get();
        Point eye = frames.get(entry.stretch()).at(entry.along(), 0);
        Point corner = frames.get(stretch).at(run.stretches().get(stretch).length(), 0);
        Point sight = corner.minus(eye);
        Point next = frames.get((stretch + 1) % frames.size()).along();
        double left = Math.abs(sight.cross(frames.get(stretch).along()));
        double right = Math.abs(sight.cross(next));
        // looked at alike, the usual order decides
        return Math.abs(left - right) <= Tolerance.SNAP
                ? new CopeSide(false, CopeSide.Why.USUAL)
                : new CopeSide(left < right, CopeSide.Why.ENTRY);
    }
}
