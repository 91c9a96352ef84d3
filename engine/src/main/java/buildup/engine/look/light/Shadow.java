package buildup.engine.look.light;

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
 * @param arris the place on the caster that throws the farthest ray; absent for shade
 * @param edge where the shadow ends on the member and light begins; absent for shade and where the edge falls beyond the
 *     member
 * @param overhang x of the casting arris less x of the face (at the shadow's edge; where the member is dark from end to
 *     end, at its end nearest the edge), in; absent for shade
 * @param reach y of the casting arris less y of the place where its ray meets the line of the member: the depth of the
 *     shadow if the member went on, in; absent for shade and where the ray never meets that line
 * @param soft how far the edge is blurred along the member by a lamp of some width, in; absent for a sharp edge
 */
public record Shadow(
        int member,
        Band.Lit kind,
        List<Segment> segments,
        Optional<Integer> caster,
        double share,
        Optional<Point> arris,
        Optional<Point> edge,
        OptionalDouble overhang,
        OptionalDouble reach,
        OptionalDouble soft) {
    public Shadow {
        segments = List.copyOf(segments);
    }

    /** The length of the dark stretch along the faces, in. */
    public double dark() {
        return segments.stream().mapToDouble(Segment::length).sum();
    }

    /** Where the dark stretch starts, in. */
    public Point from() {
        return segments.get(0).from();
    }

    /** Where the dark stretch ends, in. */
    public Point to() {
        return segments.get(segments.size() - 1).to();
    }

    /** The least box round the dark stretch, in. */
    public Box box() {
        return Box.around(segments.stream().map(Segment::box).toList());
    }

    /** Shadow-line depth: y of the casting arris less y of the shadow's edge, in; absent where the edge is. */
    public OptionalDouble depth() {
        return arris.isPresent() && edge.isPresent()
                ? OptionalDouble.of(arris.get().y() - edge.get().y())
                : OptionalDouble.empty();
    }
}
