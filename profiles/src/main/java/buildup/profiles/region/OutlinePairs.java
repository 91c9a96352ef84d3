package buildup.profiles.region;

import buildup.profiles.outline.Outline;
import java.util.IdentityHashMap;
import java.util.function.Supplier;

/**
 * What was found of two outlines beside each other, so that it is found once for stacks that share them. Only the same
 * outline, not one like it, is known again. One thread asks.
 *
 * @param <T> what is found
 */
public final class OutlinePairs<T> {
    /** So many pairs are remembered before all are forgotten: a few megabytes. */
    private static final int MOST = 20_000;

    private final IdentityHashMap<Outline, IdentityHashMap<Outline, T>> known = new IdentityHashMap<>();
    private int pairs;

    /** What is known of the two, in this order; found now if it is not. */
    public T of(Outline first, Outline second, Supplier<T> found) {
        IdentityHashMap<Outline, T> beside = known.get(first);
        T one = beside == null ? null : beside.get(second);
        if (one != null) {
            return one;
        }
        if (pairs >= MOST) {
            known.clear();
            pairs = 0;
        }
        pairs++;
        T fresh = found.get();
        known.computeIfAbsent(first, any -> new IdentityHashMap<>()).put(second, fresh);
        return fresh;
    }
}
