package buildup.engine.section.placing;

import buildup.engine.section.stack.Piece;
import buildup.profiles.outline.Box;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Pieces in the places where they sat in other stacks, so that one that sits there again is the same and what is known of
 * its outline stays known. One thread asks.
 */
public final class Seats {
    /** So many are remembered before all are forgotten: a few megabytes. */
    private static final int MOST = 20_000;

    /** A place, by what tells places on a grid of fractions apart: the low bits of such sizes are all alike. */
    private record Place(Box box) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Place place && box.equals(place.box);
        }

        @Override
        public int hashCode() {
            long bits = Double.doubleToLongBits(box.back());
            bits = 31 * bits + Double.doubleToLongBits(box.bottom());
            bits = 31 * bits + Double.doubleToLongBits(box.face());
            bits = 31 * bits + Double.doubleToLongBits(box.top());
            return (int) ((bits * MIX) >>> 32);
        }
    }

    /** The golden ratio's share of all numbers: it spreads what is multiplied by it over all bits. */
    private static final long MIX = 0x9E3779B97F4A7C15L;

    /** The places of one piece, and the last that was asked for: neighbors in a search mostly ask for it again. */
    private static final class Own {
        private final Map<Place, Placed> places = new HashMap<>();
        private Optional<Place> last = Optional.empty();
        private Optional<Placed> there = Optional.empty();
    }

    private final IdentityHashMap<Piece, Own> known = new IdentityHashMap<>();
    private int count;

    /** The piece in that place; made now if it did not sit there before. */
    Placed of(Piece piece, Box place, Supplier<Placed> made) {
        Own own = known.get(piece);
        if (own == null || count >= MOST) {
            if (count >= MOST) {
                known.clear();
                count = 0;
            }
            own = new Own();
            known.put(piece, own);
        }
        Place asked = new Place(place);
        if (own.last.isPresent() && own.last.get().equals(asked)) {
            return own.there.orElseThrow();
        }
        Placed found = own.places.get(asked);
        if (found == null) {
            count++;
            found = made.get();
            own.places.put(asked, found);
        }
        own.last = Optional.of(asked);
        own.there = Optional.of(found);
        return found;
    }
}
