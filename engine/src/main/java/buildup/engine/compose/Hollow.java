package buildup.engine.compose;

import buildup.profiles.outline.Point;
import buildup.profiles.region.Ring;
import java.util.List;

/**
 * A void: a bounded hole of the section, wider than touching and larger than a glue line.
 *
 * @param at a point inside it
 * @param closedBy wall, floor, ceiling, as far as they close it; empty when wood alone does
 */
public record Hollow(double area, Point at, List<String> closedBy, Ring ring) {
    public Hollow {
        closedBy = List.copyOf(closedBy);
    }
}
