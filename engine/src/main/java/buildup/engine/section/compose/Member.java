package buildup.engine.section.compose;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One row of the room-side walk: a stretch of one named member of one piece.
 *
 * @param body number of the piece in the section
 * @param part number of the separate part of the stack that the walk goes round, from 0
 * @param segments the true segments, in walking order
 * @param step projection of this piece less that of the piece before it on the walk; on the first row after a change of
 *     piece, else absent
 */
public record Member(int body, String member, int part, List<Segment> segments, OptionalDouble step) {
    public Member {
        segments = List.copyOf(segments);
    }

    /** Where it starts, in. */
    public Point from() {
        return segments.get(0).from();
    }

    /** Where it ends, in. */
    public Point to() {
        return segments.get(segments.size() - 1).to();
    }

    /** Its length along the outline, in. */
    public double length() {
        return segments.stream().mapToDouble(Segment::length).sum();
    }

    /** The least box round it, in. */
    public Box box() {
        return Box.around(segments.stream().map(Segment::box).toList());
    }

    /** Greatest x. */
    public double projection() {
        return box().face();
    }
}
