package buildup.engine.mill.nearest;

import buildup.profiles.Profile;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;

/**
 * A profile that comes near.
 *
 * @param pose how it is laid onto the wanted one, both flat on their backs where they are sprung
 * @param outline of it, so laid
 * @param apart area of what lies in one of the two alone, sq in
 * @param gap the farthest that a point of either outline lies from the other, in
 * @param gapAt where
 */
public record Neighbor(
        Profile profile, Pose pose, Outline outline, double apart, double gap, Point gapAt, Advice advice) {}
