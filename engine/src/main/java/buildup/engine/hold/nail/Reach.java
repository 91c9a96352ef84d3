package buildup.engine.hold.nail;

import buildup.catalog.fastener.Tool;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Whether the tool gets to the head in the step in which the nail is driven.
 *
 * @param tool absent when no list holds it, and nothing was looked at
 * @param inTheWay the first body that its outline runs into, or that lies over the spot
 */
public record Reach(Optional<Tool> tool, OptionalInt inTheWay) {
    /** Whether nothing stands in the way of the tool. */
    public boolean free() {
        return inTheWay.isEmpty();
    }
}
