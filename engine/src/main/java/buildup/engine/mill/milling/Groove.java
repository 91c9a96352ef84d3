package buildup.engine.mill.milling;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/**
 * A square groove: two walls and a floor.
 *
 * @param strokes its first wall, its floor, its other wall
 * @param floor its stroke
 * @param behind wood left behind the floor, in
 * @param beside least wood left outside a wall, in
 */
public record Groove(
        List<Integer> strokes, int floor, String member, double width, double depth, double behind, double beside) {
    /** Wood wanted outside a kerf, in; common practice, no source. */
    public static final double LEAST_BESIDE = 0.25;

    /** Wood wanted behind one, in; common practice, no source. */
    public static final double LEAST_BEHIND = 0.125;

    /** Halfway along its floor. */
    Point middle(MillStick stick) {
        return stick.segment(floor).at(0.5);
    }

    /**
     * Where the floor lies along its side of the stick.
     *
     * @param fromBack whether it is measured from the back, and not from the bottom edge
     * @param from, to its ends, in
     */
    public record Place(boolean fromBack, double from, double to) {}

    /** Where its floor lies, as a fence is set. */
    public Place place(MillStick stick) {
        Box box = stick.segment(floor).box();
        boolean level = box.width() > box.height();
        return level ? new Place(true, box.back(), box.face()) : new Place(false, box.bottom(), box.top());
    }

    static List<Groove> of(MillStick stick) {
        List<Groove> grooves = new ArrayList<>();
        int count = stick.count();
        for (int i = 0; i < count; i++) {
            Segment in = stick.segment((i + count - 1) % count);
            Segment out = stick.segment((i + 1) % count);
            if (stick.segment(i) instanceof Line floor
                    && in instanceof Line first
                    && out instanceof Line second
                    && square(first, floor)
                    && square(floor, second)) {
                Point inward = floor.direction(0).left();
                // a wall borders wood as far as the groove is deep: measured from both its ends
                double beside = Math.min(web(stick, first), web(stick, second));
                grooves.add(new Groove(
                        List.of((i + count - 1) % count, i, (i + 1) % count),
                        i,
                        stick.member(i),
                        floor.length(),
                        Math.min(first.length(), second.length()),
                        across(stick, floor.at(0.5), inward),
                        beside));
            }
        }
        return List.copyOf(grooves);
    }

    /** A right turn of a quarter, to a degree. */
    private static boolean square(Line a, Line b) {
        return a.direction(0).cross(b.direction(0)) < -Math.cos(Math.toRadians(1));
    }

    private static double web(MillStick stick, Line wall) {
        Point inward = wall.direction(0).left();
        double least = Double.POSITIVE_INFINITY;
        for (double t : new double[] {0.02, 0.5, 0.98}) {
            least = Math.min(least, across(stick, wall.at(t), inward));
        }
        return least;
    }

    /** Wood from a place on the outline straight in to where it ends. */
    private static double across(MillStick stick, Point from, Point inward) {
        double far = stick.box().width() + stick.box().height();
        Line ray = new Line(from, from.plus(inward.times(far)));
        return stick.outline().strokes().stream()
                .flatMap(stroke -> Crossings.of(ray, stroke.segment(), Tolerance.SNAP).stream())
                .mapToDouble(from::distance)
                .filter(distance -> distance > 10 * Tolerance.SNAP)
                .min()
                .orElse(far);
    }
}
