package buildup.profiles.member;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A quarter of an ellipse as tangent arcs, two to each of its parts, so that it stays an outline of lines and arcs.
 *
 * <p>Each pair of arcs is tangent to the ellipse at the ends of its part and to each other at the place where the
 * bisector of the joining circle meets it (K. M. Bolton, "Biarc curves", Computer-Aided Design 7 (1975) 89-92, with the
 * two tangent lengths equal). The distance from the ellipse falls with the cube of the number of parts.
 */
final class EllipseQuarter {
    /** Keeps the arcs within 1e-4 of the longer half axis of the ellipse, in to in, up to 10 to 1; tested. */
    private static final int PARTS = 12;

    private EllipseQuarter() {}

    /** The arcs from {@code at} by {@code first + second}, along {@code first} at the start, {@code second} at the end. */
    static List<Arc> arcs(Point at, Point first, Point second) {
        Point center = at.plus(second);
        List<Arc> arcs = new ArrayList<>();
        Point from = at;
        Point way = first.unit();
        for (int k = 1; k <= PARTS; k++) {
            double angle = Math.PI / 2 * k / PARTS;
            boolean last = k == PARTS;
            Point to = last
                    ? at.plus(first).plus(second)
                    : center.plus(first.times(Math.sin(angle))).minus(second.times(Math.cos(angle)));
            Point next = last
                    ? second.unit()
                    : first.times(Math.cos(angle))
                            .plus(second.times(Math.sin(angle)))
                            .unit();
            pair(from, way, to, next, arcs);
            from = to;
            way = next;
        }
        return arcs;
    }

    private static void pair(Point from, Point way, Point to, Point next, List<Arc> arcs) {
        Point chord = to.minus(from);
        Point both = way.plus(next);
        // equal lengths d along both tangents: |chord - d both| = 2 d
        double a = 4 - both.dot(both);
        double b = 2 * chord.dot(both);
        double c = -chord.dot(chord);
        double d = (-b + Math.sqrt(b * b - 4 * a * c)) / (2 * a);
        Point join = from.plus(way.times(d)).towards(to.minus(next.times(d)), 0.5);
        arcs.add(arc(from, way, join));
        arcs.add(arc(to, next.times(-1), join).reversed());
    }

    /** The arc from a place in a direction to another place. */
    private static Arc arc(Point from, Point way, Point to) {
        Point chord = to.minus(from);
        double bend = chord.dot(chord) / (2 * way.left().dot(chord));
        return new Arc(from, to, from.plus(way.left().times(bend)), bend > 0);
    }
}
