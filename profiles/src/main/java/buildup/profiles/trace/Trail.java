package buildup.profiles.trace;

import buildup.profiles.outline.Point;
import java.util.List;

/**
 * A run of traced points in the order in which they were drawn, in the unit of the tracing, y up.
 *
 * @param points at least two
 * @param closed whether the last point goes on to the first
 */
public record Trail(List<Point> points, boolean closed) {
    public Trail {
        points = List.copyOf(points);
    }
}
