package buildup.engine.hold.support;

import buildup.engine.hold.statics.FirstToGive;
import buildup.profiles.outline.Point;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a group of pieces stands on the level bearing that all its carriers give it together.
 *
 * @param piece the first of the pieces of the group that bear
 * @param carriers the bodies that it bears on, in the order of putting up
 * @param group all pieces of the group, in the order of putting up
 * @param bearingBack, bearingFace outer ends of the level bearing, x, in
 * @param level height of the bearing, in
 * @param weight of the group, pounds per foot of run
 * @param resultant x of the group's weight, in
 * @param load user loads on the group, pounds per foot
 * @param loaded x of weight and user loads together, in
 * @param overturning moment of weight and loads about the governing end of the bearing, in-lb per foot; 0 when they fall
 *     inside
 * @param holdBack horizontal pull at {@link #holdAt} that keeps it, pounds per foot; absent when none is needed
 * @param holdAt where a nail would hold it back
 * @param holdDown the pull straight down at {@link #downAt} that keeps it, pounds per foot; absent when none is needed
 * @param downAt where a nail would hold it down
 * @param kept what keeps it: the verdict on the whole stack, for this group
 */
public record Balance(
        int piece,
        List<Integer> carriers,
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
        Point downAt,
        Kept kept) {
    /** Copies the lists. */
    public Balance {
        carriers = List.copyOf(carriers);
        group = List.copyOf(group);
    }

    /** What keeps a group where it is. */
    public enum Keeper {
        /** Its weight on its bearing. */
        WEIGHT,
        /** Wood or wall beside it, or pieces over it, though its weight falls past its bearing. */
        NEIGHBORS,
        /** The fastenings that are given. */
        FASTENINGS,
        /** The fastenings that are given, once a small gap has closed. */
        AFTER_CLOSING,
        /** Nothing. */
        NOTHING;

        /** In one word. */
        public String word() {
            return switch (this) {
                case WEIGHT -> "weight";
                case NEIGHBORS -> "neighbors";
                case FASTENINGS -> "fastenings";
                case AFTER_CLOSING -> "gap";
                case NOTHING -> "nothing";
            };
        }
    }

    /**
     * What keeps a group, and how well.
     *
     * @param times how many times its weight and loads the fastenings hold before one gives; absent where none matters
     * @param governs what would give first; absent as {@code times}
     */
    public record Kept(Keeper by, OptionalDouble times, Optional<FirstToGive> governs) {
        static Kept by(Keeper keeper) {
            return new Kept(keeper, OptionalDouble.empty(), Optional.empty());
        }
    }

    /** Width between the outer ends of the bearing, in. */
    public double bearing() {
        return bearingFace - bearingBack;
    }

    /** Distance of the resultant of weight and loads from the nearer end of the bearing, in; negative beyond it. */
    public double margin() {
        return Math.min(loaded - bearingBack, bearingFace - loaded);
    }

    /** Distance of the resultant from the nearer end of the bearing's middle third, in; negative outside it. */
    public double middleThirdMargin() {
        return margin() - bearing() / 3;
    }

    /** Whether weight and loads fall past the bearing. */
    public boolean leans() {
        return overturning > 0;
    }

    /** Whether it leans toward the room. */
    public boolean outward() {
        return loaded > bearingFace;
    }

    /** Whether something keeps it, as far as it needs to be kept. */
    public boolean stands() {
        return kept.by() != Keeper.NOTHING;
    }

    /** The same, kept by something else. */
    Balance with(Kept other) {
        return new Balance(
                piece,
                carriers,
                group,
                bearingBack,
                bearingFace,
                level,
                weight,
                resultant,
                load,
                loaded,
                overturning,
                holdBack,
                holdAt,
                holdDown,
                downAt,
                other);
    }
}
