package buildup.catalog;

import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.trace.ring.Trail;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Traces a true outline as hands, scanners and pens do, each tracing from a seed of its own. */
final class Hand {
    /** Dots of a scanner to the inch. */
    static final double DOTS = 300;

    /** Width of the pen, in. */
    static final double PEN = 0.02;

    /** A scanned sheet lies no more askew than this, degrees. */
    private static final double ASKEW = 2;

    /** Points on a tracing, from a hasty one to a digitizer's. */
    private static final int FEWEST = 500;

    private static final int MOST = 2000;

    private final Outline outline;
    private final Random random;

    private Hand(Outline outline, long seed) {
        this.outline = outline;
        this.random = new Random(seed * 7919 + 17);
    }

    /** How a tracing comes to stray from the true outline. */
    enum Fault {
        /** A hand that shakes: what is off here is off a little farther on too. */
        JITTER,
        /** A scanner's dots. */
        STAIRCASE,
        /** A line as wide as the pen, followed anywhere within its width. */
        PEN,
        /** A stretch of the outline that was lost. */
        MISSING,
        /** The whole way round twice. */
        DOUBLED
    }

    /**
     * A tracing and what is known of it.
     *
     * @param noise standard deviation of one coordinate of a point, in
     * @param alike so many points in a row are off as one
     * @param motion from the true outline to where the tracing lies
     */
    record Tracing(Trail trail, double noise, double alike, Motion motion) {}

    static Tracing trace(Outline outline, Fault fault, double noise, long seed) {
        return new Hand(outline, seed).traced(fault, noise);
    }

    private Tracing traced(Fault fault, double noise) {
        int count = FEWEST + random.nextInt(MOST - FEWEST);
        Motion motion = Motion.turn(ASKEW * (2 * random.nextDouble() - 1))
                .then(Motion.shift(5 * random.nextDouble(), 5 * random.nextDouble()));
        double start = random.nextDouble();
        boolean back = random.nextBoolean();
        List<Point> ring = moved(sampled(count, start), motion);
        return switch (fault) {
            case JITTER -> {
                double alike = 1 << random.nextInt(5);
                yield new Tracing(new Trail(way(shaken(ring, noise, alike), back), true), noise, alike, motion);
            }
            case STAIRCASE -> {
                double dot = 1 / DOTS;
                List<Point> dots = new ArrayList<>();
                for (Point p : ring) {
                    Point snapped = new Point(Math.rint(p.x() / dot) * dot, Math.rint(p.y() / dot) * dot);
                    if (dots.isEmpty() || !dots.get(dots.size() - 1).near(snapped, dot / 2)) {
                        dots.add(snapped);
                    }
                }
                yield new Tracing(new Trail(way(dots, back), true), dot / Math.sqrt(12), 12, motion);
            }
            case PEN -> {
                double alike = 1 << random.nextInt(5);
                List<Point> within = new ArrayList<>();
                List<Point> normal = shaken(Collections.nCopies(ring.size(), Point.ORIGIN), 1, alike);
                for (int i = 0; i < ring.size(); i++) {
                    // a normal number through its own distribution is spread evenly
                    Point off = new Point(
                            even(normal.get(i).x()), even(normal.get(i).y()));
                    within.add(ring.get(i).plus(off.times(PEN)));
                }
                yield new Tracing(new Trail(way(within, back), true), PEN / Math.sqrt(12), alike, motion);
            }
            case MISSING -> {
                double alike = 1 << random.nextInt(3);
                int gone = (int) (count * (0.01 + 0.09 * random.nextDouble()));
                List<Point> left = shaken(ring, noise, alike).subList(0, count - gone);
                yield new Tracing(new Trail(way(left, back), false), noise, alike, motion);
            }
            case DOUBLED -> {
                double alike = 1 << random.nextInt(3);
                List<Point> twice = new ArrayList<>(ring);
                twice.addAll(ring);
                yield new Tracing(new Trail(way(shaken(twice, noise, alike), back), true), noise, alike, motion);
            }
        };
    }

    private static List<Point> way(List<Point> points, boolean back) {
        List<Point> way = new ArrayList<>(points);
        if (back) {
            Collections.reverse(way);
        }
        return way;
    }

    private static List<Point> moved(List<Point> points, Motion motion) {
        return points.stream().map(motion::apply).toList();
    }

    /** Evenly along the outline, beginning at a share of its length. */
    private List<Point> sampled(int count, double start) {
        List<Point> points = new ArrayList<>();
        double step = outline.perimeter() / count;
        double at = random.nextDouble() * step;
        for (Stroke stroke : outline.strokes()) {
            double length = stroke.segment().length();
            for (; at < length; at += step) {
                points.add(stroke.segment().at(at / length));
            }
            at -= length;
        }
        Collections.rotate(points, (int) (start * points.size()));
        return points;
    }

    /** Each point moved, about so many in a row as one: every other tracing by a rough hand, the others by a smooth one. */
    private List<Point> shaken(List<Point> ring, double noise, double alike) {
        return random.nextBoolean() ? rough(ring, noise, alike) : smooth(ring, noise, alike);
    }

    /** A moving mean under a bell of so many points' width: its spectrum ends, as that of a hand with some mass does. */
    private List<Point> smooth(List<Point> ring, double noise, double alike) {
        // the sum of the bell over the root of the sum of its squares is the root of the width
        double spread = Math.max(alike / (2 * Math.sqrt(Math.PI)), 1e-3);
        int reach = (int) Math.ceil(4 * spread);
        double[] bell = new double[2 * reach + 1];
        double squares = 0;
        for (int k = -reach; k <= reach; k++) {
            bell[k + reach] = Math.exp(-k * k / (2 * spread * spread));
            squares += bell[k + reach] * bell[k + reach];
        }
        double[] x = new double[ring.size() + 2 * reach];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = random.nextGaussian() * noise / Math.sqrt(squares);
            y[i] = random.nextGaussian() * noise / Math.sqrt(squares);
        }
        List<Point> shaken = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point off = Point.ORIGIN;
            for (int k = 0; k < bell.length; k++) {
                off = off.plus(new Point(x[i + k], y[i + k]).times(bell[k]));
            }
            shaken.add(ring.get(i).plus(off));
        }
        return shaken;
    }

    /** A first-order autoregressive walk. */
    private List<Point> rough(List<Point> ring, double noise, double alike) {
        double keep = (alike - 1) / (alike + 1);
        double fresh = noise * Math.sqrt(1 - keep * keep);
        Point off = new Point(noise * random.nextGaussian(), noise * random.nextGaussian());
        List<Point> shaken = new ArrayList<>();
        for (Point p : ring) {
            shaken.add(p.plus(off));
            off = off.times(keep).plus(new Point(fresh * random.nextGaussian(), fresh * random.nextGaussian()));
        }
        return shaken;
    }

    /** From -1/2 to 1/2, evenly, of a normal number: the normal distribution to 1e-4 by a logistic curve. */
    private static double even(double normal) {
        return 1 / (1 + Math.exp(-normal * (1.5976 + 0.070566 * normal * normal))) - 0.5;
    }
}
