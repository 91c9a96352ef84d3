package buildup.profiles.trace.ring;

import buildup.profiles.outline.Point;
import java.util.List;

/**
 * A run of traced points in the order in which they were drawn, in the unit of the tracing, y up.
 *
 * @param points at least two
 * @param closed whether the last point goes on to the first
 * @param layers names of the layers or groups that hold it, the outermost first
 */
public record Trail(List<Point> points, boolean closed, List<String> layers) {
    /** Copies the lists. */
    public Trail {
        points = List.copyOf(points);
        layers = List.copyOf(layers);
    }

    /** A trail of a drawing without layers. */
    public Trail(List<Point> points, boolean closed) {
        this(points, closed, List.of());
    }

    /** The same way through other points. */
    public Trail through(List<Point> others) {
        return new Trail(others, closed, layers);
    }
}
