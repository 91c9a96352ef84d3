package buildup.engine.judge.clearance;

import buildup.catalog.fire.FireRule;
import buildup.shared.notice.Mark;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The opening of a fireplace under the stack, and the rules that are asked about it.
 *
 * @param top height of its upper edge over the datum, in
 * @param left where its left side is along the run, in; absent together with the right one
 * @param right where its right side is along the run, in
 * @param rules that are asked, in the order of the document
 * @param noncombustible names of pieces that do not burn
 * @param beside trim at its sides
 */
public record Firebox(
        double top,
        OptionalDouble left,
        OptionalDouble right,
        List<FireRule> rules,
        Set<String> noncombustible,
        List<Beside> beside,
        Mark mark) {
    /** Copies lists and set. */
    public Firebox {
        rules = List.copyOf(rules);
        noncombustible = Set.copyOf(noncombustible);
        beside = List.copyOf(beside);
    }

    /**
     * Trim beside the opening, a leg or a pilaster, from the hearth up.
     *
     * @param from where it begins along the run, in
     * @param to where it ends along the run, in
     * @param out how far it stands out from the wall plane, in
     * @param onLeft whether it is at the left side of the opening
     * @param away from the side of the opening to its nearer edge, in
     */
    public record Beside(String name, double from, double to, double out, boolean onLeft, double away, Mark mark) {}
}
