package buildup.profiles.region;

import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** The chord polygon of one outline; edge i runs from vertex i to the next and came from stroke {@code strokes[i]}. */
record Chords(int outline, List<Point> vertices, List<Integer> strokes) {
    static final GeometryFactory FACTORY = new GeometryFactory();

    static Chords of(int number, Outline outline) {
        List<Point> vertices = new ArrayList<>();
        List<Integer> strokes = new ArrayList<>();
        for (int s = 0; s < outline.strokes().size(); s++) {
            Stroke stroke = outline.strokes().get(s);
            List<Point> points = stroke.segment().flattened(Tolerance.CHORD);
            for (int i = 0; i + 1 < points.size(); i++) {
                vertices.add(points.get(i));
                strokes.add(s);
            }
        }
        return new Chords(number, vertices, strokes);
    }

    int size() {
        return vertices.size();
    }

    /** Whether a vertex is where two strokes meet, and not one of a curve. */
    boolean isCorner(int vertex) {
        return !strokes.get(vertex).equals(strokes.get(Math.floorMod(vertex - 1, strokes.size())));
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
