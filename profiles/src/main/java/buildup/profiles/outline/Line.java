package buildup.profiles.outline;

import java.util.List;
import java.util.stream.IntStream;

/** A straight segment. */
public record Line(Point from, Point to) implements Segment {
    /** The lines from each point to the next, and from the last to the first. */
    public static List<Line> ring(List<Point> points) {
        return IntStream.range(0, points.size())
                .mapToObj(i -> new Line(points.get(i), points.get((i + 1) % points.size())))
                .toList();
    }

    @Override
    public double length() {
        return from.distance(to);
    }

    @Override
    public Point at(double t) {
        // the ends come back exactly: corners are compared across pieces
        return t <= 0 ? from : t >= 1 ? to : from.towards(to, t);
    }

    @Override
    public Point direction(double t) {
        return to.minus(from).unit();
    }

    @Override
    public double nearest(Point p) {
        Point along = to.minus(from);
        double square = along.dot(along);
        return square > 0 ? Math.max(0, Math.min(1, p.minus(from).dot(along) / square)) : 0;
    }

    @Override
    public Line reversed() {
        return new Line(to, from);
    }

    @Override
    public Line scaled(double by) {
        return new Line(from.times(by), to.times(by));
    }

    @Override
    public Line moved(Motion motion) {
        return new Line(motion.apply(from), motion.apply(to));
    }

    @Override
    public Line part(double start, double end) {
        return new Line(at(start), at(end));
    }

    @Override
    public Box box() {
        return Box.of(from, to);
    }

    @Override
    public List<Point> flattened(double chordError) {
        return List.of(from, to);
    }

    @Override
    public double twiceArea() {
        return from.cross(to);
    }

    @Override
    public Point moment() {
        // triangle origin-from-to: area times its centroid
        return from.plus(to).times(from.cross(to) / 6);
    }
}
