package buildup.catalog.fire;

import buildup.shared.length.Length;
import java.math.BigDecimal;

/**
 * A stretch of distance from an opening, and how far trim may project there: a share of the distance and a length.
 *
 * @param from where it begins
 * @param past whether the place where it begins is not part of it
 * @param any whether trim may project as far as it likes
 * @param share of the distance
 * @param plus in addition; negative takes away
 */
public record FireBand(Length from, boolean past, boolean any, BigDecimal share, Length plus) {
    /** How far trim may project at a distance within the band; nothing bounds it where {@link #any} holds. */
    public Length allowed(Length distance) {
        return distance.times(share.doubleValue()).plus(plus);
    }
}
