package buildup.engine.section.compose;

import buildup.profiles.outline.Point;
import buildup.profiles.region.Cavity;
import buildup.profiles.region.Ring;
import java.util.List;

/**
 * A void: a bounded hole of the section, wider than touching and larger than a glue line.
 *
 * @param area of the air, sq in
 * @param at a point inside it
 * @param closedBy wall, floor, ceiling, as far as they close it; empty when wood alone does
 * @param corners the points of contact without length that close it, each with the bodies that meet there
 */
public record ClosedVoid(double area, Point at, List<String> closedBy, Ring ring, List<Cavity.Corner> corners) {
    public ClosedVoid {
        closedBy = List.copyOf(closedBy);
        corners = List.copyOf(corners);
    }
}
