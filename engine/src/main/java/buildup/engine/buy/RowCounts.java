package buildup.engine.buy;

import buildup.engine.hold.framing.Landing;
import buildup.engine.hold.framing.RowPlaces;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Hiding;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Counts the fasteners of each row along the plan. Where it is known what stands behind the wall, a row is counted as it is
 * set out on it; else as {@link RowPlaces} sets it out where the wall takes a nail anywhere. Returns to the wall are glued,
 * not nailed.
 */
final class RowCounts {
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
        return landing.map(Landing::places)
                .orElseGet(() -> RowPlaces.of(fit, row).anywhere())
                .size();
    }
}
