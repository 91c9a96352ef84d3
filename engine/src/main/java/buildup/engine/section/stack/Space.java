package buildup.engine.section.stack;

import java.util.OptionalDouble;

/**
 * The room round the stack: heights over the datum, in. What is absent is not there.
 *
 * @param projection the greatest projection allowed
 */
public record Space(OptionalDouble floor, OptionalDouble ceiling, OptionalDouble projection, Wall wall) {
    /**
     * The wall plane x = 0.
     *
     * @param from where wood or masonry begins behind the plane; absent: it runs on without end
     * @param to where it ends
     * @param solid whether anything stands there at all
     * @param covering thickness of plaster or wallboard between the plane and the framing, 0 when none
     */
    public record Wall(OptionalDouble from, OptionalDouble to, boolean solid, double covering) {}
}
