package buildup.engine.look.sight;

import buildup.engine.section.stack.Eye;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An eye on its way.
 *
 * @param showing one row for each nailer with raw wood on the room side
 */
public record Approach(String name, Eye from, Eye to, List<Showing> showing) {
    /**
     * Where a nailer first shows.
     *
     * @param first distance from x = 0 at which it does; absent when it never shows on this way
     * @param most the greatest length of raw wood seen on the way, in
     */
    public record Showing(int body, double exposed, OptionalDouble first, double most) {}

    /** What it sees of a nailer, if that ever shows. */
    public Optional<Showing> shows(int nailer) {
        return showing.stream()
                .filter(one -> one.body() == nailer && one.first().isPresent())
                .findFirst();
    }

    public Approach {
        showing = List.copyOf(showing);
    }
}
