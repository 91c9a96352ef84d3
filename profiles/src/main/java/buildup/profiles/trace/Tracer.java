package buildup.profiles.trace;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.OutlineCodes;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns a tracing into an outline of true lines and arcs. */
public final class Tracer {
    /** More points than these are averaged in runs, which takes as much off their scatter as off their number. */
    private static final int MOST_POINTS = 16_000;

    /** Longer steps than this share of the ring are divided, so that a line drawn by its ends counts as a line. */
    private static final double LONGEST_STEP = 1.0 / 200;

    /** Crossings that cut off less than this many times the square of the scatter are scatter. */
    private static final double SCATTERED = 100;

    /** The stated deviation in standard deviations. */
    private static final double DEVIATION = 3;

    /** A point farther off than so many standard deviations was not followed. */
    private static final double NOT_FOLLOWED = 6;

    private static final List<Double> OTHER_PRICES = List.of(0.85, 1.2, 1.5);

    private Tracer() {}

    /**
     * The outline of a tracing, or nothing when one of the notices is a refusal.
     *
     * @param trails in any order and direction, together one outline; a few hundred points or more make a good one
     * @param notices told what was mended, doubted and refused
     */
    public static Optional<Traced> trace(List<Trail> trails, Wish wish, Notices notices) {
        Optional<Box> raw = trails.stream()
                .flatMap(trail -> trail.points().stream())
                .map(p -> Box.of(p, p))
                .reduce(Box::with);
        double unit = raw.map(box -> Scaling.first(box, wish)).orElse(1.0);
        List<Trail> scaled = trails.stream()
                .map(trail -> new Trail(
                        trail.points().stream()
                                .map(p -> placed(p, unit, wish.flip()))
                                .toList(),
                        trail.closed()))
                .toList();
        return Joining.ring(scaled, notices)
                .map(ring -> Cleaning.of(ring, notices))
                .filter(ring -> encloses(ring, notices))
                .filter(ring -> Scaling.plausible(Loops.box(ring), wish, notices))
                .flatMap(ring -> fitted(ring, wish, notices));
    }

    private static Point placed(Point p, double unit, boolean flip) {
        Point inches = p.times(unit);
        return flip ? Motion.ENDS.apply(inches) : inches;
    }

    private static boolean encloses(List<Dot> ring, Notices notices) {
        double size = Loops.size(ring);
        if (ring.size() > 2 && size > 0 && Loops.area(ring) > 1e-4 * size * size) {
            return true;
        }
        notices.add(TraceNotices.NO_AREA.notice());
        return false;
    }

    private static Optional<Traced> fitted(List<Dot> ring, Wish wish, Notices notices) {
        List<Dot> few = averaged(ring);
        List<Point> steps = divided(few);
        double noise = Math.max(Noise.of(steps), wish.deviation() / DEVIATION);
        Optional<Overlaps.Crossing> crossing = Overlaps.first(few, SCATTERED * noise * noise);
        if (crossing.isPresent()) {
            crossed(crossing.get(), notices);
            return Optional.empty();
        }
        Fitting fitting = fitting(steps, noise);
        Fitting turned = fitting.moved(Squaring.turn(fitting));
        if (Squaring.mirrored(turned)) {
            notices.add(TraceNotices.MIRRORED.notice());
        }
        Fitting squared = restored(Squaring.squared(turned), wish);
        Optional<Box> box = box(squared);
        if (box.isEmpty()) {
            return unclear(notices);
        }
        double enlarged = Scaling.second(box.get(), wish.calipers());
        Fitting home = home(squared.scaled(enlarged));
        box(home).ifPresent(sized -> Scaling.check(sized, enlarged, wish, notices));
        // twice: sizes count from the back and the bottom, which the first round may move
        Fitting shop = home(ShopSizes.of(home, wish.deviation()));
        return Finishing.of(shop)
                .or(() -> Finishing.of(home))
                .map(traced -> told(traced, notices))
                .or(() -> unclear(notices));
    }

    /** The first that holds together; a cutting that does not is tried again a little coarser or finer. */
    private static Fitting fitting(List<Point> steps, double noise) {
        Fitting first = fittingBy(steps, noise);
        return first.sound()
                ? first
                : OTHER_PRICES.stream()
                        .map(factor -> fittingBy(steps, noise * factor))
                        .filter(Fitting::sound)
                        .findFirst()
                        .orElse(first);
    }

    private static Fitting fittingBy(List<Point> steps, double noise) {
        return Improving.of(Fitting.of(Splitting.of(steps, noise), noise).smoothed())
                .reassigned();
    }

    private static Fitting restored(Fitting squared, Wish wish) {
        Fitting sharp = wish.arris() > 0 ? Restoring.arrises(squared, wish.arris()) : squared;
        return wish.paint() > 0
                ? box(sharp)
                        .map(box -> Restoring.stripped(sharp, wish.paint(), box.back()))
                        .orElse(sharp)
                : sharp;
    }

    private static Optional<Box> box(Fitting fitting) {
        return Corners.segments(fitting.curves(), fitting.kinds(), fitting.starts())
                .map(segments -> Box.around(segments.stream().map(Segment::box).toList()))
                .filter(box -> Double.isFinite(box.width()) && Double.isFinite(box.height()));
    }

    /** Back at x = 0, lowest point at y = 0: by the line there that has most points, where there is one. */
    private static Fitting home(Fitting fitting) {
        return box(fitting)
                .map(box -> fitting.moved(Motion.shift(
                        -level(fitting, box.back(), new Point(-1, 0)),
                        -level(fitting, box.bottom(), new Point(0, -1)))))
                .orElse(fitting);
    }

    private static double level(Fitting fitting, double edge, Point outward) {
        double level = edge;
        int most = 0;
        for (int i = 0; i < fitting.curves().size(); i++) {
            boolean there = fitting.curves().get(i) instanceof Curve.Straight line
                    && line.normal().near(outward, Tolerance.SNAP)
                    && Math.abs(-line.offset() - edge) < 4 * fitting.noise();
            if (there && fitting.points().get(i).size() > most) {
                most = fitting.points().get(i).size();
                level = -((Curve.Straight) fitting.curves().get(i)).offset();
            }
        }
        return level;
    }

    private static void crossed(Overlaps.Crossing crossing, Notices notices) {
        int first = crossing.first().number();
        int second = crossing.second().number();
        notices.add(TraceNotices.CROSSES_ITSELF
                .with("place", OutlineCodes.place(crossing.at()))
                .with("first", Figure.count(Math.min(first, second)))
                .with("second", Figure.count(Math.max(first, second))));
    }

    private static Optional<Traced> unclear(Notices notices) {
        notices.add(TraceNotices.UNCLEAR.notice());
        return Optional.empty();
    }

    private static Traced told(Traced traced, Notices notices) {
        if (traced.largest() > NOT_FOLLOWED * traced.noise()) {
            notices.add(TraceNotices.DEVIATES
                    .with("place", OutlineCodes.place(traced.farthest()))
                    .amount(Figure.fine(traced.largest())));
        }
        return traced;
    }

    private static List<Dot> averaged(List<Dot> ring) {
        int run = (ring.size() + MOST_POINTS - 1) / MOST_POINTS;
        if (run == 1) {
            return ring;
        }
        List<Dot> few = new ArrayList<>();
        for (int from = 0; from < ring.size(); from += run) {
            List<Dot> some = ring.subList(from, Math.min(from + run, ring.size()));
            Point sum = some.stream().map(Dot::at).reduce(Point.ORIGIN, Point::plus);
            few.add(new Dot(sum.times(1.0 / some.size()), some.get(0).number()));
        }
        return few;
    }

    private static List<Point> divided(List<Dot> ring) {
        double longest = Loops.length(ring) * LONGEST_STEP;
        List<Point> steps = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point from = ring.get(i).at();
            Point to = ring.get((i + 1) % ring.size()).at();
            int parts = Math.max(1, (int) Math.ceil(from.distance(to) / longest));
            for (int k = 0; k < parts; k++) {
                steps.add(from.towards(to, (double) k / parts));
            }
        }
        return steps;
    }
}
