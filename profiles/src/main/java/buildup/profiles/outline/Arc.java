package buildup.profiles.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A circular arc round {@code center}, less than a full turn. Its angles and its box are worked out when they are first
 * asked for and kept: they are asked for far more often than arcs are made.
 */
public final class Arc implements Segment {
    private static final double QUARTER = Math.PI / 2;

    private final Point from;
    private final Point to;
    private final Point center;
    private final boolean counterclockwise;
    private double start = Double.NaN;
    private double sweep = Double.NaN;
    private Optional<Box> box = Optional.empty();

    /** An arc; both ends have to be as far from the center. */
    public Arc(Point from, Point to, Point center, boolean counterclockwise) {
        this.from = from;
        this.to = to;
        this.center = center;
        this.counterclockwise = counterclockwise;
    }

    @Override
    public Point from() {
        return from;
    }

    @Override
    public Point to() {
        return to;
    }

    /** What it goes round. */
    public Point center() {
        return center;
    }

    /** Which way it goes round. */
    public boolean counterclockwise() {
        return counterclockwise;
    }

    /** Its radius, in. */
    public double radius() {
        return center.distance(from);
    }

    /** Angle of the start seen from the center, radians. */
    public double startAngle() {
        if (Double.isNaN(start)) {
            start = from.minus(center).angle();
        }
        return start;
    }

    /** Angle swept, radians: positive counterclockwise; 0 when the ends coincide, for no arc is a full turn. */
    public double sweep() {
        if (Double.isNaN(sweep)) {
            sweep = swept();
        }
        return sweep;
    }

    private double swept() {
        double walked = walkedTo(to.minus(center).angle());
        double least = Tolerance.COINCIDENT / Math.max(radius(), Tolerance.COINCIDENT);
        if (walked <= least || 2 * Math.PI - walked <= least) {
            return 0;
        }
        return counterclockwise ? walked : -walked;
    }

    /** How far round from the start, in the walk's own sense, the direction {@code angle} lies: 0 to a full turn. */
    private double walkedTo(double angle) {
        double turn = counterclockwise ? angle - startAngle() : startAngle() - angle;
        double wrapped = turn % (2 * Math.PI);
        return wrapped < 0 ? wrapped + 2 * Math.PI : wrapped;
    }

    /** The {@code t} at which a direction from the center is met; outside 0 to 1 when it is not on the arc. */
    public double atAngle(double angle) {
        double walked = walkedTo(angle);
        double whole = Math.abs(sweep());
        if (whole <= 0) {
            return 0;
        }
        double past = walked - whole;
        // beyond the end: as a negative t when the start is the nearer end
        return past > 0 && 2 * Math.PI - walked < past ? (walked - 2 * Math.PI) / whole : walked / whole;
    }

    @Override
    public double length() {
        return radius() * Math.abs(sweep());
    }

    @Override
    public Point at(double t) {
        if (t <= 0) {
            return from;
        }
        return t >= 1 ? to : onCircle(startAngle() + t * sweep());
    }

    private Point onCircle(double angle) {
        return center.plus(Point.towards(angle).times(radius()));
    }

    @Override
    public Point direction(double t) {
        Point spoke = Point.towards(startAngle() + Math.max(0, Math.min(1, t)) * sweep());
        return counterclockwise ? spoke.left() : spoke.right();
    }

    @Override
    public double nearest(Point p) {
        if (p.near(center, Tolerance.COINCIDENT)) {
            return 0;
        }
        return Math.max(0, Math.min(1, atAngle(p.minus(center).angle())));
    }

    @Override
    public Arc reversed() {
        return new Arc(to, from, center, !counterclockwise);
    }

    @Override
    public Arc scaled(double by) {
        return new Arc(from.times(by), to.times(by), center.times(by), counterclockwise);
    }

    @Override
    public Arc moved(Motion motion) {
        return new Arc(
                motion.apply(from), motion.apply(to), motion.apply(center), counterclockwise != motion.mirrors());
    }

    @Override
    public Arc part(double start, double end) {
        return new Arc(at(start), at(end), center, counterclockwise);
    }

    @Override
    public Box box() {
        if (box.isEmpty()) {
            box = Optional.of(around());
        }
        return box.get();
    }

    private Box around() {
        Box around = Box.of(from, to);
        for (int quarter = 0; quarter < 4; quarter++) {
            double t = atAngle(quarter * QUARTER);
            if (t > 0 && t < 1) {
                around = around.with(extreme(quarter));
            }
        }
        return around;
    }

    private Point extreme(int quarter) {
        double r = radius();
        return switch (quarter) {
            case 0 -> center.plus(new Point(r, 0));
            case 1 -> center.plus(new Point(0, r));
            case 2 -> center.plus(new Point(-r, 0));
            default -> center.plus(new Point(0, -r));
        };
    }

    /**
     * {@inheritDoc}
     *
     * <p>The step divides a quarter turn evenly and starts at straight out, so it does not depend on the arc's ends:
     * steps per quarter n = ceil((pi/2) / (2 acos(1 - e/r))), from the sagitta of a chord, e = r (1 - cos(step/2)).
     */
    @Override
    public List<Point> flattened(double chordError) {
        double r = radius();
        double widest = chordError >= r ? QUARTER : 2 * Math.acos(1 - chordError / r);
        int perQuarter = (int) Math.ceil(QUARTER / widest);
        double step = QUARTER / perQuarter;
        double start = startAngle();
        double sweep = sweep();
        List<Point> points = new ArrayList<>();
        points.add(from);
        double slack = Tolerance.SNAP / Math.max(r, Tolerance.SNAP);
        if (sweep > 0) {
            for (long k = (long) Math.floor((start + slack) / step) + 1; k * step < start + sweep - slack; k++) {
                points.add(gridPoint(k, perQuarter));
            }
        } else {
            for (long k = (long) Math.ceil((start - slack) / step) - 1; k * step > start + sweep + slack; k--) {
                points.add(gridPoint(k, perQuarter));
            }
        }
        points.add(to);
        return points;
    }

    private Point gridPoint(long k, int perQuarter) {
        return k % perQuarter == 0
                ? extreme((int) Math.floorMod(k / perQuarter, 4L))
                : onCircle(k * (QUARTER / perQuarter));
    }

    @Override
    public double twiceArea() {
        double sweep = sweep();
        double r = radius();
        // chord's triangle and the circular segment r^2/2 (theta - sin theta)
        return from.cross(to) + r * r * (sweep - Math.sin(sweep));
    }

    @Override
    public Point moment() {
        double sweep = sweep();
        double r = radius();
        double segment = r * r * (sweep - Math.sin(sweep)) / 2;
        // segment area times its centroid's distance 4 r sin^3(theta/2) / (3 (theta - sin theta)) from the center
        double reach = 2 * Math.pow(r * Math.sin(sweep / 2), 3) / 3;
        Point middle = Point.towards(startAngle() + sweep / 2);
        return from.plus(to)
                .times(from.cross(to) / 6)
                .plus(center.times(segment))
                .plus(middle.times(reach));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Arc arc
                && counterclockwise == arc.counterclockwise
                && from.equals(arc.from)
                && to.equals(arc.to)
                && center.equals(arc.center);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * (31 * from.hashCode() + to.hashCode()) + center.hashCode())
                + Boolean.hashCode(counterclockwise);
    }

    @Override
    public String toString() {
        return "Arc[from=" + from + ", to=" + to + ", center=" + center + ", counterclockwise=" + counterclockwise
                + "]";
    }
}
