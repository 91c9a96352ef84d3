package buildup.engine.judge.search;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.LongConsumer;

/**
 * How long a search may go on.
 *
 * @param tries how many stacks may be judged
 * @param answers how many answers are wanted
 * @param seed of the random starts where not all can be tried
 * @param planned is told what will be done before it is
 * @param stopped whether whoever asked has had enough; the best so far is the answer then
 * @param progress is told how many were judged since it was told last; many threads may tell it
 */
public record SearchLimits(
        long tries,
        int answers,
        long seed,
        Consumer<SearchPlan> planned,
        BooleanSupplier stopped,
        LongConsumer progress) {
    /** Stacks judged unless said otherwise. */
    public static final long USUAL_TRIES = 50_000;

    /** Answers unless said otherwise. */
    public static final int USUAL_ANSWERS = 5;

    /** The same with no more than so many tries. */
    SearchLimits atMost(long most) {
        return new SearchLimits(Math.min(tries, most), answers, seed, planned, stopped, progress);
    }

    /** With nobody looking on. */
    public static SearchLimits of(long tries) {
        return new SearchLimits(tries, USUAL_ANSWERS, 1, plan -> {}, () -> false, judged -> {});
    }
}
