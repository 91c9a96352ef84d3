package buildup.engine.hold.tolerance;

/**
 * How errors are drawn.
 *
 * @param asked whether the document asks for them
 * @param builds how many stacks are built
 * @param seed of the draws
 * @param normal whether errors heap up in the middle, a spread then being three standard deviations; else each is as likely
 * @param plumb how far a wall leans for every inch of height, plus and minus
 * @param plumbGiven whether the document says so
 * @param level how far a ceiling rises and falls along the run, plus and minus, in
 * @param levelGiven whether the document says so
 */
public record ErrorSettings(
        boolean asked,
        int builds,
        long seed,
        boolean normal,
        double plumb,
        boolean plumbGiven,
        double level,
        boolean levelGiven) {
    /** The same, asked for whether the document does or not. */
    public ErrorSettings asking() {
        return new ErrorSettings(true, builds, seed, normal, plumb, plumbGiven, level, levelGiven);
    }

    static final int USUAL_BUILDS = 10_000;

    /** Where a piece is moved until it touches: in a time that nobody minds, and a chance is known to 3 in 100. */
    static final int TOUCHING_BUILDS = 1000;

    /** 1/4 in 32: plumb by remodelers' and light-commercial standards, as quoted. */
    static final double USUAL_PLUMB = 0.25 / 32;

    /** Common practice, no source: what a long level finds along the ceiling of a room. */
    static final double USUAL_LEVEL = 0.25;
}
