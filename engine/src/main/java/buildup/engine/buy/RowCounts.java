package buildup.engine.buy;

import buildup.engine.hold.framing.Landing;
import buildup.engine.hold.framing.RowPlaces;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Hiding;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Job;
import buildup.engine.room.splice.Splice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Counts the fasteners of each row along the plan. Where it is known what stands behind the wall, a row is counted as it is
 * set out on it; else as {@link RowPlaces} sets it out where the wall takes a nail anywhere. Returns to the wall are glued,
 * not nailed. A length that is joined from several has a nail on either side of each joint.
 */
final class RowCounts {
    /** A nail so near to the middle of a joint, in, is one of its own: common practice, no source. */
    private static final double AT_JOINT = 1.5;

    private final Job job;
    private final List<Landing> landings;
    private final List<Splice.Joint> joints;

    private RowCounts(Job job, List<Landing> landings, List<Splice.Joint> joints) {
        this.job = job;
        this.landings = landings;
        this.joints = joints;
    }

    /**
     * One count for each row whose piece runs anywhere.
     *
     * @param joints of pieces longer than any stick
     */
    static List<RowCount> of(Job job, List<Fixed> fixed, List<Landing> landings, List<Splice.Joint> joints) {
        RowCounts counts = new RowCounts(job, landings, joints);
        return fixed.stream().map(counts::along).toList();
    }

    private RowCount along(Fixed row) {
        List<Integer> counts = new ArrayList<>();
        int sticks = 0;
        for (Fit fit : job.fits()) {
            if (fit.course().body() == row.piece() && !fit.selfReturn()) {
                List<Double> between = joints(fit);
                sticks += 1 + between.size();
                counts.add(on(fit, row, between) * row.fastening().per());
            }
        }
        int count = counts.stream().mapToInt(Integer::intValue).sum();
        Hiding.Grade grade = row.hiding().grade();
        boolean covered = grade == Hiding.Grade.COVERED || grade == Hiding.Grade.BEHIND;
        return new RowCount(row, sticks, count, covered ? 0 : count);
    }

    /** Where the parts of a length meet, in along its stretch. */
    private List<Double> joints(Fit fit) {
        return joints.stream()
                .filter(joint -> joint.piece().body() == fit.course().body()
                        && joint.piece().stretch().equals(job.stretchName(fit)))
                .map(Splice.Joint::middle)
                .toList();
    }

    /** Those of the row as it is set out, but for those at a joint, where either side has its own. */
    private int on(Fit fit, Fixed row, List<Double> between) {
        Optional<Landing> landing = landings.stream()
                .filter(one -> one.fixed().equals(row)
                        && one.run().equals(job.runName(fit))
                        && one.stretch().equals(fit.stretch()))
                .findFirst();
        List<Double> places = landing.map(Landing::places)
                .orElseGet(() -> RowPlaces.of(fit, row).anywhere());
        long clear = places.stream()
                .filter(place -> between.stream().noneMatch(joint -> Math.abs(place - joint) <= AT_JOINT))
                .count();
        return (int) clear + 2 * between.size();
    }
}
