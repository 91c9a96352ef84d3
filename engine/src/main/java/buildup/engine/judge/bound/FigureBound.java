package buildup.engine.judge.bound;

import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.bound.form.Range;
import buildup.engine.judge.must.MustRule;
import buildup.engine.judge.must.WishRule;
import buildup.profiles.outline.Tolerance;

/**
 * What is known of the figures that a line leaves, for every stack of a box: a line is judged by its worst figure. Of a stack
 * that has none the same must be true of 0, since in many sheets no row is none; so it is said only of figures that are
 * surely there, or of what 0 is no better than.
 *
 * @param greatest the greatest of the figures is no less; negative infinity where that is not known
 * @param least the least of them is no more; infinity where that is not known
 */
public record FigureBound(double greatest, double least) {
    /** Nothing is known. */
    public static final FigureBound UNKNOWN = new FigureBound(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** What rounding leaves between a figure and its bound, on both sides. */
    private static final double SLACK = 2 * Tolerance.COINCIDENT;

    /** Of one figure alone. */
    static FigureBound of(Range range) {
        return new FigureBound(range.least(), range.most());
    }

    /** What two say of the same figures. */
    FigureBound and(FigureBound other) {
        return new FigureBound(Math.max(greatest, other.greatest), Math.min(least, other.least));
    }

    /** Whether no stack of the box meets a rule. */
    public boolean missed(MustRule rule) {
        return switch (rule.relation()) {
            case AT_MOST, LESS -> greatest > rule.value() + SLACK;
            case AT_LEAST, MORE -> least < rule.value() - SLACK;
            case EQUAL ->
                greatest > rule.value() + rule.within() + SLACK || least < rule.value() - rule.within() - SLACK;
        };
    }

    /** No stack of the box is nearer to a wish, in the unit of its figure; negative infinity where that is not known. */
    public double far(WishRule wish) {
        return switch (wish.aim()) {
            case LEAST -> greatest;
            case MOST -> -least;
            case NEAR -> Math.max(0, Math.max(greatest - wish.target(), wish.target() - least));
            case LEAST_CHANGE -> 0;
        };
    }

    /** Tells what is known of one figure over any box. */
    interface Bounder {
        /** What is known of the figure for the stacks of a box. */
        FigureBound of(ChoiceBox box);
    }
}
