package buildup.catalog.format;

import buildup.profiles.trace.Trail;
import buildup.shared.length.LengthUnit;
import java.util.List;
import java.util.Optional;

/**
 * What a file holds.
 *
 * @param trails at least one
 * @param unit of the points; empty when the file does not say
 */
public record Drawn(List<Trail> trails, Optional<LengthUnit> unit) {
    public Drawn {
        trails = List.copyOf(trails);
    }
}
