package buildup.profiles.region;

import buildup.profiles.outline.Point;
import java.util.List;

/**
 * A connected piece of air that wood encloses.
 *
 * @param ring round it, wood on the left
 * @param islands rings of wood that stand in it and do not reach its ring, or only at a point
 * @param wide whether a disc of the touching distance fits into it
 * @param corners the points at which two outlines that meet in nothing but the point close it; empty when it is closed
 *     without
 */
public record Cavity(Ring ring, List<Ring> islands, boolean wide, List<Corner> corners) {
    /** Where outlines, by their numbers, meet in nothing but a point and so close air. */
    public record Corner(Point at, List<Integer> outlines) {
        public Corner {
            outlines = List.copyOf(outlines);
        }
    }

    public Cavity {
        islands = List.copyOf(islands);
        corners = List.copyOf(corners);
    }

    /** Area of the air in square inches. */
    public double area() {
        return ring.area() - islands.stream().mapToDouble(Ring::area).sum();
    }
}
