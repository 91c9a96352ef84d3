package buildup.engine.section.compose;

import buildup.profiles.outline.Point;
import java.util.List;

/**
 * What holds one piece up, fastenings not counted.
 *
 * @param grounded whether it is framing, or stands on or is fixed to something that is grounded
 * @param fixed whether it counts as fixed: by its back flat on framing or solid wall, or because the document says so
 * @param bearing the level stretches in which it lies on grounded bodies
 * @param hanging bodies that are not grounded and that it lies on
 */
public record Standing(int body, boolean grounded, boolean fixed, List<Bearing> bearing, List<Integer> hanging) {
    /** A level contact stretch on a grounded body, from back to face. */
    public record Bearing(int on, Point from, Point to) {
        public double width() {
            return Math.abs(to.x() - from.x());
        }
    }

    public Standing {
        bearing = List.copyOf(bearing);
        hanging = List.copyOf(hanging);
    }
}
