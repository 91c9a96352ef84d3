package buildup.engine.judge.along;

import buildup.engine.judge.must.MustRule;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Quantity;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One figure against one free size, all other sizes as they are today.
 *
 * @param place of the size in the document
 * @param scale what the size counts
 * @param now number of today's place among these
 * @param rule that asks for the figure
 * @param held whether the rule has to be met; if not, its figure is only looked at
 * @param places from the least size to the greatest
 * @param turns where the rule turns from met to not met, or back
 * @param breaks where the curve leaps, bends, begins or ends
 */
public record FigureCurve(
        String place,
        Quantity scale,
        int now,
        MustRule rule,
        boolean held,
        List<Place> places,
        List<Turning> turns,
        List<Break> breaks) {
    /** Copies the lists. */
    public FigureCurve {
        places = List.copyOf(places);
        turns = List.copyOf(turns);
        breaks = List.copyOf(breaks);
    }

    /** Whether the size does nothing to the figure. */
    public boolean isFlat() {
        return breaks.isEmpty()
                && places.stream()
                        .allMatch(place -> Math.abs(place.figure().orElse(0)
                                        - places.get(0).figure().orElse(0))
                                <= Tolerance.SAME_SHARE);
    }

    /**
     * One place along the size.
     *
     * @param typed as it is typed in the document
     * @param at what that comes to, in, or in degrees
     * @param figure in the unit of the rule; absent where no stack can be made, or where it has no such figure
     */
    public record Place(String typed, double at, OptionalDouble figure, boolean met) {}

    /** How a curve changes where it breaks. */
    public enum How {
        /** The figure leaps from one value to another. */
        LEAPS,
        /** It goes on at another slope: another piece decides from here. */
        BENDS,
        /** There is such a figure from here on. */
        BEGINS,
        /** There is none from here on. */
        ENDS
    }

    /**
     * A place where the curve breaks.
     *
     * @param at in, or in degrees
     * @param before the figure on the side of smaller sizes; absent where there is none
     * @param after the same on the side of greater ones
     */
    public record Break(double at, How how, OptionalDouble before, OptionalDouble after) {}
}
