package buildup.engine.light;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One dark stretch of one member.
 *
 * @param member number of the member on the walk
 * @param segments the dark stretch, in walking order
 * @param caster the body that casts it; absent for shade
 * @param share dark over the length of the member
 * @param overhang x of the casting arris less x of the face, in; absent for shade
 * @param depth shadow-line depth: y of the casting arris less y of the shadow's edge, in; absent for shade and where the
 *     edge falls beyond the member
 * @param soft how far the edge is blurred along the member by a lamp of some width, in; absent for a sharp edge
 */
public record Shadow(
        int member,
        Band.Lit kind,
        List<Segment> segments,
        Optional<Integer> caster,
        double share,
        OptionalDouble overhang,
        OptionalDouble depth,
        OptionalDouble soft) {
    public Shadow {
        segments = List.copyOf(segments);
    }

    public double dark() {
        return segments.stream().mapToDouble(Segment::length).sum();
    }

    public Point from() {
        return segments.get(0).from();
    }

    public Point to() {
        return segments.get(segments.size() - 1).to();
    }

    public Box box() {
        return Box.around(segments.stream().map(Segment::box).toList());
    }
}
