package buildup.engine.judge.choice;

import buildup.engine.judge.bound.StackBounds;
import buildup.engine.judge.must.MustResult;
import buildup.shared.figure.Phrase;
import java.util.List;
import java.util.Optional;

/** Tells how a stack stands to what it must meet, for any text in the place of each free size. Many threads may ask. */
public interface StackJudge {
    /**
     * How the stack with these sizes stands to the goal.
     *
     * @param texts what is typed for each free size, in their order
     */
    StackJudgment judge(List<String> texts);

    /**
     * The same, but of a stack that does not meet more rules than somebody cares for no more need be asked.
     *
     * @param unmet so many rules may be unmet
     * @return {@link StackJudgment#DROPPED} where more are
     */
    StackJudgment judge(List<String> texts, int unmet);

    /** The same as {@link #judge(List)}, the whole composed and every figure read from its sheet. */
    StackJudgment whole(List<String> texts);

    /** For each wish, what the stack with these sizes has of its figure, the worst of several; absent for a wish without one. */
    List<Optional<MustResult>> wished(List<String> texts);

    /** What is known of stacks that are not judged; absent where nothing is. */
    Optional<StackBounds> bounds();

    /**
     * Whether anything of the stack with these sizes hangs on one of them: nothing hangs on the profile of a piece that is
     * left out.
     *
     * @param size its number
     */
    boolean matters(int size, List<String> texts);

    /** Of how many stacks judged so far the whole had to be composed. */
    long composed();

    /**
     * What is wrong with the stack with these sizes and not with today's, whatever its document asks for; the lines under
     * {@code must:} are left aside. One short sentence each.
     */
    List<Phrase> faults(List<String> texts);
}
