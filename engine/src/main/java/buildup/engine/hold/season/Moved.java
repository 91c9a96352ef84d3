package buildup.engine.hold.season;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import java.util.List;

/**
 * How a body has moved: grown by a strain about the place that holds it, and carried along by what holds it.
 *
 * @param out the place that keeps its distance from the wall plane to what holds it
 * @param up the place that keeps its height to what holds it
 * @param carried how far that was carried along, in
 * @param strain by which it has grown
 */
public record Moved(Point out, Point up, Point carried, Strain strain) {
    /** What stands still. */
    static final Moved NOT = new Moved(Point.ORIGIN, Point.ORIGIN, Point.ORIGIN, Strain.NONE);

    /** How far a place of the body has moved, in. */
    public Point at(Point place) {
        return new Point(
                carried.x() + strain.of(place.minus(out)).x(),
                carried.y() + strain.of(place.minus(up)).y());
    }

    /**
     * An outline of the body as it has moved, in chords.
     *
     * @param times so many times as far
     */
    public List<Line> outline(Outline built, double times) {
        List<Point> ring = built.chords().stream()
                .map(point -> point.plus(at(point).times(times)))
                .toList();
        return Line.ring(ring);
    }

    /** The box round the body as it has moved. */
    Box box(Outline built) {
        return Box.around(outline(built, 1).stream().map(Line::box).toList());
    }
}
