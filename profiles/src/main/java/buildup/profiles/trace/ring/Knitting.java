package buildup.profiles.trace.ring;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Knits the open runs of a drawing together where they end in one place. Programs draw an outline line by line and arc by
 * arc; dimension lines and leaders stand beside it and hang on nothing, so what has a loose end is left out.
 */
final class Knitting {
    /** More loose runs than this are a hatch or a text, not an outline. */
    private static final int MOST = 4000;

    private final double near;

    private Knitting(double near) {
        this.near = near;
    }

    /**
     * What came of the open runs.
     *
     * @param rings closed ones, knitted of one or more
     * @param loose those that are part of none
     */
    record Knitted(List<Run> rings, List<Run> loose) {}

    static Knitted of(List<Run> open, double size) {
        if (open.size() > MOST) {
            return new Knitted(List.of(), open);
        }
        Knitting knitting = new Knitting(Tolerance.DRAWN_TWICE * size);
        List<Run> rings = new ArrayList<>();
        List<Run> rest = new ArrayList<>();
        for (Run run : open) {
            boolean whole = run.dots().size() > 3 && run.first().near(run.last(), knitting.near);
            (whole ? rings : rest).add(whole ? run.closing() : run);
        }
        Set<Run> held = new LinkedHashSet<>(rest);
        while (held.removeIf(run -> knitting.hangsLoose(run, held))) {
            // what was held by a loose one may hang loose now
        }
        List<Run> loose = new ArrayList<>(rest);
        List<Run> left = new ArrayList<>(held);
        while (!left.isEmpty()) {
            List<Run> used = new ArrayList<>();
            Optional<Run> ring = knitting.ring(left, used);
            ring.ifPresent(rings::add);
            if (ring.isPresent()) {
                loose.removeAll(used);
            }
            left.removeAll(used);
        }
        return new Knitted(rings, loose);
    }

    private boolean hangsLoose(Run run, Set<Run> all) {
        return meeting(run.first(), run, all).isEmpty()
                || meeting(run.last(), run, all).isEmpty();
    }

    private List<Run> meeting(Point end, Run run, Iterable<Run> all) {
        List<Run> meeting = new ArrayList<>();
        for (Run other : all) {
            if (!other.equals(run)
                    && (other.first().near(end, near) || other.last().near(end, near))) {
                meeting.add(other);
            }
        }
        return meeting;
    }

    /** From the first run on until the ring closes; where several go on, the straightest. */
    private Optional<Run> ring(List<Run> left, List<Run> used) {
        Run ring = left.get(0);
        used.add(ring);
        while (!ring.first().near(ring.last(), near)) {
            Point end = ring.last();
            Point way = heading(ring);
            Optional<Run> next = left.stream()
                    .filter(run -> !used.contains(run))
                    .filter(run -> run.first().near(end, near) || run.last().near(end, near))
                    .map(run -> run.first().near(end, near) ? run : run.turned())
                    .max(Comparator.comparingDouble(
                            run -> run.dots().get(1).at().minus(end).unit().dot(way)));
            if (next.isEmpty()) {
                return Optional.empty();
            }
            Run one = next.get();
            used.add(left.stream()
                    .filter(run -> run.equals(one) || run.turned().equals(one))
                    .findFirst()
                    .orElse(one));
            ring = ring.then(one.goingOn());
        }
        return Optional.of(ring.closing());
    }

    private static Point heading(Run run) {
        return run.last().minus(run.dots().get(run.dots().size() - 2).at()).unit();
    }
}
