package buildup.engine.section.placing;

import buildup.engine.section.stack.Piece;
import buildup.profiles.outline.Box;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Pieces in the places where they sat in other stacks, so that one that sits there again is the same and what is known of
 * its outline stays known. One thread asks.
 */
public final class Seats {
    /** So many are remembered before all are forgotten: a few megabytes. */
    private static final int MOST = 20_000;

    private final IdentityHashMap<Piece, Map<Box, Placed>> known = new IdentityHashMap<>();
    private int count;

    /** The piece in that place; made now if it did not sit there before. */
    Placed of(Piece piece, Box place, Supplier<Placed> made) {
        Map<Box, Placed> own = known.get(piece);
        Placed found = own == null ? null : own.get(place);
        if (found != null) {
            return found;
        }
        if (count >= MOST) {
            known.clear();
            count = 0;
        }
        count++;
        Placed fresh = made.get();
        known.computeIfAbsent(piece, any -> new HashMap<>()).put(place, fresh);
        return fresh;
    }
}
