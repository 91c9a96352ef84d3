package buildup.engine.hold.support;

import buildup.profiles.outline.Point;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How a group of pieces stands on its bearing, by itself.
 *
 * @param body the piece whose bearing it is, or the one that carries the group
 * @param carrier whether {@code body} carries the group (else it is the lowest of it)
 * @param group all pieces of the group
 * @param bearingBack, bearingFace outer ends of the level bearing on grounded bodies, x, in
 * @param level height of the bearing, in
 * @param weight of the group, pounds per foot of run
 * @param resultant x of the group's weight, in
 * @param load user loads on the group, pounds per foot
 * @param loaded x of weight and user loads together, in
 * @param overturning moment of weight and loads about the governing end of the bearing, in-lb per foot; 0 when it stands
 * @param holdBack horizontal pull at {@link #holdAt} that keeps it, pounds per foot; absent when it stands
 * @param holdAt where a nail would hold it back
 * @param holdDown the pull straight down at the back end that keeps it, pounds per foot; absent when it stands
 */
public record Balance(
        int body,
        boolean carrier,
        List<Integer> group,
        double bearingBack,
        double bearingFace,
        double level,
        double weight,
        double resultant,
        double load,
        double loaded,
        double overturning,
        OptionalDouble holdBack,
        Point holdAt,
        OptionalDouble holdDown,
        Point downAt) {
    public Balance {
        group = List.copyOf(group);
    }

    public double bearing() {
        return bearingFace - bearingBack;
    }

    /** Distance of the resultant of weight and loads from the nearer end of the bearing, in; negative beyond it. */
    public double margin() {
        return Math.min(loaded - bearingBack, bearingFace - loaded);
    }

    /** The same of the weight alone. */
    public double ownMargin() {
        return Math.min(resultant - bearingBack, bearingFace - resultant);
    }

    /** Distance of the resultant from the nearer end of the bearing's middle third, in; negative outside it. */
    public double middleThirdMargin() {
        return margin() - bearing() / 3;
    }

    public boolean stands() {
        return margin() >= 0;
    }
}
