package buildup.engine.look.sight;

import buildup.profiles.outline.Segment;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What an eye sees of one member.
 *
 * @param member number of the member on the walk
 * @param visible the parts it sees, in walking order
 * @param trueHeight top less bottom of the member, in
 * @param seenHeight the height that its visible parts take up on an upright picture plane at x = 0, in; absent where one
 *     of them reaches the upright plane of the eye or lies behind it: a sight line there never meets the picture
 */
public record SeenMember(int member, List<Segment> visible, double trueHeight, OptionalDouble seenHeight) {
    public SeenMember {
        visible = List.copyOf(visible);
    }

    /** The length of what is seen of the member, in. */
    public double length() {
        return visible.stream().mapToDouble(Segment::length).sum();
    }
}
