package buildup.profiles.region;

import java.util.Arrays;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** Least width of a polygon over all directions. */
final class Width {
    private Width() {}

    /**
     * The least width of a convex shape is square to one of its edges. Each edge is measured to its farthest corner;
     * the library's own search walks round to the next greater distance, and on corners that are in line but for the
     * last digit it stops at once and answers nearly 0 (see the tests).
     */
    static double least(Polygon polygon) {
        Coordinate[] hull = polygon.convexHull().getCoordinates();
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
