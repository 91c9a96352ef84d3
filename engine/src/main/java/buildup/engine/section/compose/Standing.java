package buildup.engine.section.compose;

import buildup.profiles.outline.Point;
import java.util.List;

/**
 * What holds one piece up.
 *
 * @param grounded whether it is framing, or stands on or is fixed to something that is grounded
 * @param fixed whether it is fixed: by the fastenings given for it, because the document says so, or because it counts
 *     as fixed
 * @param counted whether it counts as fixed by its back flat on framing or solid wall alone, since no fastenings are given
 *     for it: an assumption
 * @param bearing the level stretches in which it lies on grounded bodies
 * @param hanging bodies that are not grounded and that it lies on
 */
public record Standing(
        int body, boolean grounded, boolean fixed, boolean counted, List<Bearing> bearing, List<Integer> hanging) {
    /** A level contact stretch on a grounded body, from back to face. */
    public record Bearing(int on, Point from, Point to) {
        /** How wide the bearing is, in, level. */
        public double width() {
            return Math.abs(to.x() - from.x());
        }
    }

    public Standing {
        bearing = List.copyOf(bearing);
        hanging = List.copyOf(hanging);
    }
}
