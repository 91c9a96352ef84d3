package buildup.profiles.trace.ring;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/** Evens out the points of a ring: very many become fewer, long steps become several. */
public final class Stepping {
    /** More points than these are averaged in runs, which takes as much off their scatter as off their number. */
    private static final int MOST_POINTS = 16_000;

    /** Longer steps than this share of the ring are divided, so that a line drawn by its ends counts as a line. */
    private static final double LONGEST_STEP = 1.0 / 200;

    /** A line between two corners is divided into so many steps at least. */
    private static final int ON_LINE = 6;

    /** Chords of a curve turn less from one to the next, radians. */
    private static final double CORNER = Math.toRadians(20);

    /** A point of a line lies no farther than this from the line between its ends: two last digits of a drawing, in. */
    private static final double STRAIGHT = 2 * Tolerance.DRAWN_SCATTER;

    /** Even steps differ by no more than this, but for rounding. */
    private static final double EVEN = 1.05;

    /** Fewer points than this are corners of a drawing, however even its lines are. */
    private static final int FEWEST_FOLLOWED = 40;

    /** This share of the steps is nearly even where points were put down along the wood. */
    private static final double MOST_FOLLOWED = 0.6;

    /** So much may such steps differ, since each member takes a whole number of them. */
    private static final double NEARLY_EVEN = 1.15;

    /** Steps so many times the even one leave points out. */
    private static final double LEFT_OUT = 1.5;

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
        return divided(ring, i -> 1);
    }

    /**
     * The points with more on long steps, and on every step between two corners: of a drawing by its ends the short lines
     * count as lines too.
     */
    public static List<Point> dividedAtCorners(List<Dot> ring) {
        return divided(ring, i -> isCorner(ring, i) && isCorner(ring, i + 1) && !isCutOff(ring, i) ? ON_LINE : 1);
    }

    /** Whether a step cuts off a corner between two points of lines that were followed at even steps. */
    private static boolean isCutOff(List<Dot> ring, int i) {
        double most = Math.min(length(ring, i - 1), length(ring, i + 1)) * EVEN;
        return !isCorner(ring, i - 1) && !isCorner(ring, i + 2) && length(ring, i) <= most;
    }

    static double length(List<Dot> ring, int i) {
        return at(ring, i).distance(at(ring, i + 1));
    }

    private static Point at(List<Dot> ring, int i) {
        return ring.get(Math.floorMod(i, ring.size())).at();
    }

    private static List<Point> divided(List<Dot> ring, IntUnaryOperator least) {
        double longest = longest(ring);
        List<Point> steps = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point from = ring.get(i).at();
            Point to = ring.get((i + 1) % ring.size()).at();
            int many = Math.max(least.applyAsInt(i), (int) Math.ceil(from.distance(to) / longest));
            int parts = ring.get(i).open() ? 1 : many;
            for (int k = 0; k < parts; k++) {
                steps.add(from.towards(to, (double) k / parts));
            }
        }
        return steps;
    }

    private static boolean isCorner(List<Dot> ring, int i) {
        return turn(ring, i) > CORNER;
    }

    /** Whether the points of so many steps from one on lie in one line, but for rounding. */
    static boolean inLine(List<Dot> ring, int from, int way, int steps) {
        Point first = at(ring, from);
        Point last = at(ring, from + way * steps);
        return IntStream.range(1, steps)
                .mapToObj(k -> at(ring, from + way * k))
                .allMatch(p -> RingSizes.foot(p, first, last).distance(p) < STRAIGHT);
    }

    /** Whether the line turns at both ends of a step, and by a corner in all. */
    static boolean turns(List<Dot> ring, int step) {
        return !inLine(ring, step - 1, 1, 2)
                && !inLine(ring, step, 1, 2)
                && turn(ring, step) + turn(ring, step + 1) > CORNER;
    }

    private static double turn(List<Dot> ring, int i) {
        Point in = at(ring, i).minus(at(ring, i - 1));
        Point out = at(ring, i + 1).minus(at(ring, i));
        return Math.abs(Math.atan2(in.cross(out), in.dot(out)));
    }

    /**
     * The longest step that is left in a ring where something was drawn. Between points that were put down at even steps
     * nothing is known to be straight: there a step stays whole, however long it is, or an arc would become its chords.
     */
    public static double longest(List<Dot> ring) {
        return Math.max(RingSizes.length(ring) * LONGEST_STEP, LEFT_OUT * followed(ring));
    }

    /** The middle one of all steps; 0 of the few corners of a drawing, whose lines are no steps. */
    static double usual(List<Dot> ring) {
        return ring.size() < FEWEST_FOLLOWED
                ? 0
                : IntStream.range(0, ring.size())
                        .mapToDouble(i -> length(ring, i))
                        .sorted()
                        .skip(ring.size() / 2)
                        .findFirst()
                        .orElse(0);
    }

    /** The step at which points follow the wood; 0 where they do not, as the corners of a drawing. */
    private static double followed(List<Dot> ring) {
        double[] steps = IntStream.range(0, ring.size())
                .mapToDouble(i -> length(ring, i))
                .sorted()
                .toArray();
        if (steps.length < FEWEST_FOLLOWED) {
            return 0;
        }
        double usual = steps[steps.length / 2];
        long even = Arrays.stream(steps)
                .filter(step -> step < NEARLY_EVEN * usual && step > usual / NEARLY_EVEN)
                .count();
        return even > MOST_FOLLOWED * steps.length ? usual : 0;
    }
}
