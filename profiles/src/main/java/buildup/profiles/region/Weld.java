package buildup.profiles.region;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/**
 * Closes gaps and laps thinner than touching: a corner of a later polygon goes to the nearest vertex of an earlier one,
 * else onto its nearest edge; an earlier corner near a later edge becomes a vertex of it. The chords of an arc are left
 * alone, so that a hollow that runs out tangent to its neighbor keeps its length, unless an arc of the other outline
 * lies in it or round it. Nearer than coincident is left to the noder.
 */
final class Weld {
    private final List<Outline> outlines;

    private Weld(List<Outline> outlines) {
        this.outlines = outlines;
    }

    /** @param polygons of {@code outlines}, in the same order */
    static List<Chords> weld(List<Chords> polygons, List<Outline> outlines) {
        return new Weld(outlines).weld(polygons);
    }

    /**
     * A polygon as given, and what became of it. What is near is told from the one, where it went from the other, so that
     * a corner that was moved brings near nothing that was not, and takes along what was.
     *
     * @param vertices where each vertex of {@code given} went
     */
    private record Welded(Chords given, List<Point> vertices, Chords moved) {
        static Welded unmoved(Chords given) {
            return new Welded(given, given.vertices(), given);
        }

        /** The place on it that is nearest to a point. */
        Point foot(Point p) {
            Line nearest = new Line(moved.vertices().get(0), moved.end(0));
            for (int edge = 1; edge < moved.size(); edge++) {
                Line line = new Line(moved.vertices().get(edge), moved.end(edge));
                if (line.distance(p) < nearest.distance(p)) {
                    nearest = line;
                }
            }
            return nearest.at(nearest.nearest(p));
        }
    }

    private List<Chords> weld(List<Chords> polygons) {
        List<Welded> welded = new ArrayList<>();
        List<Envelope> boxes = new ArrayList<>();
        for (Chords later : polygons) {
            Envelope box = later.envelope();
            boxes.add(new Envelope(box));
            box.expandBy(Tolerance.TOUCHING);
            List<Welded> near = new ArrayList<>();
            for (int i = 0; i < welded.size(); i++) {
                if (boxes.get(i).intersects(box)) {
                    near.add(welded.get(i));
                }
            }
            welded.add(near.isEmpty() ? Welded.unmoved(later) : weld(later, near));
        }
        return welded.stream().map(Welded::moved).toList();
    }

    private Welded weld(Chords later, List<Welded> earlier) {
        Chords vertices = movedVertices(later, earlier);
        Chords moved = inserted(later, vertices, earlier);
        if (moved.vertices().equals(later.vertices()) && moved.strokes().equals(later.strokes())) {
            return Welded.unmoved(later);
        }
        Chords clean = clean(moved);
        // a feature thinner than touching may fold up: then the polygon stays as it was given
        return clean.size() >= 3 && clean.polygon().isValid()
                ? new Welded(later, vertices.vertices(), clean)
                : Welded.unmoved(later);
    }

    private Chords movedVertices(Chords later, List<Welded> earlier) {
        List<Point> vertices = new ArrayList<>();
        for (int i = 0; i < later.size(); i++) {
            Point vertex = later.vertices().get(i);
            vertices.add(welds(later, i, earlier) ? target(later, i, earlier) : vertex);
        }
        return later.with(vertices, later.strokes());
    }

    private boolean welds(Chords polygon, int vertex, List<Welded> others) {
        return polygon.isCorner(vertex)
                || (segment(polygon, vertex) instanceof Arc arc
                        && others.stream().anyMatch(other -> liesAlong(arc, other.given)));
    }

    private Segment segment(Chords polygon, int edge) {
        return outlines.get(polygon.outline())
                .strokes()
                .get(polygon.strokes().get(edge))
                .segment();
    }

    private boolean liesAlong(Arc arc, Chords other) {
        return outlines.get(other.outline()).strokes().stream()
                .anyMatch(stroke -> stroke.segment() instanceof Arc near
                        && near.center().near(arc.center(), Tolerance.TOUCHING)
                        && Math.abs(near.radius() - arc.radius()) <= Tolerance.TOUCHING);
    }

    private static Point target(Chords later, int number, List<Welded> earlier) {
        Point vertex = later.vertices().get(number);
        Point corner = vertex;
        double nearestCorner = Tolerance.TOUCHING;
        Point foot = vertex;
        double nearestFoot = Tolerance.TOUCHING;
        for (Welded polygon : earlier) {
            Chords given = polygon.given;
            for (int edge = 0; edge < given.size(); edge++) {
                Point a = given.vertices().get(edge);
                Point b = given.end(edge);
                if (away(vertex, a, b)) {
                    continue;
                }
                if (vertex.distance(a) < nearestCorner) {
                    nearestCorner = vertex.distance(a);
                    corner = polygon.vertices.get(edge);
                }
                Line line = new Line(a, b);
                double distance = line.distance(vertex);
                if (distance < nearestFoot && !isPassedThrough(later, number, line)) {
                    nearestFoot = distance;
                    foot = polygon.foot(vertex);
                }
            }
        }
        if (foot.distance(vertex) <= Tolerance.COINCIDENT) {
            return vertex;
        }
        return nearestCorner < Tolerance.TOUCHING ? corner : foot;
    }

    private static boolean away(Point p, Point a, Point b) {
        double reach = Tolerance.TOUCHING;
        return p.x() < Math.min(a.x(), b.x()) - reach
                || p.x() > Math.max(a.x(), b.x()) + reach
                || p.y() < Math.min(a.y(), b.y()) - reach
                || p.y() > Math.max(a.y(), b.y()) + reach;
    }

    /** Near is near to the edges as given: an end that was moved takes its edges along, and they touch what they touched. */
    private Chords inserted(Chords given, Chords later, List<Welded> earlier) {
        List<Point> vertices = new ArrayList<>();
        List<Integer> strokes = new ArrayList<>();
        for (int edge = 0; edge < later.size(); edge++) {
            Line line = new Line(later.vertices().get(edge), later.end(edge));
            vertices.add(line.from());
            strokes.add(later.strokes().get(edge));
            Line before = new Line(given.vertices().get(edge), given.end(edge));
            for (Point p : between(before, line, later, earlier)) {
                vertices.add(p);
                strokes.add(later.strokes().get(edge));
            }
        }
        return later.with(vertices, strokes);
    }

    /**
     * Earlier vertices near the inside of an edge, in the order of the edge; none where all of them are on it, which the
     * noder sees to. Where one bends the edge, those that were on it have to stay on it.
     */
    private List<Point> between(Line given, Line line, Chords later, List<Welded> earlier) {
        List<Point> found = new ArrayList<>();
        List<Welded> own = List.of(Welded.unmoved(later));
        boolean bends = false;
        for (Welded polygon : earlier) {
            for (int i = 0; i < polygon.given.size(); i++) {
                Point before = polygon.given.vertices().get(i);
                if (away(before, given.from(), given.to()) || !welds(polygon.given, i, own)) {
                    continue;
                }
                Point p = polygon.vertices.get(i);
                if (given.distance(before) < Tolerance.TOUCHING
                        && !p.near(line.from(), Tolerance.TOUCHING)
                        && !p.near(line.to(), Tolerance.TOUCHING)
                        && !isPassedThrough(polygon.given, i, given)) {
                    found.add(p);
                    bends |= line.distance(p) > Tolerance.COINCIDENT;
                }
            }
        }
        if (!bends) {
            return List.of();
        }
        found.sort((p, q) -> Double.compare(line.nearest(p), line.nearest(q)));
        return found;
    }

    /** Whether a corner stands out of an edge that both its own edges cross: they meet it as they are. */
    private static boolean isPassedThrough(Chords polygon, int corner, Line edge) {
        Point way = edge.direction(0);
        Point tip = polygon.vertices().get(corner);
        Point before = polygon.vertices().get(Math.floorMod(corner - 1, polygon.size()));
        return out(tip, edge, way) > Tolerance.COINCIDENT
                && out(before, edge, way) < -Tolerance.TOUCHING
                && out(polygon.end(corner), edge, way) < -Tolerance.TOUCHING;
    }

    /** How far a point lies on the air's side of an edge. */
    private static double out(Point p, Line edge, Point way) {
        return p.minus(edge.from()).cross(way);
    }

    /**
     * Drops vertices that welding made needless: doubles, and tips of spikes without width, where the two sides of a
     * narrow quirk came down on one edge. Such a spike is not seen by a test for validity when its sides differ in the
     * last digit, yet no overlay can tell its inside from its outside.
     */
    private static Chords clean(Chords chords) {
        List<Point> vertices = new ArrayList<>(chords.vertices());
        List<Integer> strokes = new ArrayList<>(chords.strokes());
        int at = 0;
        int passed = 0;
        while (passed < vertices.size() && vertices.size() > 2) {
            int before = Math.floorMod(at - 1, vertices.size());
            Point a = vertices.get(before);
            Point tip = vertices.get(at);
            Point b = vertices.get((at + 1) % vertices.size());
            if (isSpike(a, tip, b)) {
                // what stays of the two edges is the end of the longer one
                strokes.set(before, strokes.get(a.distance(tip) > b.distance(tip) ? before : at));
                vertices.remove(at);
                strokes.remove(at);
                at %= vertices.size();
                passed = 0;
            } else {
                at = (at + 1) % vertices.size();
                passed++;
            }
        }
        return chords.with(vertices, strokes);
    }

    /** Whether the way on from {@code tip} runs back on the way to it, or does not leave it. */
    private static boolean isSpike(Point a, Point tip, Point b) {
        if (tip.near(b, Tolerance.COINCIDENT)) {
            return true;
        }
        boolean back = tip.minus(a).dot(b.minus(tip)) < 0;
        return back
                && (new Line(a, tip).distance(b) <= Tolerance.COINCIDENT
                        || new Line(tip, b).distance(a) <= Tolerance.COINCIDENT);
    }
}
