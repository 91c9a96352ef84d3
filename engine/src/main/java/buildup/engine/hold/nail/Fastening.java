package buildup.engine.hold.nail;

import buildup.catalog.fastener.Fastener;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Rule;
import buildup.profiles.outline.Point;
import buildup.shared.notice.Mark;
import java.util.Optional;

/**
 * A row of nails or screws along the run, as the document gives it.
 *
 * @param name its own, or {@code nail 4} by its number
 * @param piece name of the piece on whose face the heads sit
 * @param out, up where on that face; at least one of the two, neither of them a touch
 * @param angle degrees off square to the face at the head; positive tilts the point upward, on a level face toward the
 *     wall
 * @param spacing along the run, in
 * @param first where along the run the first of them stands, in; rows are taken to start together where none says
 * @param per how many at each place
 * @param after name of the piece after which they are driven; absent: when their own piece goes up
 * @param bored whether it is bored for, so that it splits nothing. In holes of the published sizes it holds no less (NDS
 *     2018, 12.1.5 and 12.1.6, from memory)
 */
public record Fastening(
        String name,
        String piece,
        Fastener.Cut use,
        Optional<Rule> out,
        Optional<Rule> up,
        double angle,
        double spacing,
        double first,
        int per,
        Optional<String> after,
        boolean bored,
        Mark mark) {
    /** Inches in a foot of run. */
    private static final double FOOT = 12;

    /** How many there are in a foot of run. */
    public double perFoot() {
        return per * FOOT / spacing;
    }

    /** The same with another fastener or length. */
    public Fastening with(Fastener.Cut other) {
        return new Fastening(name, piece, other, out, up, angle, spacing, first, per, after, bored, mark);
    }

    /** The same at another angle. */
    public Fastening tilted(double other) {
        return new Fastening(name, piece, use, out, up, other, spacing, first, per, after, bored, mark);
    }

    /** The same, bored for. */
    public Fastening boredFor() {
        return new Fastening(name, piece, use, out, up, angle, spacing, first, per, after, true, mark);
    }

    /** The same, so far apart, in. */
    public Fastening spaced(double other) {
        return new Fastening(name, piece, use, out, up, angle, other, first, per, after, bored, mark);
    }

    /** The same, begun elsewhere along the run. */
    public Fastening startedAt(double inches) {
        return new Fastening(name, piece, use, out, up, angle, spacing, inches, per, after, bored, mark);
    }

    /** The same at another place of its piece. */
    public Fastening at(Point place) {
        return new Fastening(
                name,
                piece,
                use,
                Optional.of(new Rule.Level(place.x(), Optional.of(Axis.OUT), mark)),
                Optional.of(new Rule.Level(place.y(), Optional.of(Axis.UP), mark)),
                angle,
                spacing,
                first,
                per,
                after,
                bored,
                mark);
    }
}
