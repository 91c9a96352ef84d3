package buildup.catalog.format;

import buildup.profiles.trace.ring.Trail;
import buildup.shared.length.LengthUnit;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a file holds.
 *
 * @param trails at least one
 * @param unit of the points; empty when the file does not say
 */
public record Drawn(List<Trail> trails, Optional<LengthUnit> unit) {
    /** Copies the list. */
    public Drawn {
        trails = List.copyOf(trails);
    }

    /** Names of all layers and groups, each once, in the order of the drawing. */
    Set<String> layers() {
        Set<String> layers = new LinkedHashSet<>();
        trails.forEach(trail -> layers.addAll(trail.layers()));
        return layers;
    }

    /** What lies on a layer or in a group of that name, in small or capital letters; there may be nothing. */
    List<Trail> on(String layer) {
        return trails.stream()
                .filter(trail -> trail.layers().stream().anyMatch(layer.strip()::equalsIgnoreCase))
                .toList();
    }
}
