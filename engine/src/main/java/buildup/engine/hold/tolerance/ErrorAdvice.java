package buildup.engine.hold.tolerance;

import buildup.engine.section.stack.Axis;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What would make a figure come out right more often; tried in as many builds.
 *
 * @param figure number of the figure
 * @param held numbers of the sources to be held closer; none when a piece is to be ripped on site
 * @param to the spread to hold them to, in
 * @param adjustable the piece to be left wide and ripped on site
 * @param axis across which it is ripped
 * @param at where its far edge then sits, in
 * @param chance share of the builds in which the figure is still not what is wanted
 */
public record ErrorAdvice(
        int figure,
        List<Integer> held,
        OptionalDouble to,
        OptionalInt adjustable,
        Optional<Axis> axis,
        OptionalDouble at,
        double chance) {
    /** Copies the list. */
    public ErrorAdvice {
        held = List.copyOf(held);
    }
}
