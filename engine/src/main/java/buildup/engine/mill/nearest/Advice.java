package buildup.engine.mill.nearest;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Rip;
import java.util.List;

/** What the bench can make of a profile that comes near. Inches and square inches. */
public sealed interface Advice {
    /** It differs nowhere by as much as touching. */
    record AsItIs(double off) implements Advice {}

    /**
     * Straight cuts bring it there.
     *
     * @param off how far at most it then still differs
     */
    record Plane(List<Off> cuts, double off) implements Advice {
        public Plane {
            cuts = List.copyOf(cuts);
        }
    }

    /** So much off a side, named as the catalog draws the profile. */
    record Off(Rip.Side side, double amount) {}

    /** It has wood wherever wood is wanted; the rest comes off with a knife. */
    record Covers(double area, double deepest, Point at) implements Advice {}

    /** It has no wood where some is wanted. */
    record TooSmall(double by, Point at) implements Advice {}

    /** Whether the wanted profile can be made of it. */
    default boolean serves() {
        return !(this instanceof TooSmall);
    }
}
