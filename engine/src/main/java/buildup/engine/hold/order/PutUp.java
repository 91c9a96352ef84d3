package buildup.engine.hold.order;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One step of putting up.
 *
 * @param unit what goes up
 * @param way how it gets there; absent when nothing straight with one bend does
 * @param needs room that the way takes along its first stretch, in; absent when it goes straight
 * @param has room that there is, in; absent when nothing bounds it
 * @param blockedBy bodies in the way, when it cannot go in
 * @param loose whether nothing that it rests on or lies against is there yet
 */
public record PutUp(
        Unit unit,
        Optional<WayIn> way,
        OptionalDouble needs,
        OptionalDouble has,
        List<Integer> blockedBy,
        boolean loose) {
    /** Copies the list. */
    public PutUp {
        blockedBy = List.copyOf(blockedBy);
    }

    /** Whether it can go in. */
    public boolean goes() {
        return blockedBy.isEmpty() && way.isPresent();
    }
}
