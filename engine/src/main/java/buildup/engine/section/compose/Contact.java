package buildup.engine.section.compose;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.Optional;

/**
 * One stretch along which two bodies touch.
 *
 * @param a, b numbers of the bodies in the section, ordered so that the facing holds
 * @param facing empty for a contact of length 0
 * @param stretch the shared stretch along a's outline, in a's walking order (a's wood on its left); empty for a contact
 *     at a corner or a tangent
 * @param at the middle of the stretch, or the point of contact
 * @param gap the widest distance between the two along the stretch: positive is air, negative is overlap; in
 */
public record Contact(int a, int b, Optional<Facing> facing, Optional<Segment> stretch, Point at, double gap) {
    /** What a does for b. */
    public enum Facing {
        /** The normal from a into b points less than 45 degrees off up. */
        CARRIES,
        /** The normal from a into b points 45 degrees or less off straight out. */
        BACKS;

        /** The word for it in reports. */
        public String word() {
            return this == CARRIES ? "carries" : "backs";
        }
    }

    /** How far the two touch along the face, in; 0 for a point. */
    public double length() {
        return stretch.map(Segment::length).orElse(0.0);
    }

    /** Where the contact starts, in; the point itself where it is one. */
    public Point from() {
        return stretch.map(Segment::from).orElse(at);
    }

    /** Where the contact ends, in; the point itself where it is one. */
    public Point to() {
        return stretch.map(Segment::to).orElse(at);
    }

    /** Degrees of the stretch (its chord) from level, 0 to 90; 0 for a contact of length 0. */
    public double slope() {
        Point along = to().minus(from());
        return along.length() > 0 ? Math.toDegrees(Math.atan2(Math.abs(along.y()), Math.abs(along.x()))) : 0;
    }

    /** Whether these two bodies touch here, in whatever order. */
    public boolean between(int first, int second) {
        return (a == first && b == second) || (a == second && b == first);
    }

    /** Whether that body is one of the two. */
    public boolean of(int body) {
        return a == body || b == body;
    }

    /** The number of the body on the other side. */
    public int other(int body) {
        return body == a ? b : a;
    }
}
