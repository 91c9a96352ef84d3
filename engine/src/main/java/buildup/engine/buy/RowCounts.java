package buildup.engine.buy;

import buildup.engine.hold.framing.Landing;
import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Hiding;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Job;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Counts the fasteners of each row along the plan. Where it is known what stands behind the wall, a row is counted as it is
 * set out on it; a row that says where its first stands, from there on; any other with one near either end of each stick and
 * no two farther apart than its spacing, so that n = ceil((length - 2 ends) / spacing) + 1. Returns to the wall are glued,
 * not nailed.
 */
final class RowCounts {
    /** No fastener is nearer to the end of a stick, in: common practice, no source. */
    static final double FROM_END = 1;

    private final Job job;
    private final List<Landing> landings;

    private RowCounts(Job job, List<Landing> landings) {
        this.job = job;
        this.landings = landings;
    }

    /** One count for each row whose piece runs anywhere. */
    static List<RowCount> of(Job job, List<Fixed> fixed, List<Landing> landings) {
        RowCounts counts = new RowCounts(job, landings);
        return fixed.stream().map(counts::along).toList();
    }

    private RowCount along(Fixed row) {
        List<Integer> counts = new ArrayList<>();
        for (Fit fit : job.fits()) {
            if (fit.course().body() == row.piece() && !fit.selfReturn()) {
                counts.add(on(fit, row) * row.fastening().per());
            }
        }
        int count = counts.stream().mapToInt(Integer::intValue).sum();
        Hiding.Grade grade = row.hiding().grade();
        boolean covered = grade == Hiding.Grade.COVERED || grade == Hiding.Grade.BEHIND;
        return new RowCount(row, counts.size(), count, covered ? 0 : count);
    }

    private int on(Fit fit, Fixed row) {
        Optional<Landing> landing = landings.stream()
                .filter(one -> one.fixed().equals(row)
                        && one.run().equals(job.runName(fit))
                        && one.stretch().equals(fit.stretch()))
                .findFirst();
        if (landing.isPresent() && isOnFraming(landing.get())) {
            return landing.get().places().size();
        }
        Fastening fastening = row.fastening();
        Point head = row.drive().head();
        double across = fit.course().turned() ? head.y() : head.x();
        double length = fit.at(across);
        if (fastening.first() > 0) {
            return from(fit.start() - fit.past(across), length, fastening.first(), fastening.spacing());
        }
        double between = length - 2 * FROM_END;
        return between <= 0 ? 1 : (int) Math.ceil(between / fastening.spacing() - Tolerance.COINCIDENT) + 1;
    }

    /** Whether it is set out on studs or joists, and not in what takes it anywhere. */
    private static boolean isOnFraming(Landing landing) {
        boolean single = landing.into() == Landing.Into.STUDS || landing.into() == Landing.Into.JOISTS;
        return single && landing.best().first() > 0;
    }

    /** Those of a row, which begins somewhere along the stretch, that lie on a stick from its left end. */
    private static int from(double left, double length, double first, double spacing) {
        double least = (left + FROM_END - first) / spacing;
        double most = (left + length - FROM_END - first) / spacing;
        return (int) Math.max(0, Math.floor(most + Tolerance.COINCIDENT) - Math.ceil(least - Tolerance.COINCIDENT) + 1);
    }
}
