package buildup.profiles.outline;

import java.util.Collection;
import java.util.Iterator;

/** An upright rectangle: back and face are its least and greatest x, bottom and top its least and greatest y. */
public record Box(double back, double bottom, double face, double top) {
    /** As a record has it; written out, since it is asked at every start, and the JVM would first have to spin it. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Box box
                && Double.compare(back, box.back) == 0
                && Double.compare(bottom, box.bottom) == 0
                && Double.compare(face, box.face) == 0
                && Double.compare(top, box.top) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * (31 * (31 * Double.hashCode(back) + Double.hashCode(bottom)) + Double.hashCode(face))
                + Double.hashCode(top);
    }

    /** The box that has two points as opposite corners, in whatever order. */
    public static Box of(Point a, Point b) {
        return new Box(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.max(a.x(), b.x()), Math.max(a.y(), b.y()));
    }

    /**
     * The box round all of {@code boxes}.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Box around(Collection<Box> boxes) {
        Iterator<Box> each = boxes.iterator();
        if (!each.hasNext()) {
            throw new IllegalArgumentException("no box to go round");
        }
        Box around = each.next();
        while (each.hasNext()) {
            around = around.with(each.next());
        }
        return around;
    }

    /** The least box that holds both. */
    public Box with(Box other) {
        return new Box(
                Math.min(back, other.back),
                Math.min(bottom, other.bottom),
                Math.max(face, other.face),
                Math.max(top, other.top));
    }

    /** The least box that holds this one and the point. */
    public Box with(Point p) {
        return with(of(p, p));
    }

    /** The box with so much more on each of its four sides, in; negative makes it smaller. */
    public Box grown(double by) {
        return new Box(back - by, bottom - by, face + by, top + by);
    }

    /** Whether the two boxes come within {@code within} of each other. */
    public boolean near(Box other, double within) {
        return back <= other.face + within
                && other.back <= face + within
                && bottom <= other.top + within
                && other.bottom <= top + within;
    }

    /** Whether a point lies in it or at most {@code within} inches outside. */
    public boolean holds(Point p, double within) {
        return p.x() >= back - within && p.x() <= face + within && p.y() >= bottom - within && p.y() <= top + within;
    }

    /** The point as far from the back as from the face, and from the bottom as from the top. */
    public Point middle() {
        return new Point((back + face) / 2, (bottom + top) / 2);
    }

    /** From back to face, in. */
    public double width() {
        return face - back;
    }

    /** From bottom to top, in. */
    public double height() {
        return top - bottom;
    }
}
