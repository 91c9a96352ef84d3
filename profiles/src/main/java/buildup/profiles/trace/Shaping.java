package buildup.profiles.trace;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.trace.fit.Bond;
import buildup.profiles.trace.fit.Corners;
import buildup.profiles.trace.fit.Curve;
import buildup.profiles.trace.fit.Fitting;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Draws the members of a squared ring as moldings have them, where the points allow it: quarter and half rounds that meet
 * their neighbors square, the two arcs of a cyma alike, no round that undercuts the back, the lands of a relieved back in one
 * plane. Common practice, no source.
 */
final class Shaping {
    /** What such a habit may cost in (distance / noise)^2: three standard deviations. */
    private static final double HABIT = 9;

    /** Arcs whose radii differ by no more than this share may be alike. */
    private static final double NEARLY_ALIKE = 0.35;

    /** Lines and arcs that meet within so much of square may do so exactly, radians. */
    private static final double NEARLY_SQUARE = Math.toRadians(20);

    /** Arcs that turn no more than this from one to the other may go over into each other, radians. */
    private static final double NEARLY_SMOOTH = Math.toRadians(40);

    /** An arc that goes behind square by more than this undercuts, radians. */
    private static final double UNDERCUT = Math.toRadians(0.5);

    /** Lands of a back lie no farther apart, in standard deviations of a point. */
    private static final double AT_EDGE = 4;

    private Shaping() {}

    static Fitting of(Fitting squared) {
        Fitting shaped = flush(squared);
        for (int i = 0; i < shaped.curves().size(); i++) {
            shaped = meeting(shaped, i);
        }
        for (int i = shaped.curves().size() - 1; i >= 0; i--) {
            shaped = withoutUndercut(shaped, i);
        }
        return shaped;
    }

    /** The lands of a relieved back lie on the wall together, so they are planed as one. */
    private static Fitting flush(Fitting squared) {
        List<Integer> backs = IntStream.range(0, squared.curves().size())
                .filter(i -> isBack(squared, i))
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -squared.span(i)))
                .toList();
        double outermost =
                backs.stream().mapToDouble(i -> offset(squared, i)).max().orElse(0);
        double near = AT_EDGE * squared.noise().scatter();
        List<Integer> lands = backs.stream()
                .filter(i -> outermost - offset(squared, i) < near)
                .toList();
        Fitting flush = squared;
        for (int i : lands) {
            if (!lands.get(0).equals(i)) {
                flush = flush.tried(new Bond.Flush(lands.get(0), i), Fitting.MEANT);
            }
        }
        return flush;
    }

    private static double offset(Fitting fitting, int line) {
        return ((Curve.Straight) fitting.curves().get(line)).offset();
    }

    private static int before(Fitting fitting, int i) {
        return (i + fitting.curves().size() - 1) % fitting.curves().size();
    }

    /** How a curve meets the one before it. */
    private static Fitting meeting(Fitting fitting, int i) {
        Curve a = fitting.curves().get(before(fitting, i));
        Curve b = fitting.curves().get(i);
        Corners.Kind kind = fitting.kinds().get(i);
        if (a instanceof Curve.Round && b instanceof Curve.Round) {
            return maybeCyma(fitting, i) ? alike(fitting, i) : fitting;
        }
        if (kind != Corners.Kind.CORNER || a instanceof Curve.Straight == b instanceof Curve.Straight) {
            return fitting;
        }
        boolean lineFirst = a instanceof Curve.Straight;
        double turn = Corners.turn(a, b, fitting.starts().get(i));
        boolean square = Math.abs(turn - Math.PI / 2) < NEARLY_SQUARE;
        int line = lineFirst ? before(fitting, i) : i;
        int round = lineFirst ? i : before(fitting, i);
        return square ? fitting.tried(new Bond.Square(line, round), HABIT) : fitting;
    }

    /** Whether a curve and the one before it may be the two arcs of a cyma: bent opposite ways, about alike, hardly a corner. */
    static boolean maybeCyma(Fitting fitting, int i) {
        return fitting.curves().get(before(fitting, i)) instanceof Curve.Round one
                && fitting.curves().get(i) instanceof Curve.Round other
                && one.bend() * other.bend() < 0
                && Math.abs(one.radius() - other.radius()) < NEARLY_ALIKE * Math.max(one.radius(), other.radius())
                && fitting.kinds().get(i) != Corners.Kind.CUSP
                && Corners.turn(one, other, fitting.starts().get(i)) < NEARLY_SMOOTH;
    }

    /** The two arcs of a cyma alike, where that costs little; where it does not, their outer ends may be corners. */
    private static Fitting alike(Fitting fitting, int i) {
        Bond.Alike alike = new Bond.Alike(before(fitting, i), i);
        Bond.Tangent tangent = new Bond.Tangent(before(fitting, i), i, false);
        boolean smooth = fitting.bonds().contains(tangent);
        Fitting kept = smooth ? fitting.tried(alike, HABIT) : fitting;
        if (!kept.equals(fitting)) {
            return kept;
        }
        List<Bond> free = fitting.bonds().stream()
                .filter(bond -> !(bond instanceof Bond.Tangent outer)
                        || (outer.second() != before(fitting, i) && outer.first() != i))
                .collect(Collectors.toCollection(ArrayList::new));
        if (!smooth) {
            free.add(tangent);
        }
        Fitting ends = Fitting.solved(fitting.curves(), fitting.points(), free, fitting.noise())
                .with(alike)
                .reassigned();
        return ends.holds() && ends.sound() && ends.error() < fitting.error() + HABIT ? ends : fitting;
    }

    /**
     * A round that meets the back at less than square, as of more than half a circle, gets a flat that is square to the back
     * and tangent to the round: it takes as many numbers, and can be made.
     */
    private static Fitting withoutUndercut(Fitting fitting, int i) {
        int n = fitting.curves().size();
        int next = (i + 1) % n;
        boolean roundFirst = fitting.curves().get(i) instanceof Curve.Round && isBack(fitting, next);
        boolean backFirst = isBack(fitting, i) && fitting.curves().get(next) instanceof Curve.Round;
        if ((!roundFirst && !backFirst) || fitting.kinds().get(next) != Corners.Kind.CORNER) {
            return fitting;
        }
        int round = roundFirst ? i : next;
        int back = roundFirst ? next : i;
        Curve.Round arc = (Curve.Round) fitting.curves().get(round);
        Curve.Straight wall = (Curve.Straight) fitting.curves().get(back);
        // the center lies in front of the back, so the arc comes back towards it beyond its highest or lowest point
        double past = -wall.off(arc.center()) / arc.radius();
        if (arc.bend() < 0 || past < Math.sin(UNDERCUT) || past > 0.5) {
            return fitting;
        }
        return flat(fitting, round, roundFirst).orElse(fitting);
    }

    private static boolean isBack(Fitting fitting, int i) {
        return fitting.curves().get(i) instanceof Curve.Straight line
                && line.normal().near(new Point(-1, 0), Tolerance.SNAP);
    }

    private static Optional<Fitting> flat(Fitting fitting, int round, boolean above) {
        Curve.Round arc = (Curve.Round) fitting.curves().get(round);
        Point normal = new Point(0, above ? 1 : -1);
        List<Point> arcs = new ArrayList<>();
        List<Point> flats = new ArrayList<>();
        for (Point p : fitting.points().get(round)) {
            boolean beyond = p.x() < arc.center().x() && (p.y() > arc.center().y()) == above;
            (beyond ? flats : arcs).add(p);
        }
        if (arcs.size() < 4 || flats.isEmpty()) {
            return Optional.empty();
        }
        int at = above ? round + 1 : round;
        List<Curve> curves = new ArrayList<>(fitting.curves());
        List<List<Point>> points = new ArrayList<>(fitting.points());
        points.set(round, arcs);
        curves.add(at, new Curve.Straight(normal, normal.dot(arc.center()) + arc.radius()));
        points.add(at, flats);
        List<Bond> bonds = new ArrayList<>();
        for (Bond bond : fitting.bonds()) {
            bonds.add(bond.renumbered(number -> number >= at ? number + 1 : number));
        }
        int moved = above ? round : round + 1;
        bonds.add(above ? new Bond.Tangent(moved, at, false) : new Bond.Tangent(at, moved, false));
        bonds.add(new Bond.Angle(at, normal.angle()));
        Fitting flatter = Fitting.solved(curves, points, bonds, fitting.noise());
        boolean holds = flatter.sound() && flatter.error() < fitting.error() + HABIT;
        return holds ? Optional.of(flatter) : Optional.empty();
    }
}
