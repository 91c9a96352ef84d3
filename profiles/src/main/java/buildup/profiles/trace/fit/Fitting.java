package buildup.profiles.trace.fit;

import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A ring of curves on its way to an outline: each curve with its points, the bonds that it keeps, and where the walk
 * passes from one to the next. Immutable; every step gives another one.
 *
 * @param points of each curve, in order
 * @param bonds kept by the curves; the tangents among them are between neighbors
 * @param noise of the points about the true curve
 * @param error sum of (distance / weighed noise)^2
 * @param strain by how much the worst bond is not kept, in
 */
public record Fitting(
        List<Curve> curves, List<List<Point>> points, List<Bond> bonds, Noise noise, double error, double strain) {
    /** A bond that costs more than this in (distance / noise)^2 is not meant: four standard deviations. */
    public static final double MEANT = 16;

    /** Neighbors that turn more sharply than this are a corner; a flat arc's end is known no better. */
    private static final double CORNER = Math.toRadians(40);

    /** How far a corner may lie from where the points turn, in standard deviations across the narrower angle. */
    private static final double CORNER_REACH = 8;

    /** Rounds of giving points to their nearer neighbor; the ends commonly stand still after two. */
    private static final int MOST_ROUNDS = 3;

    /** A curve keeps so many points at least on either side of its middle. */
    private static final int LEAST_KEPT = 2;

    /** Other prices of a member to try. */
    private static final List<Double> OTHER_PRICES = List.of(0.85, 1.2, 1.5, 0.7, 2.0, 3.0);

    /** A ring of more members is a scrawl: to fit so many to each other takes minutes, and no molding has half of them. */
    public static final int MOST_MEMBERS = 60;

    /** Copies the lists. */
    public Fitting {
        curves = List.copyOf(curves);
        points = points.stream().map(List::copyOf).toList();
        bonds = List.copyOf(bonds);
    }

    /**
     * The ring of lines and arcs that follows points best; one that does not hold together, or of more than
     * {@link #MOST_MEMBERS}, is tried again with a cutting a little coarser or finer. Absent when all are of more.
     *
     * @param cutFor the noise that the ring is cut for, in
     */
    public static Optional<Fitting> of(List<Point> ring, Noise noise, double cutFor) {
        Optional<Fitting> first = cutting(ring, noise, cutFor);
        return first.filter(Fitting::sound)
                .or(() -> OTHER_PRICES.stream()
                        .flatMap(factor -> cutting(ring, noise, cutFor * factor).stream())
                        .filter(Fitting::sound)
                        .findFirst())
                .or(() -> first);
    }

    private static Optional<Fitting> cutting(List<Point> ring, Noise noise, double cutFor) {
        Splitting.Cut cut = Splitting.of(ring, cutFor);
        return cut.stretches().size() > MOST_MEMBERS
                ? Optional.empty()
                : Optional.of(Improving.of(of(cut, noise).smoothed()).reassigned());
    }

    /** The best curve of each stretch by itself, and risers between those that never meet. */
    static Fitting of(Splitting.Cut cut, Noise noise) {
        Moments moments = Moments.of(cut.ring());
        List<Curve> curves = new ArrayList<>();
        List<List<Point>> points = new ArrayList<>();
        for (Splitting.Stretch stretch : cut.stretches()) {
            List<Point> on = cut.ring().subList(stretch.from(), stretch.to());
            curves.add(curve(moments, stretch, on));
            points.add(on);
        }
        return free(curves, points, noise).withRisers();
    }

    private static Fitting free(List<Curve> curves, List<List<Point>> points, Noise noise) {
        return solved(curves, points, List.of(), noise);
    }

    /** The same curves moved to where they fit best with these bonds kept. */
    public static Fitting solved(List<Curve> curves, List<List<Point>> points, List<Bond> bonds, Noise noise) {
        Solver.Solution solution = new Solver(points, noise.weighed()).solve(curves, bonds);
        return new Fitting(solution.curves(), points, bonds, noise, solution.error(), solution.strain());
    }

    static Curve curve(Moments moments, Splitting.Stretch stretch, List<Point> on) {
        int half = stretch.from() + stretch.count() / 2;
        Point mean = moments.mean(stretch.from(), stretch.to());
        Point along = moments.mean(half, stretch.to()).minus(moments.mean(stretch.from(), half));
        if (stretch.curved()) {
            Moments.Circle circle = moments.circle(stretch.from(), stretch.to());
            boolean left = along.cross(circle.center().minus(mean)) > 0;
            return new Curve.Round(circle.center(), left ? circle.radius() : -circle.radius());
        }
        Point way = Point.towards(moments.lineAngle(stretch.from(), stretch.to()));
        Point ends = on.get(on.size() - 1).minus(on.get(0));
        boolean forth = way.dot(on.size() > 3 ? along : ends) >= 0;
        return Curve.Straight.through(mean, forth ? way : way.times(-1));
    }

    /** Curves that meet as said, moved to where they fit best so. */
    static Fitting bound(List<Curve> curves, List<List<Point>> points, List<Corners.Kind> kinds, Noise noise) {
        List<Bond> bonds = new ArrayList<>();
        for (int i = 0; i < curves.size(); i++) {
            int before = (i + curves.size() - 1) % curves.size();
            // two lines can do no more than cross
            boolean lines = curves.get(i) instanceof Curve.Straight && curves.get(before) instanceof Curve.Straight;
            if (kinds.get(i) != Corners.Kind.CORNER && !lines) {
                bonds.add(new Bond.Tangent(before, i, kinds.get(i) == Corners.Kind.CUSP));
            }
        }
        return solved(curves, points, bonds, noise);
    }

    /** Every point given to that one of two neighbors which it lies nearer to, in order; fitted again. */
    public Fitting reassigned() {
        Fitting fitting = this;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            List<List<Point>> next = new ArrayList<>(fitting.points);
            for (int i = 0; i < curves.size(); i++) {
                fitting.share(before(i), i, next);
            }
            if (next.equals(fitting.points)) {
                return fitting;
            }
            fitting = solved(fitting.curves, next, bonds, noise);
        }
        return fitting;
    }

    /** Divides the points between the middles of two neighbors where their squares come to least. */
    private void share(int a, int b, List<List<Point>> all) {
        List<Point> one = all.get(a);
        List<Point> other = all.get(b);
        int from = one.size() / 2;
        int to = one.size() + other.size() / 2;
        if (a == b || one.size() < 2 * LEAST_KEPT || other.size() < 2 * LEAST_KEPT) {
            return;
        }
        List<Point> both = new ArrayList<>(one);
        both.addAll(other);
        double sum = 0;
        double least = 0;
        int best = from;
        // error with the division at k, less that with it at the beginning
        for (int k = from; k < to; k++) {
            double offA = curves.get(a).off(both.get(k));
            double offB = curves.get(b).off(both.get(k));
            sum += offA * offA - offB * offB;
            if (sum < least) {
                least = sum;
                best = k + 1;
            }
        }
        all.set(a, List.copyOf(both.subList(0, best)));
        all.set(b, List.copyOf(both.subList(best, both.size())));
    }

    /** About where each curve begins: halfway between the last point of the one before and its own first. */
    public List<Point> starts() {
        List<Point> starts = new ArrayList<>();
        for (int i = 0; i < curves.size(); i++) {
            starts.add(start(i));
        }
        return starts;
    }

    /** How each curve meets the one before it. */
    public List<Corners.Kind> kinds() {
        List<Corners.Kind> kinds = new ArrayList<>(Collections.nCopies(curves.size(), Corners.Kind.CORNER));
        for (Bond bond : bonds) {
            if (bond instanceof Bond.Tangent tangent) {
                kinds.set(tangent.second(), tangent.back() ? Corners.Kind.CUSP : Corners.Kind.SMOOTH);
            }
        }
        return kinds;
    }

    /** Two curves that pass each other by, as over a step too low for points of its own, get a line between them. */
    private Fitting withRisers() {
        int n = curves.size();
        List<Point> starts = starts();
        List<Boolean> risen = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            risen.add(points.get(i).size() > 4 && points.get(before(i)).size() > 4 && passesBy(i, starts.get(i)));
        }
        List<Curve> all = new ArrayList<>();
        List<List<Point>> own = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            List<Point> mine = points.get(i);
            if (risen.get(i)) {
                List<Point> before = points.get(before(i));
                Point last = before.get(before.size() - 1);
                Point from = curves.get(before(i)).foot(last);
                Point to = curves.get(i).foot(mine.get(0));
                all.add(Curve.Straight.through(from, to.minus(from).unit()));
                own.add(List.of(last, mine.get(0)));
            }
            all.add(curves.get(i));
            own.add(mine.subList(risen.get(i) ? 1 : 0, mine.size() - (risen.get((i + 1) % n) ? 1 : 0)));
        }
        return risen.contains(true) ? free(all, own, noise) : this;
    }

    private boolean passesBy(int i, Point near) {
        Curve a = curves.get((i + curves.size() - 1) % curves.size());
        Curve b = curves.get(i);
        double turn = Corners.turn(a, b, near);
        double apart = a.foot(near).distance(b.foot(near));
        if (turn < CORNER && a instanceof Curve.Straight != b instanceof Curve.Straight) {
            return false;
        }
        List<Point> before = points.get(before(i));
        double between = before.get(before.size() - 1).distance(points.get(i).get(0)) / 2 + Tolerance.COINCIDENT;
        double reach = Math.max(between, apart + CORNER_REACH * noise.scatter() / Math.max(Math.sin(turn), 0.02));
        return Corners.of(a, b, Corners.Kind.CORNER, near)
                        .filter(p -> p.distance(near) <= reach)
                        .isEmpty()
                && apart > 4 * noise.scatter();
    }

    /** The same, keeping one more bond. */
    public Fitting with(Bond bond) {
        List<Bond> more = new ArrayList<>(bonds);
        more.add(bond);
        return solved(curves, points, more, noise);
    }

    /** The same, one of its bonds given up. */
    public Fitting without(Bond bond) {
        List<Bond> less = new ArrayList<>(bonds);
        less.remove(bond);
        return solved(curves, points, less, noise);
    }

    /** Whether all its bonds are kept. */
    public boolean holds() {
        return strain <= Tolerance.BOND_KEPT && Double.isFinite(error);
    }

    /** Keeps the bond if it costs no more than {@code most} and can be kept beside the others. */
    public Fitting tried(Bond bond, double most) {
        Fitting next = with(bond);
        return next.error() - error <= most && next.holds() && (next.sound() || !sound()) ? next : this;
    }

    /** Neighbors without a corner between them, where the points allow that, and where they would not meet else. */
    Fitting smoothed() {
        return smoothed(IntStream.range(0, curves.size()).boxed().toList());
    }

    /** The same at both ends of one curve. */
    Fitting smoothedAround(int i) {
        return smoothed(List.of(i, (i + 1) % curves.size()));
    }

    private Fitting smoothed(List<Integer> corners) {
        Fitting fitting = this;
        for (int i : corners) {
            fitting = fitting.smoothedAt(i, MEANT);
        }
        for (int i : corners) {
            if (!fitting.meets(i)) {
                fitting = fitting.smoothedAt(i, Double.POSITIVE_INFINITY);
            }
        }
        return fitting;
    }

    private Fitting smoothedAt(int i, double most) {
        int before = before(i);
        boolean lines = curves.get(i) instanceof Curve.Straight && curves.get(before) instanceof Curve.Straight;
        double turn = Corners.turn(curves.get(before), curves.get(i), start(i));
        if (lines
                || before == i
                || kinds().get(i) != Corners.Kind.CORNER
                || (turn > CORNER && turn < Math.PI - CORNER)) {
            return this;
        }
        Fitting next = tried(new Bond.Tangent(before, i, turn > CORNER), most);
        return next.equals(this) || next.meets(i) ? next : this;
    }

    private int before(int i) {
        return (i + curves.size() - 1) % curves.size();
    }

    private Point start(int i) {
        List<Point> before = points.get(before(i));
        return before.get(before.size() - 1).towards(points.get(i).get(0), 0.5);
    }

    /** How far the first point of a curve lies from its last, in. */
    public double span(int curve) {
        List<Point> on = points.get(curve);
        return on.get(0).distance(on.get(on.size() - 1));
    }

    private Point middle(int i) {
        return points.get(i).get(points.get(i).size() / 2);
    }

    /** Whether a curve takes over from the one before it between the middles of the two. */
    private boolean meets(int i) {
        Curve a = curves.get(before(i));
        Curve b = curves.get(i);
        return Corners.of(a, b, kinds().get(i), start(i))
                .filter(p -> p.minus(a.foot(middle(before(i)))).dot(a.heading(p)) > 0)
                .filter(p -> b.foot(middle(i)).minus(p).dot(b.heading(p)) > 0)
                .isPresent();
    }

    /** Whether every curve is walked forward along its own points. */
    public boolean sound() {
        return Corners.segments(curves, kinds(), starts()).filter(this::forward).isPresent();
    }

    private boolean forward(List<Segment> segments) {
        for (int i = 0; i < segments.size(); i++) {
            Segment segment = segments.get(i);
            List<Point> on = points.get(i);
            Point middle = on.get(on.size() / 2);
            double t = segment.nearest(middle);
            boolean backward = segment instanceof Line
                    && segment.direction(0).dot(curves.get(i).heading(middle)) < 0;
            double reach = 3 * (walked(before(i)) + walked(i) + walked((i + 1) % curves.size()));
            if (backward || (on.size() > 4 && (t <= 0 || t >= 1)) || segment.length() > reach) {
                return false;
            }
        }
        return true;
    }

    private double walked(int i) {
        List<Point> on = points.get(i);
        return on.get(0).distance(middle(i)) + middle(i).distance(on.get(on.size() - 1));
    }

    /** Standard deviation of a figure of the outline, such as its height; infinite where it has none. */
    public double unsure(ToDoubleFunction<List<Segment>> figure) {
        return unsureOf(moved -> Corners.segments(moved, kinds(), starts())
                .map(figure::applyAsDouble)
                .orElse(Double.NaN));
    }

    /** Standard deviation of a figure of the curves, such as a radius; infinite where it has none. */
    public double unsureOf(ToDoubleFunction<List<Curve>> figure) {
        double variance = new Solver(points, noise.weighed()).variance(curves, bonds, Solver.slopes(curves, figure));
        return variance >= 0 ? Math.sqrt(variance) : Double.POSITIVE_INFINITY;
    }

    /** Everything turned or shifted. */
    public Fitting moved(Motion motion) {
        return new Fitting(
                curves.stream().map(curve -> curve.moved(motion)).toList(),
                points.stream()
                        .map(on -> on.stream().map(motion::apply).toList())
                        .toList(),
                bonds,
                noise,
                error,
                strain);
    }

    /** Everything enlarged from the origin; the noise stays what it is in inches. */
    public Fitting scaled(double factor) {
        return new Fitting(
                curves.stream().map(curve -> curve.scaled(factor)).toList(),
                points.stream()
                        .map(on -> on.stream().map(p -> p.times(factor)).toList())
                        .toList(),
                bonds,
                noise,
                error,
                strain);
    }
}
