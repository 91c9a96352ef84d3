package buildup.profiles.trace.ring;

import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;

/** Evens out the points of a ring: very many become fewer, long steps become several. */
public final class Stepping {
    /** More points than these are averaged in runs, which takes as much off their scatter as off their number. */
    private static final int MOST_POINTS = 16_000;

    /** Longer steps than this share of the ring are divided, so that a line drawn by its ends counts as a line. */
    private static final double LONGEST_STEP = 1.0 / 200;

    private Stepping() {}

    /** Runs of points averaged where there are very many; each mean keeps the first number of its run. */
    public static List<Dot> averaged(List<Dot> ring) {
        int run = (ring.size() + MOST_POINTS - 1) / MOST_POINTS;
        if (run == 1) {
            return ring;
        }
        List<Dot> few = new ArrayList<>();
        for (int from = 0; from < ring.size(); from += run) {
            List<Dot> some = ring.subList(from, Math.min(from + run, ring.size()));
            Point sum = some.stream().map(Dot::at).reduce(Point.ORIGIN, Point::plus);
            boolean open = some.stream().anyMatch(Dot::open);
            few.add(new Dot(sum.times(1.0 / some.size()), some.get(0).number(), open));
        }
        return few;
    }

    /** The points, with more on long steps; none where nothing was drawn. */
    public static List<Point> divided(List<Dot> ring) {
        double longest = longest(ring);
        List<Point> steps = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point from = ring.get(i).at();
            Point to = ring.get((i + 1) % ring.size()).at();
            int parts = ring.get(i).open() ? 1 : Math.max(1, (int) Math.ceil(from.distance(to) / longest));
            for (int k = 0; k < parts; k++) {
                steps.add(from.towards(to, (double) k / parts));
            }
        }
        return steps;
    }

    /** The longest step that is left in a ring where something was drawn. */
    public static double longest(List<Dot> ring) {
        return RingSizes.length(ring) * LONGEST_STEP;
    }
}
