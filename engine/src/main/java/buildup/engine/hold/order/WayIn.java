package buildup.engine.hold.order;

import buildup.engine.section.stack.Axis;
import buildup.profiles.outline.Point;
import java.util.List;

/**
 * How a unit gets away from its place, and so, walked backward, how it gets there: a shift, then on without end.
 *
 * @param first direction of the shift, degrees counterclockwise from straight out
 * @param shift how far, in; 0 when it goes straight
 * @param then direction in which it leaves
 * @param clear how far it goes in that direction until it is past everything, in
 */
public record WayIn(double first, double shift, double then, double clear) {
    static WayIn straight(double then) {
        return new WayIn(then, 0, then, 0);
    }

    WayIn clearBy(double inches) {
        return new WayIn(first, shift, then, inches);
    }

    /** Whether it has no bend. */
    public boolean isStraight() {
        return shift == 0;
    }

    /** The moves that bring it into place, in their order. */
    public List<Point> moves() {
        Point in = back(then, clear);
        return isStraight() ? List.of(in) : List.of(in, back(first, shift));
    }

    private static Point back(double degrees, double inches) {
        Point step = step(degrees).times(-inches);
        // adding 0.0 turns -0.0 into 0.0
        return new Point(step.x() + 0.0, step.y() + 0.0);
    }

    private static Point step(double degrees) {
        int quarter = (int) Math.rint(degrees / 90);
        if (degrees != 90 * quarter) {
            return Point.towards(Math.toRadians(degrees));
        }
        // straight out, up, back and down are exact
        return switch (Math.floorMod(quarter, 4)) {
            case 0 -> new Point(1, 0);
            case 1 -> new Point(0, 1);
            case 2 -> new Point(-1, 0);
            default -> new Point(0, -1);
        };
    }

    /** What has to be done with the piece on its way in, before the last stretch, as {@code be lifted}. */
    public String move() {
        return axis() == Axis.UP
                ? Math.sin(Math.toRadians(first)) > 0 ? "be lifted" : "be lowered"
                : Math.cos(Math.toRadians(first)) > 0 ? "be held out" : "be pushed back";
    }

    /** The axis along which it needs room. */
    public Axis axis() {
        Point along = step(first);
        return Math.abs(along.y()) >= Math.abs(along.x()) ? Axis.UP : Axis.OUT;
    }
}
