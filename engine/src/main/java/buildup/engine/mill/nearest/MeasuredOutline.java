package buildup.engine.mill.nearest;

import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.List;

/**
 * An outline to measure distances from, and its chords, which tell the inside from the outside.
 *
 * @param chord greatest distance of a chord from its arc, in
 */
record MeasuredOutline(List<Segment> segments, List<Point> ring, double chord) {
    /**
     * Measured so finely.
     *
     * @param coarser times as coarse as molding is measured, at least 1
     */
    static MeasuredOutline of(Outline outline, double coarser) {
        double chord = Tolerance.CHORD * coarser;
        return new MeasuredOutline(outline.segments(), outline.flattened(chord), chord);
    }

    /** Distance of a point from the outline, in, positive outside; nearer than a chord lies off, it counts as outside. */
    double outside(Point p) {
        double least = Double.POSITIVE_INFINITY;
        for (Segment segment : segments) {
            least = Math.min(least, segment.distance(p));
        }
        return least > chord && Outline.isInside(ring, p) ? -least : least;
    }
}
