package buildup.engine.judge.must;

import buildup.shared.notice.Mark;
import buildup.shared.sheet.Sheet;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * One line under {@code wish:}: what a search is to come near where several stacks meet what they must.
 *
 * @param text as written
 * @param aim what is wished of the figure
 * @param figure of the sheets; absent for {@link Aim#LEAST_CHANGE}
 * @param target that it is to come near, in the unit of its quantity; zero for other aims
 * @param weight beside other wishes
 */
public record WishRule(String text, Mark mark, Aim aim, Optional<AskedFigure> figure, double target, double weight) {
    /** More than any figure that something bounds; a number, so that it can be added to others. */
    private static final double ENDLESS = 1e9;

    /** What is wished of a figure. */
    public enum Aim {
        /** As little as may be. */
        LEAST,
        /** As much as may be. */
        MOST,
        /** As near to the target as may be. */
        NEAR,
        /** As little changed from today's stack as may be. */
        LEAST_CHANGE
    }

    /** The figure that is wished for as a rule, the target its value; absent for the least change, which is no figure. */
    public Optional<MustRule> asRule() {
        MustRule.Relation relation = switch (aim) {
            case LEAST, LEAST_CHANGE -> MustRule.Relation.AT_MOST;
            case MOST -> MustRule.Relation.AT_LEAST;
            case NEAR -> MustRule.Relation.EQUAL;
        };
        return figure.map(asked -> new MustRule(text, mark, asked, relation, target, 0));
    }

    /**
     * How far a stack is from what is wished, the worst of the figures that its words leave; less is better. Nothing for a
     * stack without such a figure, and for the wish of least change, which no sheet knows.
     *
     * @param sheets of the stack by their keys
     */
    public OptionalDouble far(Function<String, Optional<Sheet>> sheets) {
        return far(figure.map(asked -> asked.of(sheets)).orElse(List.of()));
    }

    /**
     * The same by the figures themselves.
     *
     * @param figures that its words leave, infinite where nothing bounds one
     */
    public OptionalDouble far(Collection<Double> figures) {
        double far = figures.stream().mapToDouble(this::far).max().orElse(Double.POSITIVE_INFINITY);
        return far == Double.POSITIVE_INFINITY ? OptionalDouble.empty() : OptionalDouble.of(Math.max(far, -ENDLESS));
    }

    private double far(double figured) {
        return switch (aim) {
            case LEAST -> figured;
            case MOST -> -figured;
            case NEAR -> Math.abs(figured - target);
            case LEAST_CHANGE -> 0;
        };
    }
}
