package buildup.engine.judge.search;

import buildup.engine.section.free.FreeSize;
import java.math.BigInteger;
import java.util.List;
import java.util.function.IntConsumer;

/**
 * What a search is about to do.
 *
 * @param space how many stacks there are
 * @param tries how many may be tried
 * @param idle the sizes along which, alone, no figure changes that is asked for
 * @param sample judges so many stacks from all over the space, so that whoever has a clock may tell how long it will take
 */
public record SearchPlan(BigInteger space, long tries, List<FreeSize> idle, IntConsumer sample) {
    /** Copies the list. */
    public SearchPlan {
        idle = List.copyOf(idle);
    }

    /** Whether all stacks will be tried. */
    public boolean all() {
        return space.compareTo(BigInteger.valueOf(tries)) <= 0;
    }

    /** How many will be tried, at most. */
    public long most() {
        return space.min(BigInteger.valueOf(tries)).longValue();
    }
}
