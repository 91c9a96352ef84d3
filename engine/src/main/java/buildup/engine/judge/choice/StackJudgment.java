package buildup.engine.judge.choice;

import buildup.engine.judge.must.MustResult;
import buildup.profiles.outline.Tolerance;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How one stack stands to the goal.
 *
 * @param built whether there is such a stack; if not, the lists are empty
 * @param dropped whether it does not meet more rules than somebody cares for, and was not asked about further; the lists
 *     are empty then
 * @param musts one for each rule
 * @param wishes how far it is from each wish, in the unit of its figure; absent where it has no such figure, and for the
 *     wish of least change
 */
public record StackJudgment(boolean built, boolean dropped, List<MustResult> musts, List<OptionalDouble> wishes) {
    /** Sizes of which no stack can be made. */
    public static final StackJudgment NOT_BUILT = new StackJudgment(false, false, List.of(), List.of());

    /** There is such a stack, and it does not meet more rules than somebody cares for: nothing else was asked. */
    public static final StackJudgment DROPPED = new StackJudgment(true, true, List.of(), List.of());

    /** How a stack that there is stands to each rule, and how far it is from each wish. */
    public static StackJudgment of(List<MustResult> musts, List<OptionalDouble> wishes) {
        return new StackJudgment(true, false, musts, wishes);
    }

    /** Copies the lists. */
    public StackJudgment {
        musts = List.copyOf(musts);
        wishes = List.copyOf(wishes);
    }

    /** Whether another has the same figures. */
    public boolean tells(StackJudgment other) {
        boolean same = built == other.built;
        for (int i = 0; same && i < musts.size(); i++) {
            same = same(musts.get(i).figure(), other.musts.get(i).figure());
        }
        for (int i = 0; same && i < wishes.size(); i++) {
            same = same(wishes.get(i), other.wishes.get(i));
        }
        return same;
    }

    private static boolean same(OptionalDouble one, OptionalDouble other) {
        return one.isPresent() == other.isPresent() && Math.abs(one.orElse(0) - other.orElse(0)) <= Tolerance.SAME_SIZE;
    }

    /** How many rules it does not meet. */
    public int unmet() {
        return (int) musts.stream().filter(must -> !must.met()).count();
    }
}
