package buildup.engine.section.stack;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import java.util.OptionalDouble;

/**
 * The room round the stack: heights over the datum, in. What is absent is not there.
 *
 * @param ceiling its height at the wall plane
 * @param slope how far the ceiling rises for every inch into the room; negative where it falls
 * @param projection the greatest projection allowed
 */
public record Space(OptionalDouble floor, OptionalDouble ceiling, double slope, OptionalDouble projection, Wall wall) {
    /**
     * The wall plane x = 0.
     *
     * @param from where wood or masonry begins behind the plane; absent: it runs on without end
     * @param to where it ends
     * @param solid whether anything stands there at all
     * @param covering thickness of plaster or wallboard between the plane and the framing, 0 when none
     */
    public record Wall(OptionalDouble from, OptionalDouble to, boolean solid, double covering) {}

    /**
     * How high a ceiling of this slope has to be at the wall plane to just clear an outline, in: the greatest of
     * y - slope x over the outline. Turned so that the ceiling lies level, it is the top of the outline's box.
     */
    public double reach(Outline outline) {
        if (Math.abs(slope) > 0) {
            double angle = Math.atan(slope);
            Box turned = outline.moved(Motion.turn(-Math.toDegrees(angle))).box();
            return turned.top() / Math.cos(angle);
        }
        return outline.box().top();
    }

    /** How far an outline may rise until it meets the ceiling, in; negative when it is through it. */
    public OptionalDouble left(Outline outline) {
        return ceiling.isPresent() ? OptionalDouble.of(ceiling.getAsDouble() - reach(outline)) : OptionalDouble.empty();
    }

    /** The same room with its ceiling so much higher, in. */
    public Space raised(double by) {
        OptionalDouble higher =
                ceiling.isPresent() ? OptionalDouble.of(ceiling.getAsDouble() + by) : OptionalDouble.empty();
        return new Space(floor, higher, slope, projection, wall);
    }

    /** How high the ceiling is at a distance out from the wall plane, in; absent where none is given. */
    public OptionalDouble ceilingAt(double out) {
        return ceiling.isPresent() ? OptionalDouble.of(ceiling.getAsDouble() + slope * out) : ceiling;
    }
}
