package buildup.engine.room.block;

import buildup.engine.room.block.LooseBlock.Kind;
import buildup.engine.room.plan.Ending;
import buildup.engine.room.plan.Stretch;
import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.Course;
import buildup.engine.room.run.Job;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The blocks of a plan with their sizes. A block stands proud of what ends on it ("thicker than the casing": F. E. Kidder,
 * Building Construction and Superintendence, section 169, which gives no figure); by how much is common practice, no
 * source.
 */
public final class LooseBlocks {
    /** A block stands so far proud of the thickest piece that ends on it, in: common practice, no source. */
    static final double PROUD = 0.125;

    private final Job job;
    private final List<LooseBlock> blocks = new ArrayList<>();

    private LooseBlocks(Job job) {
        this.job = job;
    }

    /** Plinth blocks, rosettes and corner blocks, run by run from left to right. */
    public static List<LooseBlock> of(Job job) {
        List<LooseBlock> all = new ArrayList<>();
        for (int run = 0; run < job.plan().runs().size(); run++) {
            all.addAll(of(job, run));
        }
        return List.copyOf(all);
    }

    /** The same for the run of that number. */
    public static List<LooseBlock> of(Job job, int run) {
        LooseBlocks own = new LooseBlocks(job);
        own.of(job.plan().runs().get(run), run);
        return List.copyOf(own.blocks);
    }

    /**
     * From where to where a block lies across what ends on it, counted as the run counts: out from a wall, away from an
     * opening.
     */
    public record Across(double from, double to) {}

    /** The same for a block on a stretch of a run; absent where no trim runs along it. */
    public static Optional<Across> across(Job job, int run, Stretch stretch) {
        return new LooseBlocks(job).extent(run, stretch).map(extent -> new Across(extent.back(), extent.face()));
    }

    /** What of the stack ends on a block: its extents in the section as it runs. */
    private record Extent(double back, double face, double bottom, double top, String wood, int courses, double area) {
        double across() {
            return face - back;
        }

        double high() {
            return top - bottom;
        }
    }

    private void of(WallRun run, int number) {
        int last = run.stretches().size() - 1;
        run.left().ifPresent(end -> end(run, number, 0, end, "left"));
        for (int i = 0; i <= last; i++) {
            corner(run, number, i);
        }
        run.right().ifPresent(end -> end(run, number, last, end, "right"));
    }

    private String where(WallRun run, Stretch stretch, String place) {
        String name = job.plan().runs().size() == 1 ? stretch.name() : run.name() + ": " + stretch.name();
        return name + ", " + place;
    }

    /** Whether a block covers so much that a saw can leave it. */
    private static boolean covers(OptionalDouble block) {
        return block.orElse(0) > Tolerance.SAW_CUT;
    }

    private void end(WallRun run, int number, int stretch, Ending end, String side) {
        if (end.kind() != Ending.Kind.BLOCK || !covers(end.block())) {
            return;
        }
        double covers = end.block().getAsDouble();
        Stretch own = run.stretches().get(stretch);
        extent(number, own).ifPresent(extent -> {
            String where = where(run, own, side + " end");
            blocks.add(
                    run.opening()
                            // the leg runs up: its block is as high as it covers, and as wide as the casing
                            ? new LooseBlock(
                                    Kind.PLINTH,
                                    where,
                                    1,
                                    covers,
                                    extent.across(),
                                    extent.top() + PROUD,
                                    extent.wood(),
                                    "grain upright",
                                    extent.courses(),
                                    extent.area())
                            : new LooseBlock(
                                    Kind.CORNER,
                                    where,
                                    1,
                                    extent.high(),
                                    covers,
                                    extent.face() + PROUD,
                                    extent.wood(),
                                    "grain upright",
                                    extent.courses(),
                                    extent.area()));
        });
    }

    private void corner(WallRun run, int number, int stretch) {
        Stretch own = run.stretches().get(stretch);
        // a rosette that covers nothing past the casing is still as wide as the casing
        if (own.block().isEmpty() || own.corner().isEmpty() || (!run.opening() && !covers(own.block()))) {
            return;
        }
        double covers = own.block().getAsDouble();
        boolean inside = own.corner().get().inside();
        extent(number, own).ifPresent(extent -> {
            String where = where(run, own, "right corner");
            if (run.opening()) {
                // as far past the casing's outer edge as past the opening's
                double side = extent.face() + 2 * covers;
                blocks.add(new LooseBlock(
                        Kind.ROSETTE,
                        where,
                        1,
                        side,
                        side,
                        extent.top() + PROUD,
                        extent.wood(),
                        "grain upright",
                        2 * extent.courses(),
                        2 * extent.area()));
            } else {
                double side = inside ? covers : covers + extent.face() + PROUD;
                String note = inside ? "grain upright" : "grain upright, cut out behind to go round the corner";
                blocks.add(new LooseBlock(
                        Kind.CORNER,
                        where,
                        1,
                        extent.high(),
                        side,
                        side,
                        extent.wood(),
                        note,
                        2 * extent.courses(),
                        2 * extent.area()));
            }
        });
    }

    /** Of all trim that runs along a stretch; nothing where none does. */
    private Optional<Extent> extent(int run, Stretch stretch) {
        List<Course> own = job.fits().stream()
                .filter(fit -> fit.run() == run
                        && fit.course().trim()
                        && stretch.carries(fit.course().name()))
                .map(fit -> fit.course())
                .distinct()
                .toList();
        return own.stream()
                .map(course -> new Extent(
                        Math.max(0, course.back()),
                        course.face(),
                        course.box().bottom(),
                        course.box().top(),
                        wood(course),
                        1,
                        job.section().body(course.body()).outline().area()))
                .reduce((a, b) -> new Extent(
                        Math.min(a.back, b.back),
                        Math.max(a.face, b.face),
                        Math.min(a.bottom, b.bottom),
                        Math.max(a.top, b.top),
                        a.wood,
                        a.courses + b.courses,
                        a.area + b.area));
    }

    private String wood(Course course) {
        return job.section()
                .body(course.body())
                .placed()
                .orElseThrow()
                .piece()
                .wood()
                .name();
    }
}
