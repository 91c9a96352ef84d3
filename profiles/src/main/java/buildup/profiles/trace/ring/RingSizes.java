package buildup.profiles.trace.ring;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import java.util.List;

/** Sizes of rings of points. */
public final class RingSizes {
    private RingSizes() {}

    /** Enclosed area, positive counterclockwise. */
    public static double area(List<Dot> ring) {
        Point home = ring.get(0).at();
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            twice += ring.get(i)
                    .at()
                    .minus(home)
                    .cross(ring.get((i + 1) % ring.size()).at().minus(home));
        }
        return twice / 2;
    }

    /** The box round all points. */
    public static Box box(List<Dot> ring) {
        Point first = ring.get(0).at();
        Box box = Box.of(first, first);
        for (Dot dot : ring) {
            box = box.with(dot.at());
        }
        return box;
    }

    /** The greater of width and height. */
    public static double size(List<Dot> ring) {
        Box box = box(ring);
        return Math.max(box.width(), box.height());
    }

    /** Length from the first point to the last, not round to the first again. */
    public static double way(List<Dot> dots) {
        return length(dots)
                - dots.get(dots.size() - 1).at().distance(dots.get(0).at());
    }

    /** Length of the ring from point to point. */
    public static double length(List<Dot> ring) {
        double length = 0;
        for (int i = 0; i < ring.size(); i++) {
            length += ring.get(i).at().distance(ring.get((i + 1) % ring.size()).at());
        }
        return length;
    }

    /** Distance of a point from the lines between the points of a ring. */
    public static double distance(Point p, List<Dot> ring) {
        return p.distance(nearest(p, ring));
    }

    /** The place on the lines between the points of a ring that is nearest to a point. */
    static Point nearest(Point p, List<Dot> ring) {
        Point best = ring.get(0).at();
        for (int i = 0; i < ring.size(); i++) {
            Point foot =
                    foot(p, ring.get(i).at(), ring.get((i + 1) % ring.size()).at());
            best = foot.distance(p) < best.distance(p) ? foot : best;
        }
        return best;
    }

    /** The place between two points that is nearest to a third. */
    static Point foot(Point p, Point from, Point to) {
        Point way = to.minus(from);
        double length = way.dot(way);
        double share = length > 0 ? Math.max(0, Math.min(1, p.minus(from).dot(way) / length)) : 0;
        return from.plus(way.times(share));
    }
}
