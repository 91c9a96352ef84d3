package buildup.profiles.region;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.List;

/**
 * A closed boundary of a region as labeled true segments, wood on the left: counterclockwise round wood, clockwise round
 * a hole. {@code inside} lies within what the ring encloses.
 */
public record Ring(List<Bound> bounds, Point inside) {
    public Ring {
        bounds = List.copyOf(bounds);
    }

    /** Enclosed area in square inches, positive for both senses of walk. */
    public double area() {
        Point home = bounds.get(0).segment().from();
        double twice = 0;
        for (int i = 0; i < bounds.size(); i++) {
            Segment segment = bounds.get(i).segment().moved(Motion.shift(-home.x(), -home.y()));
            Point next = bounds.get((i + 1) % bounds.size()).segment().from().minus(home);
            // where welding closed a gap, neighbors end up to the touching distance apart: close it straight
            twice += segment.twiceArea() + segment.to().cross(next);
        }
        return Math.abs(twice) / 2;
    }

    /** The length of all its bounds, in. */
    public double length() {
        return bounds.stream().mapToDouble(bound -> bound.segment().length()).sum();
    }

    /** The least box round it, in. */
    public Box box() {
        return Box.around(bounds.stream().map(bound -> bound.segment().box()).toList());
    }

    /** Whether any of it belongs to the outline of that number. */
    public boolean touches(int outline) {
        return bounds.stream().anyMatch(bound -> bound.outline() == outline);
    }
}
