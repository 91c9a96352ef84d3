package buildup.engine.judge.proportion;

/**
 * A piece and what of it hangs free.
 *
 * @param body its number
 * @param bearing how wide it bears on what carries it, in
 * @param overhang how far it projects beyond that, in
 */
public record Overhang(int body, double bearing, double overhang) {
    /** Overhang in widths of the bearing. */
    public double ratio() {
        return overhang / bearing;
    }
}
