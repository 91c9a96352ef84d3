package buildup.engine.hold.support;

import buildup.engine.hold.nail.Fixed;
import java.util.OptionalDouble;

/**
 * What one fastening must hold for a group that leans, and what it may.
 *
 * @param balance the group
 * @param fixed a fastening that ties the group to something outside it
 * @param far the body that it bites in there
 * @param needed pull along the nail at its height that keeps the group by itself, lb per foot of run
 * @param allowable what it may hold, lb per foot
 * @param bite inches of bite in the far body
 * @param biteForLoad the bite at which it would hold, in; absent when no bite would
 * @param biteByRule the bite that the rule for its kind asks for, in
 */
public record Pull(
        Balance balance,
        Fixed fixed,
        int far,
        double needed,
        double allowable,
        double bite,
        OptionalDouble biteForLoad,
        double biteByRule) {
    /** Whether it holds that pull; whether the group then stands is told of the group. */
    public boolean holds() {
        return allowable >= needed;
    }

    /** The larger of the two governs. */
    public double biteNeeded() {
        return Math.max(biteForLoad.orElse(0), biteByRule);
    }
}
