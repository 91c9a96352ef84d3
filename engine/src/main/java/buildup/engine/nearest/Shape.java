package buildup.engine.nearest;

import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.List;

/** An outline to measure distances from, and its chords, which tell the inside from the outside. */
record Shape(List<Segment> segments, List<Point> ring) {
    static Shape of(Outline outline) {
        return new Shape(outline.strokes().stream().map(Stroke::segment).toList(), outline.flattened(Tolerance.CHORD));
    }

    /** Distance of a point from the outline, in, positive outside; nearer than a chord lies off, it counts as outside. */
    double outside(Point p) {
        double least = Double.POSITIVE_INFINITY;
        for (Segment segment : segments) {
            least = Math.min(least, segment.distance(p));
        }
        return least > Tolerance.CHORD && holds(p) ? -least : least;
    }

    private boolean holds(Point p) {
        boolean inside = false;
        for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
            Point a = ring.get(i);
            Point b = ring.get(j);
            if (a.y() > p.y() != b.y() > p.y() && p.x() < (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) + a.x()) {
                inside = !inside;
            }
        }
        return inside;
    }
}
