package buildup.profiles.trace.fit;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;

/** An endless line or a whole circle, walked with the wood on its left. */
public sealed interface Curve permits Curve.Straight, Curve.Round {
    /** Distance of a point on the air side; negative on the wood side. */
    double off(Point p);

    /** The place on it nearest to a point. */
    Point foot(Point p);

    /** Direction of the walk where it passes nearest to a point. */
    Point heading(Point p);

    /** The same curve turned or shifted. */
    Curve moved(Motion motion);

    /** The same curve enlarged from the origin. */
    Curve scaled(double factor);

    /** The same curve so much further into the wood. */
    Curve inward(double by);

    /** The stretch between two places on it. */
    Segment between(Point from, Point to);

    /**
     * A line.
     *
     * @param normal square to it, of length one, to the air side
     * @param offset from the origin along the normal
     */
    record Straight(Point normal, double offset) implements Curve {
        /** The line through a point in the direction of the walk. */
        public static Straight through(Point p, Point heading) {
            Point normal = heading.right().unit();
            return new Straight(normal, normal.dot(p));
        }

        /** Of the normal, radians. */
        public double angle() {
            return normal.angle();
        }

        @Override
        public double off(Point p) {
            return normal.x() * p.x() + normal.y() * p.y() - offset;
        }

        @Override
        public Point foot(Point p) {
            return p.minus(normal.times(off(p)));
        }

        @Override
        public Point heading(Point p) {
            return normal.left();
        }

        @Override
        public Straight moved(Motion motion) {
            Point on = motion.apply(foot(Point.ORIGIN));
            Point next = motion.apply(foot(Point.ORIGIN).plus(heading(Point.ORIGIN)));
            return through(on, next.minus(on));
        }

        @Override
        public Straight scaled(double factor) {
            return new Straight(normal, offset * factor);
        }

        @Override
        public Straight inward(double by) {
            return new Straight(normal, offset - by);
        }

        @Override
        public Line between(Point from, Point to) {
            return new Line(from, to);
        }
    }

    /**
     * A circle.
     *
     * @param bend its radius, positive when its center is on the wood side (round), negative on the air side (hollow)
     */
    record Round(Point center, double bend) implements Curve {
        /** Of the circle. */
        public double radius() {
            return Math.abs(bend);
        }

        /** Whether the walk turns left on it: it is round, not hollow. */
        public boolean counterclockwise() {
            return bend > 0;
        }

        @Override
        public double off(Point p) {
            return Math.signum(bend) * p.distance(center) - bend;
        }

        @Override
        public Point foot(Point p) {
            return center.plus(p.minus(center).unit().times(radius()));
        }

        @Override
        public Point heading(Point p) {
            Point spoke = p.minus(center).unit();
            return counterclockwise() ? spoke.left() : spoke.right();
        }

        /** Turns and shifts only: a mirror image would change the side of the wood. */
        @Override
        public Round moved(Motion motion) {
            return new Round(motion.apply(center), bend);
        }

        @Override
        public Round scaled(double factor) {
            return new Round(center.times(factor), bend * factor);
        }

        @Override
        public Round inward(double by) {
            return new Round(center, bend - by);
        }

        @Override
        public Arc between(Point from, Point to) {
            return new Arc(from, to, center, counterclockwise());
        }
    }
}
