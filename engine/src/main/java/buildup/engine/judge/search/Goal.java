package buildup.engine.judge.search;

import buildup.engine.judge.choice.StackJudgment;
import buildup.engine.judge.must.MustResult;
import buildup.engine.judge.must.MustRule;
import buildup.engine.judge.must.WishRule;
import buildup.profiles.outline.Tolerance;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What a search is to find.
 *
 * @param rules that have to be met
 * @param wishes that are to be come near
 * @param scales for each wish, what one of it is worth: today's figure or the target, so that wishes of different units can
 *     be added
 */
public record Goal(List<MustRule> rules, List<WishRule> wishes, List<Double> scales) {
    /** Copies the lists. */
    public Goal {
        rules = List.copyOf(rules);
        wishes = List.copyOf(wishes);
        scales = List.copyOf(scales);
    }

    /** @param today how today's stack stands to these */
    static Goal of(List<MustRule> rules, List<WishRule> wishes, StackJudgment today) {
        return new Goal(
                rules,
                wishes,
                IntStream.range(0, wishes.size())
                        .mapToObj(i -> scale(
                                wishes.get(i), today.built() ? today.wishes().get(i) : OptionalDouble.empty()))
                        .toList());
    }

    private static double scale(WishRule wish, OptionalDouble today) {
        double scale = wish.aim() == WishRule.Aim.NEAR ? Math.abs(wish.target()) : Math.abs(today.orElse(1));
        return scale < Tolerance.SAME_SIZE ? 1 : scale;
    }

    /**
     * How far a stack is from what is wished; less is better.
     *
     * @param change how much it differs from today's, as a share of all that could
     */
    double score(StackJudgment judged, double change) {
        double score = 0;
        for (int i = 0; i < wishes.size(); i++) {
            WishRule wish = wishes.get(i);
            double far = wish.aim() == WishRule.Aim.LEAST_CHANGE
                    ? change
                    : judged.wishes().get(i).orElse(Double.POSITIVE_INFINITY) / scales.get(i);
            score += wish.weight() * far;
        }
        return score;
    }

    /**
     * Whether an answer is as near to every wish as can be, so that no stack is nearer, tried or not: nothing lies nearer to
     * a target than the target, and no change is less than none.
     */
    boolean isReached(Optional<Answered> answer) {
        return !wishes.isEmpty()
                && wishes.stream()
                        .allMatch(wish -> wish.aim() == WishRule.Aim.NEAR || wish.aim() == WishRule.Aim.LEAST_CHANGE)
                && answer.filter(one -> one.candidate().score() <= Tolerance.COINCIDENT)
                        .isPresent();
    }

    /** How much of the rules is missing, each as a share of its value, so that different units can be added. */
    double missing(StackJudgment judged) {
        double missing = 0;
        for (int i = 0; i < rules.size(); i++) {
            MustResult must = judged.musts().get(i);
            if (!must.met()) {
                double value = Math.abs(rules.get(i).value());
                missing += must.missing().orElse(Double.POSITIVE_INFINITY) / (value < Tolerance.SAME_SIZE ? 1 : value);
            }
        }
        return missing;
    }
}
