package buildup.engine.look.light;

/**
 * How much of one member one light leaves dark: all that it casts and shades on it together.
 *
 * @param member number of the member on the walk
 * @param length of the member, in
 * @param dark what of it is dark, in
 */
public record Darkness(int member, double length, double dark) {
    /** What share of the member is dark, 0 to 1. */
    public double share() {
        return Math.min(1, dark / length);
    }
}
