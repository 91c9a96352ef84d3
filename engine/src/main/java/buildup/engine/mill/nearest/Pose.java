package buildup.engine.mill.nearest;

import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Rip;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * How a profile is laid onto another: flipped over first if so, then turned, scaled and shifted.
 *
 * @param over upside down, the face still to the room
 * @param turn degrees counterclockwise
 * @param scale 1 for its own size
 */
public record Pose(boolean over, double turn, double scale, Point shift) {
    /** The turn between -180 and 180 degrees. */
    public double turned() {
        return Math.IEEEremainder(turn, 360);
    }

    /** Whether it is laid larger or smaller than it is. */
    public boolean isScaled() {
        return Math.abs(scale - 1) > Tolerance.STEEL;
    }

    static Pose of(boolean over, double turn) {
        return new Pose(over, turn, 1, Point.ORIGIN);
    }

    Pose shifted(Point step) {
        return new Pose(over, turn, scale, shift.plus(step));
    }

    /** Whether it differs from another by the shift alone. */
    boolean sameBut(Pose other) {
        return over == other.over && Double.compare(turn, other.turn) == 0 && Double.compare(scale, other.scale) == 0;
    }

    Outline apply(Outline outline) {
        Outline laid = outline.moved((over ? Motion.OVER : Motion.NONE).then(Motion.turn(turn)));
        Outline sized = scale == 1 ? laid : scaled(laid);
        return sized.moved(Motion.shift(shift.x(), shift.y()));
    }

    private Outline scaled(Outline outline) {
        return Outline.closed(outline.strokes().stream()
                .map(stroke -> new Stroke(stroke.segment().scaled(scale), stroke.member()))
                .toList());
    }

    /** Which side of the profile as the catalog draws it has come to lie on a side of the wanted one. */
    Rip.Side own(Rip.Side side) {
        Motion back = Motion.turn(-turn).then(over ? Motion.OVER : Motion.NONE);
        Point outward = back.apply(outward(side));
        return Stream.of(Rip.Side.values())
                .max(Comparator.comparingDouble(one -> outward(one).dot(outward)))
                .orElse(side);
    }

    private static Point outward(Rip.Side side) {
        return switch (side) {
            case BACK -> new Point(-1, 0);
            case FACE -> new Point(1, 0);
            case BOTTOM -> new Point(0, -1);
            case TOP -> new Point(0, 1);
        };
    }

    /** The quarter turns and flips of a stick on the bench; first the one in which the catalog draws it. */
    static List<Pose> quarters() {
        return Stream.of(false, true)
                .flatMap(over -> Stream.of(0, 180, 90, 270).map(turn -> of(over, turn)))
                .toList();
    }
}
