package buildup.profiles.region;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * The chord polygon of one outline; edge i runs from vertex i to the next and came from stroke {@code strokes[i]}.
 *
 * @param pins vertices of curves at which the outline is to meet another
 */
record Chords(int outline, List<Point> vertices, List<Integer> strokes, Set<Point> pins) {
    static final GeometryFactory FACTORY = new GeometryFactory();

    static Chords of(int number, Outline outline) {
        return of(number, outline, List.of());
    }

    /** @param met points on the outline; those on curves become vertices */
    static Chords of(int number, Outline outline, List<Point> met) {
        List<Point> vertices = new ArrayList<>();
        List<Integer> strokes = new ArrayList<>();
        Set<Point> pins = new HashSet<>();
        for (int s = 0; s < outline.strokes().size(); s++) {
            Stroke stroke = outline.strokes().get(s);
            List<Point> points = new ArrayList<>(stroke.segment().flattened(Tolerance.CHORD));
            if (stroke.segment() instanceof Arc arc) {
                met.forEach(p -> pin(p, arc, points, pins));
            }
            for (int i = 0; i + 1 < points.size(); i++) {
                vertices.add(points.get(i));
                strokes.add(s);
            }
        }
        return new Chords(number, vertices, strokes, pins);
    }

    private static void pin(Point p, Arc arc, List<Point> points, Set<Point> pins) {
        if (arc.distance(p) > Tolerance.SNAP) {
            return;
        }
        double t = arc.nearest(p);
        int after = 0;
        while (after + 1 < points.size() && arc.nearest(points.get(after)) < t) {
            after++;
        }
        for (int i = Math.max(0, after - 1); i <= after; i++) {
            if (points.get(i).near(p, Tolerance.SNAP)) {
                pins.add(points.get(i));
                return;
            }
        }
        points.add(after, p);
        pins.add(p);
    }

    /** The same with other vertices. */
    Chords with(List<Point> others, List<Integer> theirs) {
        return new Chords(outline, others, theirs, pins);
    }

    int size() {
        return vertices.size();
    }

    /** Whether a vertex is where two strokes meet or a pin, and not just any of a curve. */
    boolean isCorner(int vertex) {
        return pins.contains(vertices.get(vertex))
                || !strokes.get(vertex).equals(strokes.get(Math.floorMod(vertex - 1, strokes.size())));
    }

    Point end(int edge) {
        return vertices.get((edge + 1) % vertices.size());
    }

    Envelope envelope() {
        Envelope envelope = new Envelope();
        vertices.forEach(p -> envelope.expandToInclude(p.x(), p.y()));
        return envelope;
    }

    Polygon polygon() {
        Coordinate[] ring = new Coordinate[vertices.size() + 1];
        for (int i = 0; i < vertices.size(); i++) {
            ring[i] = new Coordinate(vertices.get(i).x(), vertices.get(i).y());
        }
        ring[vertices.size()] = ring[0].copy();
        return FACTORY.createPolygon(ring);
    }
}
