package buildup.profiles.region;

import buildup.profiles.outline.Point;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;

/** Least width of a shape over all directions. */
final class Width {
    private Width() {}

    /**
     * The least width of a convex shape is square to one of its edges. Each edge is measured to its farthest corner;
     * the library's own search walks round to the next greater distance, and on corners that are in line but for the
     * last digit it stops at once and answers nearly 0 (see the tests).
     */
    static double least(List<Point> vertices) {
        Coordinate[] corners =
                vertices.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
        Coordinate[] hull =
                new ConvexHull(corners, Chords.FACTORY).getConvexHull().getCoordinates();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 1 < hull.length; i++) {
            Coordinate from = hull[i];
            Coordinate to = hull[i + 1];
            double width = Arrays.stream(hull)
                    .mapToDouble(corner -> Distance.pointToLinePerpendicular(corner, from, to))
                    .max()
                    .orElse(0);
            least = Math.min(least, width);
        }
        return least;
    }
}
