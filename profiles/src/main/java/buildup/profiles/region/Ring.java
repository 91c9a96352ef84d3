package buildup.profiles.region;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A closed boundary of a region as labeled true segments, wood on the left: counterclockwise round wood, clockwise round
 * a hole. Its box and the place within it are worked out when they are first asked for, and kept.
 */
public final class Ring {
    private final List<Bound> bounds;
    private final Supplier<Point> within;
    private Optional<Point> inside = Optional.empty();
    private Optional<Box> box = Optional.empty();

    /** @param inside a place within what the ring encloses */
    public Ring(List<Bound> bounds, Point inside) {
        this(bounds, () -> inside);
    }

    /** @param within finds a place within what the ring encloses, the same each time */
    Ring(List<Bound> bounds, Supplier<Point> within) {
        this.bounds = List.copyOf(bounds);
        this.within = within;
    }

    /** Its stretches, in walking order. */
    public List<Bound> bounds() {
        return bounds;
    }

    /** A place within what it encloses. */
    public Point inside() {
        if (inside.isEmpty()) {
            inside = Optional.of(within.get());
        }
        return inside.get();
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
        if (box.isEmpty()) {
            Box around = bounds.get(0).segment().box();
            for (Bound bound : bounds) {
                around = around.with(bound.segment().box());
            }
            box = Optional.of(around);
        }
        return box.get();
    }

    /** Whether any of it belongs to the outline of that number. */
    public boolean touches(int outline) {
        return bounds.stream().anyMatch(bound -> bound.outline() == outline);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Ring ring && bounds.equals(ring.bounds);
    }

    @Override
    public int hashCode() {
        return bounds.hashCode();
    }

    @Override
    public String toString() {
        return "Ring" + bounds;
    }
}
