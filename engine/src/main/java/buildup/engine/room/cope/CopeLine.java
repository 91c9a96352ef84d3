package buildup.engine.room.cope;

import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/**
 * The line of a cope, seen square to the wall of the coped stick: out is how far along that wall from the corner, up the
 * height. Where two faces meet at an inside corner C, a place that projects by x lies x / tan(C/2) from it along either
 * wall; on the wall itself, at the stick's back, the cut lies x / sin C from the corner.
 */
public final class CopeLine {
    private CopeLine() {}

    /** The line on the face, from its lower end up; at a square corner the section's own lines and arcs. */
    public static List<Segment> onFace(Outline outline, double corner) {
        return stretched(outline, 1 / Math.tan(Math.toRadians(corner / 2)));
    }

    /** The same at the back of the stick, where it lies on its wall. */
    public static List<Segment> onBack(Outline outline, double corner) {
        return stretched(outline, 1 / Math.sin(Math.toRadians(corner)));
    }

    private static List<Segment> stretched(Outline outline, double by) {
        List<Segment> line = new ArrayList<>();
        for (Segment segment : roomSide(outline)) {
            if (Math.abs(by - 1) <= Tolerance.COINCIDENT) {
                line.add(segment);
                continue;
            }
            Point before = segment.from();
            for (Point at : chords(segment)) {
                line.add(new Line(new Point(before.x() * by, before.y()), new Point(at.x() * by, at.y())));
                before = at;
            }
        }
        return List.copyOf(line);
    }

    private static List<Point> chords(Segment segment) {
        List<Point> points = new ArrayList<>(segment.flattened(Tolerance.CHORD));
        // whether or not the first point is among them, the line goes on from it
        points.removeIf(point -> point.near(segment.from(), Tolerance.COINCIDENT));
        if (points.isEmpty() || !points.get(points.size() - 1).near(segment.to(), Tolerance.COINCIDENT)) {
            points.add(segment.to());
        }
        return points;
    }

    /** The outline from its lowest place round the room side to its highest. */
    private static List<Segment> roomSide(Outline outline) {
        List<Segment> ring = outline.strokes().stream().map(Stroke::segment).toList();
        int start = 0;
        int end = 0;
        for (int i = 0; i < ring.size(); i++) {
            if (lower(ring.get(i).from(), ring.get(start).from())) {
                start = i;
            }
            if (higher(ring.get(i).from(), ring.get(end).from())) {
                end = i;
            }
        }
        List<Segment> side = new ArrayList<>();
        for (int i = start; i != end; i = (i + 1) % ring.size()) {
            side.add(ring.get(i));
        }
        return side;
    }

    /** Lower, or as low and farther out: the level underside is not part of the line. */
    private static boolean lower(Point a, Point b) {
        return a.y() < b.y() - Tolerance.COINCIDENT || (Tolerance.same(a.y(), b.y()) && a.x() > b.x());
    }

    private static boolean higher(Point a, Point b) {
        return a.y() > b.y() + Tolerance.COINCIDENT || (Tolerance.same(a.y(), b.y()) && a.x() > b.x());
    }
}
