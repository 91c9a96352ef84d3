package buildup.engine.buy;

import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.nail.Strength;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Job;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Segment;
import java.util.List;
import java.util.Optional;

/**
 * What filler goes into: the holes over set heads that are not covered, pi/4 D^2 by the depth at which they are set, and the
 * seams of returns along the outline that shows.
 *
 * @param holes how many
 * @param seams their length, in
 * @param volume of both, cubic inches
 */
record FilledHoles(int holes, double seams, double volume) {
    /** Width and depth of the seam of a return, in: common practice, no source. */
    private static final double SEAM_WIDTH = 1.0 / 32;

    private static final double SEAM_DEPTH = 1.0 / 16;

    /** What is used is so many times what stays: it shrinks, and is sanded off. Common practice, no source. */
    private static final double USED = 3;

    /** @param blocks nails in blocks that are seen, and how many */
    static FilledHoles of(Section section, Job job, List<RowCount> rows, Optional<Fastener.Cut> use, int blocks) {
        int holes = use.isPresent() ? blocks : 0;
        double volume = holes * use.map(cut -> hole(cut.fastener())).orElse(0.0);
        for (RowCount row : rows) {
            holes += row.shown();
            volume += row.shown() * hole(row.fixed().fastening().use().fastener());
        }
        double seams = seams(section, job);
        return new FilledHoles(holes, seams, volume + seams * SEAM_WIDTH * SEAM_DEPTH);
    }

    private static double hole(Fastener fastener) {
        double head = fastener.head().toInches();
        return Math.PI / 4 * head * head * Strength.SET;
    }

    /** What has to be bought of it, cubic inches. */
    double used() {
        return USED * volume;
    }

    private static double seams(Section section, Job job) {
        return job.fits().stream()
                .filter(Fit::selfReturn)
                .mapToDouble(fit -> section.members().stream()
                        .filter(member -> member.body() == fit.course().body())
                        .flatMap(member -> member.segments().stream())
                        .mapToDouble(Segment::length)
                        .sum())
                .sum();
    }
}
