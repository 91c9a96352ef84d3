package buildup.engine.mill.nearest;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Rip;
import java.util.List;

/** What the bench can make of a profile that comes near. Inches and square inches. */
public sealed interface Advice {
    /** What a mill quotes as the accuracy of a profile, in (one mill's page, 2020s); nothing that differs by more is the same. */
    double ACCURATE = 1.0 / 32;

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

    /**
     * The same shape at another size, which no bench makes of it.
     *
     * @param scale of the listed profile
     * @param off how far at most it then differs, in
     */
    record Anew(double scale, double off) implements Advice {}

    /** It has wood wherever wood is wanted; the rest comes off with a knife. */
    record Covers(double area, double deepest, Point at) implements Advice {}

    /** It has no wood where some is wanted. */
    record TooSmall(double by, Point at) implements Advice {}

    /** Whether the wanted profile can be made of it. */
    default boolean serves() {
        return !(this instanceof TooSmall) && !(this instanceof Anew anew && anew.off() > ACCURATE);
    }
}
