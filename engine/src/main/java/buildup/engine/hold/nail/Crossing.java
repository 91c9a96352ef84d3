package buildup.engine.hold.nail;

import java.util.OptionalInt;

/**
 * A stretch of a nail in one thing.
 *
 * @param body number of the body in the section; absent in air
 * @param from, to inches from the head along the nail
 */
public record Crossing(OptionalInt body, Stuff stuff, double from, double to) {
    /** What a nail goes through. */
    public enum Stuff {
        /** A piece, or the wall behind its covering: holds. */
        WOOD,
        /** Plaster or wallboard, floor or ceiling: is crossed and holds nothing. */
        COVERING,
        AIR
    }

    /** How far the shaft runs through it, in. */
    public double length() {
        return to - from;
    }

    /** Whether it is in the body of that number. */
    public boolean in(int number) {
        return body.isPresent() && body.getAsInt() == number;
    }

    /** Whether it is wood, which holds a nail, and not air or plaster. */
    public boolean holds() {
        return stuff == Stuff.WOOD;
    }
}
