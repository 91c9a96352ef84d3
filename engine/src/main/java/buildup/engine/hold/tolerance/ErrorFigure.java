package buildup.engine.hold.tolerance;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How far one figure of a stack strays.
 *
 * @param name as {@code reveal of bead over frieze}
 * @param drawn as drawn, in
 * @param least, most between what it has to lie, in; absent where nothing is wrong
 * @param worst greatest distance from what is drawn, every source at its worst, in
 * @param rss the root of the sum of the squares of what each source does: what three standard deviations come to where each
 *     source's spread is three of its own
 * @param deviation standard deviation over the builds, in
 * @param chance share of the builds in which it is not what is wanted; absent where nothing is wanted
 * @param moved how far each source alone moves it at its whole spread, in the order of the sources, in
 */
public record ErrorFigure(
        String name,
        double drawn,
        OptionalDouble least,
        OptionalDouble most,
        double worst,
        double rss,
        double deviation,
        OptionalDouble chance,
        List<Double> moved) {
    /** Copies the list. */
    public ErrorFigure {
        moved = List.copyOf(moved);
    }

    /** The part of its variance that a source brings, 0 to 1. */
    public double share(int source) {
        return rss > 0 ? moved.get(source) * moved.get(source) / (rss * rss) : 0;
    }

    /** Whether it is what is wanted as drawn. */
    public boolean sound() {
        return drawn >= least.orElse(drawn) && drawn <= most.orElse(drawn);
    }
}
