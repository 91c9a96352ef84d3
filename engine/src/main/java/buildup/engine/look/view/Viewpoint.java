package buildup.engine.look.view;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/** Where rays come together: far away in a direction, or at a point. */
public sealed interface Viewpoint permits Viewpoint.FarAway, Viewpoint.Near {
    /** The key of the ray through {@code p}. */
    double key(Point p);

    /** Distance of {@code p} along its ray; smaller is nearer. Far away it may be negative. */
    double depth(Point p);

    /** Unit direction from {@code p} towards the viewpoint. */
    Point towards(Point p);

    /** A point of the ray and the ray's unit direction, away from the viewpoint. */
    Line ray(double key);

    /** Where the ray of a key meets the line through two places, as a share of the way from the first to the second. */
    double onLine(double key, double fromX, double fromY, double toX, double toY);

    /**
     * Whether a straight segment may face the viewpoint: not when its key rises, or stays, along the walk. It is cheaper to
     * ask than two keys are.
     */
    boolean mayFace(Line line);

    /** Angles, seen from the center of an arc, at which a ray only grazes its circle; none from inside it. */
    List<Double> grazing(Arc arc);

    /**
     * Whether two ends of a straight segment lie to both sides of where the keys begin again, or on it: a line is seen under
     * less than half a turn.
     */
    boolean acrossSeam(double first, double last);

    /** Where the keys begin again from the other side: cuts of a segment there, as t; none far away. */
    List<Double> seams(Segment segment);

    /** Parallel rays; {@code direction} is the unit vector towards the viewpoint. */
    record FarAway(Point direction) implements Viewpoint {
        /**
         * Seen from far away in one direction.
         *
         * @param angle of the direction towards the viewpoint, radians counterclockwise from straight out
         */
        public static FarAway at(double angle) {
            return new FarAway(Point.towards(angle));
        }

        @Override
        public double key(Point p) {
            return p.cross(direction);
        }

        @Override
        public double depth(Point p) {
            return -p.dot(direction);
        }

        @Override
        public Point towards(Point p) {
            return direction;
        }

        @Override
        public Line ray(double key) {
            Point on = direction.right().times(key);
            return new Line(on, on.minus(direction));
        }

        @Override
        public double onLine(double key, double fromX, double fromY, double toX, double toY) {
            double first = fromX * direction.y() - fromY * direction.x();
            double along = (toX - fromX) * direction.y() - (toY - fromY) * direction.x();
            return (key - first) / along;
        }

        @Override
        public boolean mayFace(Line line) {
            return line.from().cross(direction) > line.to().cross(direction);
        }

        @Override
        public List<Double> grazing(Arc arc) {
            double angle = direction.angle();
            return List.of(angle - Math.PI / 2, angle + Math.PI / 2);
        }

        @Override
        public boolean acrossSeam(double first, double last) {
            return false;
        }

        @Override
        public List<Double> seams(Segment segment) {
            return List.of();
        }
    }

    /**
     * Rays from a point; the key tells the direction counterclockwise from straight out, 0 to {@link #TURN}: where the
     * direction meets a square that stands on its corner, told along its sides. It grows as the angle does, a right angle
     * being 1, and takes one division and no arc tangent.
     */
    record Near(Point at) implements Viewpoint {
        /** The keys of a full turn. */
        static final double TURN = 4;

        @Override
        public double key(Point p) {
            double x = p.x() - at.x();
            double y = p.y() - at.y();
            double sum = Math.abs(x) + Math.abs(y);
            if (sum <= 0) {
                return 0;
            }
            double along = y / sum;
            return x < 0 ? 2 - along : y < 0 ? TURN + along : along;
        }

        @Override
        public double depth(Point p) {
            return p.distance(at);
        }

        @Override
        public Point towards(Point p) {
            return at.minus(p).unit();
        }

        @Override
        public Line ray(double key) {
            double up = up(key);
            return new Line(at, at.plus(new Point(out(key, up), up).unit()));
        }

        @Override
        public double onLine(double key, double fromX, double fromY, double toX, double toY) {
            double up = up(key);
            double out = out(key, up);
            double first = (at.x() - fromX) * up - (at.y() - fromY) * out;
            return first / ((toX - fromX) * up - (toY - fromY) * out);
        }

        /** Where the direction of a key meets the square, out and up from its middle. */
        private static double up(double key) {
            double rest = within(key);
            return rest < 1 ? rest : rest < 3 ? 2 - rest : rest - TURN;
        }

        private static double out(double key, double up) {
            double rest = within(key);
            return rest < 1 || rest > 3 ? 1 - Math.abs(up) : Math.abs(up) - 1;
        }

        private static double within(double key) {
            return key >= 0 && key < TURN ? key : key - TURN * Math.floor(key / TURN);
        }

        @Override
        public boolean mayFace(Line line) {
            Point from = line.from();
            Point to = line.to();
            return (from.x() - at.x()) * (to.y() - at.y()) < (from.y() - at.y()) * (to.x() - at.x());
        }

        @Override
        public List<Double> grazing(Arc arc) {
            Point to = at.minus(arc.center());
            double distance = to.length();
            if (distance <= arc.radius()) {
                return List.of();
            }
            double half = Math.acos(arc.radius() / distance);
            return List.of(to.angle() - half, to.angle() + half);
        }

        @Override
        public boolean acrossSeam(double first, double last) {
            return Math.abs(first - last) > TURN / 2;
        }

        @Override
        public List<Double> seams(Segment segment) {
            if (segment instanceof Line line && !reaches(line)) {
                return List.of();
            }
            List<Double> seams = new ArrayList<>();
            double reach = segment.box().face() - at.x();
            if (reach > 0 && segment.box().bottom() <= at.y() && segment.box().top() >= at.y()) {
                Line seam = new Line(at, at.plus(new Point(reach + 1, 0)));
                Crossings.of(segment, seam, Tolerance.COINCIDENT).forEach(p -> seams.add(segment.nearest(p)));
            }
            return seams;
        }

        /** Whether the box of a segment reaches across the level of the viewpoint, beyond it. */
        private boolean reaches(Line line) {
            return Math.max(line.from().x(), line.to().x()) > at.x()
                    && Math.min(line.from().y(), line.to().y()) <= at.y()
                    && Math.max(line.from().y(), line.to().y()) >= at.y();
        }
    }
}
