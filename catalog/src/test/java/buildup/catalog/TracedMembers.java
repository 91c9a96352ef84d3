package buildup.catalog;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a tracing can tell of an outline: its members, and how well the radius of one. */
final class TracedMembers {
    /** Standard deviation of a radius from n points on a short arc: sqrt(720) s / (sqrt(n) theta^2), radians. */
    private static final double OF_RADIUS = 26.8;

    private TracedMembers() {}

    /** Segments with those that go on in one line or on one circle joined. */
    static List<Segment> of(Outline outline) {
        List<Segment> members = new ArrayList<>(outline.segments());
        for (int i = 0; i < members.size(); ) {
            int next = (i + 1) % members.size();
            Optional<Segment> joined = joined(members.get(i), members.get(next));
            if (joined.isPresent()) {
                members.set(i, joined.get());
                members.remove(next);
                i = 0;
            } else {
                i++;
            }
        }
        return members;
    }

    private static Optional<Segment> joined(Segment a, Segment b) {
        if (a instanceof Line && b instanceof Line && a.direction(1).near(b.direction(0), 1e-6)) {
            return Optional.of(new Line(a.from(), b.to()));
        }
        return a instanceof Arc one
                        && b instanceof Arc other
                        && one.center().near(other.center(), 1e-6)
                        && one.counterclockwise() == other.counterclockwise()
                ? Optional.of(new Arc(one.from(), other.to(), one.center(), one.counterclockwise()))
                : Optional.empty();
    }

    /**
     * Standard deviation of the radius of an arc, in.
     *
     * @param noise standard deviation of a point, in
     * @param points on the arc that stray alone
     */
    static double radiusError(Arc arc, double noise, double points) {
        return OF_RADIUS * noise / (Math.sqrt(points) * arc.sweep() * arc.sweep());
    }
}
