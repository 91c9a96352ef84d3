package buildup.profiles.outline;

import java.util.List;

/**
 * One true stretch of an outline, walked from {@link #from} to {@link #to}; places on it are given by {@code t}, the
 * share of its length walked, 0 to 1.
 */
public sealed interface Segment permits Line, Arc {
    /** Where it starts. */
    Point from();

    /** Where it ends. */
    Point to();

    /** Its length along the curve, in. */
    double length();

    /** The place at {@code t}, from 0 at the start to 1 at the end, in even steps of length. */
    Point at(double t);

    /** Unit direction of the walk at {@code t}. */
    Point direction(double t);

    /** The {@code t} of the place on this segment nearest to {@code p}, within 0 to 1. */
    double nearest(Point p);

    /** The same segment walked the other way. */
    Segment reversed();

    /** The segment that the motion makes of it. */
    Segment moved(Motion motion);

    /** Larger or smaller about the origin; {@code by} above 0. */
    Segment scaled(double by);

    /** The stretch between two places; {@code end} must not be less than {@code start}. */
    Segment part(double start, double end);

    /** True bounds: those of the curve, not of its chords. */
    Box box();

    /**
     * The vertices of a chord path that stays within {@code chordError} inches of the curve, ends included. Vertices
     * lie on the curve; its axis extremes are among them; two arcs of one circle share the vertices of their common
     * stretch, whatever their ends are.
     */
    List<Point> flattened(double chordError);

    /** Twice the area between this walk and the straight walk through the origin, positive counterclockwise. */
    double twiceArea();

    /** First moments (of x and of y) of the same area. */
    Point moment();

    /** The least distance of a point from it, in. */
    default double distance(Point p) {
        return at(nearest(p)).distance(p);
    }
}
