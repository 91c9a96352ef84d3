package buildup.profiles.trace.fit;

import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Cuts a ring of points into the fewest stretches that are straight or of one circle.
 *
 * <p>Fewest in this sense: the sum of (distance / noise)^2 plus a price for every stretch is the least that any cutting
 * comes to, so that a further stretch must earn its price by what it brings the points nearer. The least is found by
 * going through all last stretches, those that can never be part of it left out (R. Killick, P. Fearnhead, I. A. Eckley,
 * "Optimal detection of changepoints with a linear computational cost", J. Amer. Statist. Assoc. 107 (2012) 1590-1598,
 * theorem 3.1). The prices are those of G. Schwarz, "Estimating the dimension of a model", Ann. Statist. 6 (1978)
 * 461-464, of a place and two or three sizes, raised by half, for there are as many places to be misled by as points.
 */
final class Splitting {
    /** Places at which a stretch may end at first; the ends are then found among all points between two of them. */
    private static final int MOST_KNOTS = 1024;

    /** So many are enough to tell how many stretches there are. */
    private static final int ROUGH_KNOTS = 320;

    /** Price of a straight stretch and of a round one, in units of the logarithm of the number of points. */
    private static final double LINE_PRICE = 4.5;

    private static final double ARC_PRICE = 6.5;

    /** Fewer points say nothing of a circle. */
    private static final int LEAST_ON_ARC = 5;

    private static final int LEAST_ON_LINE = 2;

    /** Rounds of moving the ends; they commonly stand still after two. */
    private static final int MOST_ROUNDS = 4;

    private final List<Point> ring;
    private final Moments moments;
    private final double variance;
    private final int knots;
    private final double linePrice;
    private final double arcPrice;

    private Splitting(List<Point> ring, Moments moments, double noise, int mostKnots) {
        this.ring = ring;
        this.moments = moments;
        this.variance = noise * noise;
        this.knots = Math.min(ring.size(), mostKnots);
        double unit = Math.log(ring.size());
        this.linePrice = LINE_PRICE * unit;
        this.arcPrice = ARC_PRICE * unit;
    }

    /** Points {@code from} to {@code to} of a run, the last not among them. */
    record Stretch(int from, int to, boolean curved) {
        int count() {
            return to - from;
        }
    }

    /**
     * The points from the beginning of a stretch on, and the stretches; the last one ends where the first begins.
     *
     * @param ring the points, turned so that the first stretch begins with the first
     */
    record Cut(List<Point> ring, List<Stretch> stretches) {}

    /** The stretches of a ring; {@code noise} is the standard deviation of the points from the true curve, in. */
    static Cut of(List<Point> ring, double noise) {
        // any first cut will do: the second starts at the sharpest corner that the first one found
        List<Point> begun = fromFarthest(ring);
        Splitting rough = new Splitting(begun, Moments.of(begun), noise, ROUGH_KNOTS);
        List<Stretch> found = rough.refined(rough.cut());
        List<Point> again = turned(begun, rough.sharpest(found));
        Splitting fine = new Splitting(again, Moments.of(again), noise, MOST_KNOTS);
        return new Cut(again, fine.refined(fine.cut()));
    }

    /** The same in a hurry, from the first point on: for weighing many noises against each other. */
    static List<Stretch> roughly(List<Point> ring, Moments moments, double noise) {
        Splitting rough = new Splitting(ring, moments, noise, ROUGH_KNOTS);
        return rough.refined(rough.cut());
    }

    /** The ring from the point on that lies farthest from its middle, which is mostly a corner. */
    static List<Point> fromFarthest(List<Point> ring) {
        return turned(ring, farthest(ring));
    }

    private static int farthest(List<Point> ring) {
        Point middle = Moments.of(ring).mean(0, ring.size());
        int far = 0;
        for (int i = 1; i < ring.size(); i++) {
            if (ring.get(i).distance(middle) > ring.get(far).distance(middle)) {
                far = i;
            }
        }
        return far;
    }

    private static List<Point> turned(List<Point> ring, int start) {
        List<Point> turned = new ArrayList<>(ring);
        Collections.rotate(turned, -start);
        return List.copyOf(turned);
    }

    private List<Stretch> cut() {
        int[] place = new int[knots + 1];
        for (int k = 0; k <= knots; k++) {
            place[k] = (int) ((long) k * ring.size() / knots);
        }
        double[] least = new double[knots + 1];
        int[] last = new int[knots + 1];
        boolean[] curved = new boolean[knots + 1];
        int[] open = new int[knots + 1];
        double[] bare = new double[knots + 1];
        int count = 0;
        for (int k = 1; k <= knots; k++) {
            open[count++] = k - 1;
            least[k] = Double.POSITIVE_INFINITY;
            for (int c = 0; c < count; c++) {
                int from = place[open[c]];
                double before = least[open[c]];
                double line = line(from, place[k]);
                double arc = line + linePrice <= arcPrice ? Double.POSITIVE_INFINITY : arc(from, place[k]);
                // too few points for an arc so far may be the beginning of one
                bare[c] = before + (place[k] - from < LEAST_ON_ARC ? 0 : Math.min(line, arc));
                if (before + line + linePrice < least[k]) {
                    take(k, open[c], false, before + line + linePrice, least, last, curved);
                }
                if (before + arc + arcPrice < least[k]) {
                    take(k, open[c], true, before + arc + arcPrice, least, last, curved);
                }
            }
            count = pruned(open, bare, count, least[k]);
        }
        List<Stretch> stretches = new ArrayList<>();
        for (int k = knots; k > 0; k = last[k]) {
            stretches.add(new Stretch(place[last[k]], place[k], curved[k]));
        }
        Collections.reverse(stretches);
        return stretches;
    }

    private static void take(
            int k, int from, boolean round, double cost, double[] least, int[] last, boolean[] curved) {
        least[k] = cost;
        last[k] = from;
        curved[k] = round;
    }

    /** Drops the beginnings that already cost more, without their price, than the best cutting up to here. */
    private static int pruned(int[] open, double[] bare, int count, double least) {
        int kept = 0;
        for (int c = 0; c < count; c++) {
            if (!(bare[c] > least)) {
                open[kept++] = open[c];
            }
        }
        return kept;
    }

    private double line(int from, int to) {
        return moments.lineError(from, to) / variance;
    }

    private double arc(int from, int to) {
        return to - from < LEAST_ON_ARC ? Double.POSITIVE_INFINITY : moments.circleError(from, to) / variance;
    }

    private double error(Stretch stretch, int from, int to) {
        int least = stretch.curved() ? LEAST_ON_ARC : LEAST_ON_LINE;
        if (to - from < least) {
            return Double.POSITIVE_INFINITY;
        }
        return stretch.curved() ? arc(from, to) : line(from, to);
    }

    /** Moves the ends between neighbors to the best of all points, those between the knots too. */
    private List<Stretch> refined(List<Stretch> cut) {
        List<Stretch> stretches = new ArrayList<>(cut);
        int reach = 2 * (ring.size() / knots) + 2;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            boolean moved = false;
            for (int i = 0; i + 1 < stretches.size(); i++) {
                Stretch a = stretches.get(i);
                Stretch b = stretches.get(i + 1);
                int best = best(a, b, reach);
                if (best != a.to()) {
                    stretches.set(i, new Stretch(a.from(), best, a.curved()));
                    stretches.set(i + 1, new Stretch(best, b.to(), b.curved()));
                    moved = true;
                }
            }
            if (!moved) {
                break;
            }
        }
        return List.copyOf(stretches);
    }

    private int best(Stretch a, Stretch b, int reach) {
        int best = a.to();
        double least = error(a, a.from(), best) + error(b, best, b.to());
        for (int at = Math.max(a.from() + 1, a.to() - reach); at < Math.min(b.to(), a.to() + reach); at++) {
            double cost = error(a, a.from(), at) + error(b, at, b.to());
            if (cost < least) {
                least = cost;
                best = at;
            }
        }
        return best;
    }

    /** Where the sharpest corner between two stretches is; the beginning when there is no other. */
    private int sharpest(List<Stretch> stretches) {
        double[] turns = new double[stretches.size()];
        for (int i = 1; i < stretches.size(); i++) {
            turns[i] = Math.abs(turn(stretches.get(i - 1), stretches.get(i)));
        }
        int sharpest = 0;
        for (int i = 1; i < turns.length; i++) {
            // of equals the longer pair, whose ends are known best
            if (turns[i] > turns[sharpest]) {
                sharpest = i;
            }
        }
        return Arrays.stream(turns).max().orElse(0) > 0
                ? stretches.get(sharpest).from()
                : 0;
    }

    private double turn(Stretch a, Stretch b) {
        Point out = heading(a, 1);
        Point in = heading(b, 0);
        return Math.atan2(out.cross(in), out.dot(in));
    }

    /** Direction of the walk at the beginning (0) or end (1) of a stretch. */
    private Point heading(Stretch stretch, int end) {
        int half = stretch.from() + stretch.count() / 2;
        Point along = half > stretch.from()
                ? moments.mean(half, stretch.to()).minus(moments.mean(stretch.from(), half))
                : new Point(1, 0);
        if (!stretch.curved()) {
            return along.unit();
        }
        Moments.Circle circle = moments.circle(stretch.from(), stretch.to());
        Point spoke = ring.get(end == 0 ? stretch.from() : stretch.to() - 1).minus(circle.center());
        Point middle = moments.mean(stretch.from(), stretch.to()).minus(circle.center());
        // the walk turns left round a center on its left
        boolean left = middle.cross(along) > 0;
        return (left ? spoke.left() : spoke.right()).unit();
    }
}
