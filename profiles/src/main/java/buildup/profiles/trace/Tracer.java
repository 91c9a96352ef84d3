package buildup.profiles.trace;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.OutlineCodes;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.trace.fit.Fitting;
import buildup.profiles.trace.fit.Noise;
import buildup.profiles.trace.fit.OneMember;
import buildup.profiles.trace.fit.Rereading;
import buildup.profiles.trace.fit.Weighing;
import buildup.profiles.trace.ring.Choosing;
import buildup.profiles.trace.ring.Cleaning;
import buildup.profiles.trace.ring.Dot;
import buildup.profiles.trace.ring.Joining;
import buildup.profiles.trace.ring.Overlaps;
import buildup.profiles.trace.ring.Pitch;
import buildup.profiles.trace.ring.RingSizes;
import buildup.profiles.trace.ring.Run;
import buildup.profiles.trace.ring.Stepping;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notices;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Turns a tracing into an outline of true lines and arcs. */
public final class Tracer {
    /** Crossings that cut off less than this many times the square of the scatter are scatter. */
    private static final double SCATTERED = 100;

    /** The stated deviation in standard deviations. */
    static final double DEVIATION = 3;

    /**
     * Rounding to dots strays by a uniform distribution, of standard deviation 1/sqrt(12), and alike as long as a line
     * stays on one row of them.
     */
    private static final double ROUNDED = 0.45;

    private static final double ALIKE_DOTS = 20;

    private Tracer() {}

    /**
     * The outline of a tracing, or nothing when one of the notices is a refusal.
     *
     * @param trails in any order and direction, together one outline; a few hundred points or more make a good one
     * @param notices told what was mended, doubted and refused
     */
    public static Optional<Traced> trace(List<Trail> trails, TracingOptions options, Notices notices) {
        if (!options.calipers().isEmpty()
                && options.unit().isEmpty()
                && options.calipers().stream().noneMatch(Caliper::isOverall)) {
            return byMember(trails, options, notices);
        }
        Optional<Box> raw = Scaling.box(trails);
        return traced(trails, raw.map(box -> Scaling.first(box, options)).orElse(1.0), options, notices);
    }

    /** When no size of the whole is known, it is traced as of a usual size first, and its members measured. */
    private static Optional<Traced> byMember(List<Trail> trails, TracingOptions options, Notices notices) {
        double unit = Scaling.box(trails).map(Scaling::usual).orElse(1.0);
        Optional<Traced> first = traced(trails, unit, options.measured(List.of()), new Notices());
        Optional<Double> enlarged =
                first.flatMap(found -> Scaling.byFirst(found.outline(), options.calipers(), notices));
        return notices.refused() ? Optional.empty() : traced(trails, unit * enlarged.orElse(1.0), options, notices);
    }

    private static Optional<Traced> traced(List<Trail> trails, double unit, TracingOptions options, Notices notices) {
        Motion pose = options.pose().flip()
                ? Motion.turn(options.pose().turn()).then(Motion.ENDS)
                : Motion.turn(options.pose().turn());
        List<Trail> scaled = trails.stream()
                .map(trail -> trail.through(trail.points().stream()
                        .map(p -> pose.apply(p.times(unit)))
                        .toList()))
                .toList();
        return Joining.ring(Choosing.of(Run.of(scaled), notices), notices)
                .map(ring -> new Joining.Ring(Cleaning.of(ring.dots(), notices), ring.again()))
                .filter(ring -> encloses(ring.dots(), notices))
                .filter(ring -> Scaling.plausible(RingSizes.box(ring.dots()), options, notices))
                .flatMap(ring -> fitted(ring, unit, options, notices));
    }

    private static boolean encloses(List<Dot> ring, Notices notices) {
        double size = RingSizes.size(ring);
        if (ring.size() > 2 && size > 0 && RingSizes.area(ring) > Tolerance.FLAT_TRACING * size * size) {
            return true;
        }
        notices.add(TraceNotices.NO_AREA.notice());
        return false;
    }

    private static Optional<Traced> fitted(Joining.Ring ring, double unit, TracingOptions options, Notices notices) {
        List<Dot> few = Stepping.averaged(ring.dots());
        Steps taken = Steps.of(few);
        List<Point> steps = taken.points();
        double stated = options.deviation().orElse(0.0) / DEVIATION;
        double pitch = Pitch.of(few);
        boolean scanned = pitch > 0 && Weighing.grain(steps) < pitch;
        Weighing.Weighed weighed = weighed(taken, scanned ? pitch : 0, stated);
        boolean drawn = weighed.cutFor() <= Tolerance.DRAWN_CUT;
        Noise noise = drawn ? weighed.noise() : weighed.noise().atLeast(Math.max(Tolerance.LEAST_SCATTER, stated));
        Optional<Overlaps.Crossing> crossing = Overlaps.first(few, SCATTERED * noise.weighed() * noise.weighed());
        if (crossing.isPresent()) {
            crossed(crossing.get(), notices);
            return Optional.empty();
        }
        Optional<Fitting> found = Fitting.of(steps, noise, weighed.cutFor());
        if (found.isEmpty()) {
            notices.add(TraceNotices.MANY_MEMBERS.with("most", Figure.count(Fitting.MOST_MEMBERS)));
            return Optional.empty();
        }
        Stream<Fitting> readings = readings(steps, found.get(), weighed.cutFor(), RingSizes.way(ring.dots()), options);
        Known known = new Known(unit, weighed.rival(), drawn, scanned && !drawn ? pitch : 0);
        return firstThatStands(readings.iterator(), ring, known, options, notices);
    }

    /**
     * The points of a ring.
     *
     * @param drawn whether they are those of a drawing; then there are enough on its short lines to tell them
     * @param byEnds whether some lines were drawn by their ends; else their ends lie between two points
     */
    private record Steps(List<Point> points, boolean drawn, boolean byEnds) {
        static Steps of(List<Dot> few) {
            List<Point> steps = Stepping.divided(few);
            boolean byEnds = steps.size() > few.size();
            if (!Weighing.isDrawn(steps, byEnds)) {
                return new Steps(steps, false, byEnds);
            }
            List<Point> more = Stepping.dividedAtCorners(few);
            return new Steps(Weighing.isDrawn(more, byEnds) ? more : steps, true, byEnds);
        }
    }

    /** Where the noise hides common members one reading is as good as another, and several are weighed. */
    private static Stream<Fitting> readings(
            List<Point> steps, Fitting first, double cutFor, double way, TracingOptions options) {
        return Doubts.hides(first.noise(), steps.size(), way / steps.size())
                ? Rereading.of(steps, first, cutFor, reading -> bound(reading, options))
                : Stream.concat(Stream.of(first).filter(Fitting::sound), Rereading.noisier(steps, first, cutFor));
    }

    /** A reading turned upright and bound as moldings mostly are. */
    private static Fitting bound(Fitting reading, TracingOptions options) {
        return Shaping.of(Squaring.squared(Siding.upright(reading, options, new Notices())));
    }

    /**
     * What is known of a tracing before it is read.
     *
     * @param unit inches in one unit of it
     * @param rival how much less likely another number of members is, as twice the logarithm of how many times
     * @param drawn whether its points are those of a drawing
     * @param dot of the scanner that its points were put on, in; 0 where they lie anywhere
     */
    private record Known(double unit, double rival, boolean drawn, double dot) {}

    /** The first reading that makes an outline, with its notices; those of the first of all when none does. */
    private static Optional<Traced> firstThatStands(
            Iterator<Fitting> readings, Joining.Ring ring, Known known, TracingOptions options, Notices notices) {
        Optional<Notices> first = Optional.empty();
        while (readings.hasNext()) {
            Fitting reading = readings.next();
            Notices own = new Notices();
            Optional<Traced> traced = finished(reading, ring, known, options, own);
            if (traced.isPresent()) {
                notices.addAll(own.sorted());
                return traced;
            }
            first = first.or(() -> Optional.of(own));
        }
        if (first.isEmpty()) {
            return unclear(notices);
        }
        notices.addAll(first.get().sorted());
        return Optional.empty();
    }

    /** The noise of a ring; dots of a scanner stray by what they are apart, and no hand comes into it. */
    private static Weighing.Weighed weighed(Steps taken, double pitch, double stated) {
        double least = Math.max(Tolerance.TRACED_CUT, stated);
        if (stated <= 0 && taken.drawn()) {
            return new Weighing.Weighed(
                    new Noise(taken.byEnds() ? Tolerance.DRAWN_SCATTER : Tolerance.LEAST_SCATTER, 1),
                    Tolerance.DRAWN_CUT,
                    Double.POSITIVE_INFINITY);
        }
        double dots = ROUNDED * pitch;
        return pitch > 0
                ? new Weighing.Weighed(
                        new Noise(pitch / Math.sqrt(12), ALIKE_DOTS), Math.max(least, dots), Double.POSITIVE_INFINITY)
                : Weighing.of(taken.points(), least);
    }

    private static Optional<Traced> finished(
            Fitting reading, Joining.Ring ring, Known known, TracingOptions options, Notices notices) {
        Fitting whole = known.drawn() ? reading : SecondRound.of(ring).joined(reading);
        Fitting upright = Siding.upright(whole, options, notices);
        if (notices.refused()) {
            return Optional.empty();
        }
        Fitting squared = restored(Shaping.of(Squaring.squared(upright)), options);
        Optional<Box> box = Placing.box(squared);
        if (box.isEmpty()) {
            return unclear(notices);
        }
        double enlarged = Scaling.second(box.get(), options);
        Fitting home = Placing.home(squared.scaled(enlarged));
        double drawn = options.deviation()
                .orElse(Math.max(Tolerance.TRACED, DEVIATION * upright.noise().weighed()));
        Rows rows = Rows.of(reading, known.dot());
        // twice: sizes count from the back and the bottom, which the first round may move
        ShopSizes.Ruled ruled = ShopSizes.of(home, drawn, rows, options.rules());
        Fitting shop = Placing.home(ruled.fitting());
        Optional<Traced> traced = Finishing.of(shop).or(() -> Finishing.of(home));
        if (traced.isEmpty()) {
            return unclear(notices);
        }
        Scaling.check(traced.get(), known.unit(), enlarged, options, notices);
        return notices.refused()
                ? Optional.empty()
                : Doubts.told(
                        traced.get(),
                        home,
                        ring,
                        otherwise(
                                reading,
                                whole.equals(reading) ? home : once(reading, enlarged, options),
                                known,
                                rows,
                                options),
                        options,
                        ruled.rule(),
                        notices);
    }

    /** How the first round alone may be read otherwise: it was read by itself, and the second only places its members. */
    private static Doubts.Otherwise otherwise(
            Fitting reading, Fitting once, Known known, Rows rows, TracingOptions options) {
        Fitting upright = Siding.upright(reading, options, new Notices());
        return new Doubts.Otherwise(known.rival(), OneMember.of(upright, Tolerance.TRACED_CUT), once, rows);
    }

    private static Fitting once(Fitting reading, double enlarged, TracingOptions options) {
        return Placing.home(restored(bound(reading, options), options).scaled(enlarged));
    }

    private static Fitting restored(Fitting squared, TracingOptions options) {
        double edge = options.restoring().edge();
        double paint = options.restoring().paint();
        Fitting sharp = edge > 0 ? Restoring.arrises(squared, edge) : squared;
        return paint > 0
                ? Placing.box(sharp)
                        .map(box -> Restoring.stripped(sharp, paint, box.back()))
                        .orElse(sharp)
                : sharp;
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
}
