package buildup.profiles.trace.fit;

import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Looks again at every corner of a ring that is bound together. Where neighbors are tangent a member needs fewer
 * numbers than one that stands alone: a short flat between two arcs needs one, an eased arris one against a chamfer's
 * two. So members that the points alone did not tell apart are told here, at the same price a number.
 */
final class Improving {
    /** Shares of a neighbor's points that a member between it and the next may take. */
    private static final List<Double> SHARES = List.of(0.12, 0.3);

    /** Changes that are made at most, the best of all each time. */
    private static final int MOST_ROUNDS = 24;

    /** A ring of more members is improved in fewer rounds: the work of one grows as the fifth power of their number. */
    private static final int ALL_ROUNDS = 24;

    /** Neighbors of an eased arris turn at least so much. */
    private static final double LEAST_TURN = Math.toRadians(20);

    private static final double MOST_TURN = Math.toRadians(130);

    /** Corners that turn no more than this may be none. */
    private static final double SLIGHT = Math.toRadians(40);

    /** A line that stands farther than this from level and upright may hide a cyma; radians. */
    private static final double SLOPE = Math.toRadians(10);

    /** A line is tried as an arc when its own points gain so much by it, as (distance / noise)^2. */
    private static final double CURVED_GAIN = 4;

    /** An arc that is no longer than this share of its radius hardly bends: it turns by seven degrees. */
    private static final double HARDLY_BENT = 1.0 / 8;

    /** A flat that may be an arc begins as one so many times as wide as its neighbor. */
    private static final double WIDER = 3;

    /** Fewer points of a neighbor cannot give any away. */
    private static final int LEAST_GIVER = 12;

    /** Fewer points are no member. */
    private static final int LEAST = 3;

    private Improving() {}

    static Fitting of(Fitting start) {
        Fitting best = start;
        for (int round = 0; round < rounds(start); round++) {
            Fitting now = best;
            Optional<Fitting> next = others(now)
                    .map(Fitting::reassigned)
                    .filter(Fitting::sound)
                    .min(Comparator.comparingDouble(Pricing::price))
                    .filter(other -> !now.sound() || Pricing.price(other) < Pricing.price(now));
            if (next.isEmpty()) {
                break;
            }
            best = next.get();
        }
        return straightened(best);
    }

    /** Arcs that hardly bend as lines, where that costs less: a number that the points do not tell is saved. */
    private static Fitting straightened(Fitting fitting) {
        Fitting best = fitting;
        for (int i = 0; i < fitting.curves().size(); i++) {
            Fitting now = best;
            best = new Draft(best, i)
                    .straight()
                    .filter(Fitting::sound)
                    .filter(other -> Pricing.price(other) < Pricing.price(now))
                    .orElse(now);
        }
        return best;
    }

    /** The rings with one member more, for every curve those that differ there; each costs more, or it were taken. */
    static List<List<Fitting>> withOneMore(Fitting fitting) {
        List<List<Fitting>> all = new ArrayList<>();
        for (int i = 0; i < fitting.curves().size(); i++) {
            Draft draft = new Draft(fitting, i);
            all.add(Stream.concat(
                            Stream.of(draft.parted(), draft.eased(), draft.waved()),
                            SHARES.stream().flatMap(draft::flats))
                    .flatMap(Optional::stream)
                    .map(Fitting::reassigned)
                    .filter(Fitting::sound)
                    .toList());
        }
        return all;
    }

    /** The least that a ring without one of its members costs more than with it; for the member at every curve. */
    static List<Double> losses(Fitting fitting) {
        double own = Pricing.price(fitting);
        List<Double> losses = new ArrayList<>();
        for (int i = 0; i < fitting.curves().size(); i++) {
            Draft draft = new Draft(fitting, i);
            losses.add(Stream.of(draft.dropped(), draft.merged(false), draft.merged(true))
                    .flatMap(Optional::stream)
                    .map(Fitting::reassigned)
                    .filter(Fitting::sound)
                    .mapToDouble(other -> Pricing.price(other) - own)
                    .min()
                    .orElse(Double.POSITIVE_INFINITY));
        }
        return losses;
    }

    /** Whether a curve is an arc that may as well be a line. */
    static boolean hardlyBends(Fitting fitting, int i) {
        return fitting.curves().get(i) instanceof Curve.Round round && fitting.span(i) <= HARDLY_BENT * round.radius();
    }

    private static int rounds(Fitting fitting) {
        double more = Math.max(1, fitting.curves().size() / (double) ALL_ROUNDS);
        return (int) (MOST_ROUNDS / Math.pow(more, 5));
    }

    private static Stream<Fitting> others(Fitting fitting) {
        return IntStream.range(0, fitting.curves().size())
                .mapToObj(i -> new Draft(fitting, i))
                .flatMap(draft -> Stream.of(
                                draft.easedArris().stream(),
                                Stream.of(
                                                draft.parted(),
                                                draft.dropped(),
                                                draft.merged(false),
                                                draft.merged(true),
                                                draft.rounded(),
                                                draft.eased(),
                                                draft.curved(),
                                                draft.bent(draft.before),
                                                draft.bent(draft.after))
                                        .flatMap(Optional::stream),
                                SHARES.stream().flatMap(draft::flats).flatMap(Optional::stream))
                        .flatMap(all -> all));
    }

    /** A ring that is being changed at one curve. */
    private static final class Draft {
        private final Fitting fitting;
        private final int i;
        private final int before;
        private final int after;
        private final List<Curve> curves;
        private final List<List<Point>> points;
        private final List<Corners.Kind> kinds;

        Draft(Fitting fitting, int i) {
            int n = fitting.curves().size();
            this.fitting = fitting;
            this.i = i;
            this.before = (i + n - 1) % n;
            this.after = (i + 1) % n;
            this.curves = new ArrayList<>(fitting.curves());
            this.points = new ArrayList<>(fitting.points());
            this.kinds = new ArrayList<>(fitting.kinds());
        }

        private Draft again() {
            return new Draft(fitting, i);
        }

        private Fitting bound() {
            return Fitting.bound(curves, points, kinds, fitting.noise());
        }

        /** A short line that turns the same way at both ends, as an arc tangent to both neighbors. */
        Optional<Fitting> easedArris() {
            if (curves.size() < 4 || !(curves.get(i) instanceof Curve.Straight flat)) {
                return Optional.empty();
            }
            Point start = fitting.starts().get(i);
            Point end = fitting.starts().get(after);
            Point in = curves.get(before).heading(start);
            Point out = curves.get(after).heading(end);
            double first = in.cross(flat.heading(start));
            double second = flat.heading(end).cross(out);
            double turn = Math.abs(Math.atan2(in.cross(out), in.dot(out)));
            if (first * second <= 0
                    || turn < LEAST_TURN
                    || turn > MOST_TURN
                    || points.get(i).size() < LEAST) {
                return Optional.empty();
            }
            double bend = Math.signum(first) * start.distance(end) / 2 / Math.sin(turn / 2);
            Point middle = start.towards(end, 0.5);
            Draft draft = again();
            draft.curves.set(i, new Curve.Round(middle.minus(flat.normal().times(bend * Math.cos(turn / 2))), bend));
            draft.kinds.set(i, Corners.Kind.SMOOTH);
            draft.kinds.set(after, Corners.Kind.SMOOTH);
            double gain = first > 0 ? 0 : Pricing.DOUBTFUL_GAIN;
            return Optional.of(draft.bound().reassigned()).filter(eased -> eased.error() < fitting.error() - gain);
        }

        /** An arc that meets lines at both ends in slight corners, tangent to both: its points do not tell where it ends. */
        Optional<Fitting> rounded() {
            boolean between = curves.get(i) instanceof Curve.Round
                    && curves.get(before) instanceof Curve.Straight
                    && curves.get(after) instanceof Curve.Straight
                    && before != after;
            if (!between
                    || (kinds.get(i) == Corners.Kind.SMOOTH && kinds.get(after) == Corners.Kind.SMOOTH)
                    || turn(before, i) > SLIGHT
                    || turn(i, after) > SLIGHT) {
                return Optional.empty();
            }
            Draft draft = again();
            draft.kinds.set(i, Corners.Kind.SMOOTH);
            draft.kinds.set(after, Corners.Kind.SMOOTH);
            return Optional.of(draft.bound());
        }

        /** A sharp arris between two lines, rounded as far as the points stay back from where the lines cross. */
        Optional<Fitting> eased() {
            boolean lines = curves.get(i) instanceof Curve.Straight && curves.get(before) instanceof Curve.Straight;
            double turn = lines ? turn(before, i) : 0;
            if (!lines || before == i || turn < LEAST_TURN || turn > MOST_TURN) {
                return Optional.empty();
            }
            Curve.Straight in = (Curve.Straight) curves.get(before);
            Curve.Straight out = (Curve.Straight) curves.get(i);
            boolean round = in.heading(Point.ORIGIN).cross(out.heading(Point.ORIGIN)) > 0;
            Optional<Point> corner =
                    Corners.of(in, out, Corners.Kind.CORNER, fitting.starts().get(i));
            if (!round || corner.isEmpty()) {
                return Optional.empty();
            }
            Point at = corner.get();
            double back = Stream.concat(points.get(before).stream(), points.get(i).stream())
                    .mapToDouble(at::distance)
                    .min()
                    .orElse(0);
            double radius = back / (1 / Math.cos(turn / 2) - 1);
            double reach = radius * Math.tan(turn / 2);
            List<Point> one = points.get(before);
            List<Point> other = points.get(i);
            int left = (int) one.stream().filter(p -> p.distance(at) < reach).count();
            int right = (int) other.stream().filter(p -> p.distance(at) < reach).count();
            if (left < 1 || right < 1 || left > one.size() / 2 || right > other.size() / 2 || left + right < LEAST) {
                return Optional.empty();
            }
            List<Point> own = new ArrayList<>(one.subList(one.size() - left, one.size()));
            own.addAll(other.subList(0, right));
            Point inside = in.normal().plus(out.normal()).unit().times(-radius / Math.cos(turn / 2));
            Draft draft = again();
            draft.points.set(before, one.subList(0, one.size() - left));
            draft.points.set(i, other.subList(right, other.size()));
            draft.points.add(i, own);
            draft.curves.add(i, new Curve.Round(at.plus(inside), radius));
            draft.kinds.set(i, Corners.Kind.SMOOTH);
            draft.kinds.add(i, Corners.Kind.SMOOTH);
            return Optional.of(draft.bound());
        }

        /** A line as the arc that follows its points best, tangent to its neighbors where that is near. */
        Optional<Fitting> curved() {
            List<Point> on = points.get(i);
            if (!(curves.get(i) instanceof Curve.Straight) || on.size() < LEAST_GIVER || curves.size() < 3) {
                return Optional.empty();
            }
            Moments moments = Moments.of(on);
            double weighed = fitting.noise().weighed() * fitting.noise().weighed();
            double gain = (moments.lineError(0, on.size()) - moments.circleError(0, on.size())) / weighed;
            if (!(gain > CURVED_GAIN)) {
                return Optional.empty();
            }
            Draft draft = again();
            draft.curves.set(i, Fitting.curve(moments, new Splitting.Stretch(0, on.size(), true), on));
            draft.kinds.set(i, Corners.Kind.CORNER);
            draft.kinds.set(after, Corners.Kind.CORNER);
            return Optional.of(draft.bound().smoothedAround(i).reassigned())
                    .filter(arc -> arc.error() < fitting.error() - Pricing.DOUBTFUL_GAIN);
        }

        /** An arc that hardly bends as a line. */
        Optional<Fitting> straight() {
            List<Point> on = points.get(i);
            if (!hardlyBends(fitting, i)) {
                return Optional.empty();
            }
            Draft draft = again();
            draft.curves.set(i, Fitting.curve(Moments.of(on), new Splitting.Stretch(0, on.size(), false), on));
            return Optional.of(draft.bound().reassigned());
        }

        private double turn(int one, int next) {
            return Corners.turn(
                    curves.get(one), curves.get(next), fitting.starts().get(next));
        }

        /** An arc as two that go over into each other. */
        Optional<Fitting> parted() {
            if (!(curves.get(i) instanceof Curve.Round round) || points.get(i).size() < 2 * LEAST_GIVER) {
                return Optional.empty();
            }
            Draft draft = again();
            List<Point> on = points.get(i);
            draft.points.set(i, on.subList(on.size() / 2, on.size()));
            draft.points.add(i, on.subList(0, on.size() / 2));
            // a little apart, so that the bond between them has a direction
            draft.curves.add(i, round.inward(round.bend() / 50));
            draft.curves.set(
                    i + 1,
                    new Curve.Round(
                            round.center()
                                    .plus(on.get(on.size() / 2)
                                            .minus(round.center())
                                            .times(-1.0 / 50)),
                            round.bend() * 51 / 50));
            draft.kinds.add(i + 1, Corners.Kind.SMOOTH);
            return Optional.of(draft.bound());
        }

        /** A line as the two arcs of a cyma, bent opposite ways, each as its half of the points is. */
        Optional<Fitting> waved() {
            List<Point> on = points.get(i);
            int half = on.size() / 2;
            if (half < LEAST_GIVER || !slopes()) {
                return Optional.empty();
            }
            Moments moments = Moments.of(on);
            Curve first = Fitting.curve(moments, new Splitting.Stretch(0, half, true), on.subList(0, half));
            Curve second =
                    Fitting.curve(moments, new Splitting.Stretch(half, on.size(), true), on.subList(half, on.size()));
            boolean opposite = first instanceof Curve.Round one
                    && second instanceof Curve.Round other
                    && one.bend() * other.bend() < 0;
            if (!opposite) {
                return Optional.empty();
            }
            Draft draft = again();
            draft.curves.set(i, second);
            draft.curves.add(i, first);
            draft.points.set(i, on.subList(half, on.size()));
            draft.points.add(i, on.subList(0, half));
            draft.kinds.add(i + 1, Corners.Kind.SMOOTH);
            return Optional.of(draft.bound());
        }

        /** Whether it is a line that stands neither along nor square to the longest one. */
        private boolean slopes() {
            Optional<Curve.Straight> longest = Pricing.longest(fitting);
            return curves.get(i) instanceof Curve.Straight line
                    && Math.abs(Math.IEEEremainder(
                                    line.angle() - longest.orElse(line).angle(), Math.PI / 2))
                            > SLOPE;
        }

        /** A line that goes over into a neighboring arc, bent as that is. */
        Optional<Fitting> bent(int neighbor) {
            Corners.Kind kind = kinds.get(neighbor == before ? i : after);
            if (kind != Corners.Kind.SMOOTH
                    || !(curves.get(i) instanceof Curve.Straight line)
                    || !(curves.get(neighbor) instanceof Curve.Round round)
                    || points.get(i).size() < LEAST_GIVER) {
                return Optional.empty();
            }
            Draft draft = again();
            double bend = WIDER * round.bend();
            Point middle = points.get(i).get(points.get(i).size() / 2);
            draft.curves.set(
                    i, new Curve.Round(line.foot(middle).minus(line.normal().times(bend)), bend));
            return Optional.of(draft.bound().reassigned())
                    .filter(arc -> arc.error() < fitting.error() - Pricing.DOUBTFUL_GAIN);
        }

        /** Without a line between two arcs. */
        Optional<Fitting> dropped() {
            if (curves.size() < 4
                    || !(curves.get(i) instanceof Curve.Straight)
                    || !(curves.get(before) instanceof Curve.Round)
                    || !(curves.get(after) instanceof Curve.Round)
                    || (kinds.get(i) == Corners.Kind.CORNER && kinds.get(after) == Corners.Kind.CORNER)) {
                return Optional.empty();
            }
            Draft draft = again();
            List<Point> on = points.get(i);
            List<Point> one = new ArrayList<>(points.get(before));
            one.addAll(on.subList(0, on.size() / 2));
            List<Point> other = new ArrayList<>(on.subList(on.size() / 2, on.size()));
            other.addAll(points.get(after));
            draft.points.set(before, one);
            draft.points.set(after, other);
            Corners.Kind kind = kinds.get(i) == Corners.Kind.SMOOTH ? kinds.get(after) : kinds.get(i);
            draft.kinds.set(after, kind);
            draft.curves.remove(i);
            draft.points.remove(i);
            draft.kinds.remove(i);
            return Optional.of(draft.bound());
        }

        /** With the next curve as one, straight or round, where both together may pay less than they cost apart. */
        Optional<Fitting> merged(boolean round) {
            if (curves.size() < 4) {
                return Optional.empty();
            }
            List<Point> both = new ArrayList<>(points.get(i));
            both.addAll(points.get(after));
            Moments moments = Moments.of(both);
            double weighed = fitting.noise().weighed() * fitting.noise().weighed();
            double whole = round ? moments.circleError(0, both.size()) : moments.lineError(0, both.size());
            double apart = 0;
            int numbers = round ? -3 : -2;
            for (int k : List.of(i, after)) {
                numbers += curves.get(k) instanceof Curve.Round ? 3 : 2;
                for (Point p : points.get(k)) {
                    apart += curves.get(k).off(p) * curves.get(k).off(p);
                }
            }
            double saved = Pricing.ofMember(fitting, numbers);
            if (both.size() < 2 * LEAST || (whole - apart) / weighed > saved) {
                return Optional.empty();
            }
            Draft draft = again();
            Curve one = Fitting.curve(moments, new Splitting.Stretch(0, both.size(), round), both);
            draft.curves.set(i, one);
            draft.points.set(i, both);
            draft.kinds.set(i, Corners.Kind.CORNER);
            draft.kinds.set((after + 1) % curves.size(), Corners.Kind.CORNER);
            draft.curves.remove(after);
            draft.points.remove(after);
            draft.kinds.remove(after);
            return Optional.of(draft.bound().smoothedAround(after < i ? i - 1 : i));
        }

        /** With a short flat between this curve and the one before it, tangent to those of the two that are arcs. */
        Stream<Optional<Fitting>> flats(double share) {
            boolean roundBefore = curves.get(before) instanceof Curve.Round;
            boolean roundHere = curves.get(i) instanceof Curve.Round;
            if (kinds.get(i) == Corners.Kind.SMOOTH) {
                return roundBefore && roundHere ? Stream.of(flat(share, share)) : Stream.empty();
            }
            return Stream.of(
                    roundBefore ? flat(share, 0) : Optional.empty(), roundHere ? flat(0, share) : Optional.empty());
        }

        private Optional<Fitting> flat(double shareBefore, double shareHere) {
            List<Point> one = points.get(before);
            List<Point> other = points.get(i);
            int left = (int) (one.size() * shareBefore);
            int right = (int) (other.size() * shareHere);
            if (left + right < LEAST
                    || (left > 0 && one.size() < LEAST_GIVER)
                    || (right > 0 && other.size() < LEAST_GIVER)) {
                return Optional.empty();
            }
            List<Point> own = new ArrayList<>(one.subList(one.size() - left, one.size()));
            own.addAll(other.subList(0, right));
            Point middle = own.get(own.size() / 2);
            Draft draft = again();
            draft.points.set(before, one.subList(0, one.size() - left));
            draft.points.set(i, other.subList(right, other.size()));
            draft.points.add(i, own);
            draft.curves.add(
                    i,
                    Curve.Straight.through(
                            middle, curves.get(left > 0 ? before : i).heading(middle)));
            draft.kinds.set(i, right > 0 ? Corners.Kind.SMOOTH : kinds.get(i));
            draft.kinds.add(i, left > 0 ? Corners.Kind.SMOOTH : kinds.get(i));
            return Optional.of(draft.bound());
        }
    }
}
