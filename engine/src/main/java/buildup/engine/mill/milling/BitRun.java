package buildup.engine.mill.milling;

import buildup.catalog.mill.Cutter;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Phrase;
import buildup.shared.length.Length;
import java.util.Optional;

/**
 * How a bit is run by whoever has no molder: in a router, or a shaper that takes bits. The tables behind it differ; the
 * strictest is taken. They are listed in {@code reference/milling.md}; the maker's marking on the bit governs.
 *
 * @param cutter as the shop calls it
 * @param diameter over its cutting edges, in
 * @param bearing diameter of its pilot, in; none without one
 * @param turns the most that the strictest published table allows, rpm
 * @param rim speed of its rim at so many turns, feet a minute
 * @param feed at which each of its edges cuts a chip of {@link #CHIP}, feet a minute
 * @param lightPasses that it takes when none cuts deeper than {@link #DEEPEST}
 */
record BitRun(
        Phrase cutter,
        double diameter,
        Optional<Double> bearing,
        double turns,
        double rim,
        double feed,
        int lightPasses) {
    /** Chip load, in: the least that two published ranges for hardwood have in common, .005 to .010 and .008 to .012. */
    static final double CHIP = 0.008;

    /** Deepest cut of one pass, in: a published speed guide's limit for profile bits in hardwood. */
    static final double DEEPEST = 0.25;

    /** Cutting edges of a bit; common practice, no source. */
    static final int EDGES = 2;

    /** Nothing for a saw, whose blade has its own marking. */
    static Optional<BitRun> of(Pass pass) {
        Cutter cutter = pass.sized().cutter();
        if (cutter.kind() == Cutter.Kind.SAW) {
            return Optional.empty();
        }
        double diameter = Bit.diameter(pass.sized());
        double turns = RimSpeed.mostTurns(diameter);
        return Optional.of(new BitRun(
                pass.cutter(),
                diameter,
                cutter.pilot().map(Length::toInches),
                turns,
                RimSpeed.of(diameter, turns),
                turns * EDGES * CHIP / 12,
                pass.times() * (int) Math.max(1, Math.ceil(pass.depth() / DEEPEST - Tolerance.COINCIDENT))));
    }
}
