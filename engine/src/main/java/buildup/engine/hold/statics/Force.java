package buildup.engine.hold.statics;

import buildup.engine.hold.statics.FirstToGive.Mode;
import buildup.profiles.outline.Point;
import java.util.Optional;

/**
 * A force that two bodies may exert on each other, along a given line and one way only.
 *
 * @param kind what exerts it
 * @param name of the contact or fastener
 * @param mode how it gives way
 * @param on number of the body that it acts on
 * @param against number of the body that it is the reaction of, {@link #EARTH} for none
 * @param at where, in
 * @param way direction on the first body; of unit length but for a push with friction
 * @param most its limit, pounds per foot of run
 * @param gap air that the two must close before it acts, in; 0 where they touch
 * @param tie the fastener whose force it is: what its forces take of their limits, together, is no more than one of them
 *     may take alone
 */
public record Force(
        Kind kind,
        String name,
        Mode mode,
        int on,
        int against,
        Point at,
        Point way,
        double most,
        double gap,
        Optional<Tie> tie) {
    /** What a piece is held to when that is no body of the section. */
    public static final int EARTH = -1;

    private static final Point UP = new Point(0, 1);

    /** What exerts a force. */
    public enum Kind {
        PUSH,
        TIE,
        WELD
    }

    static Force push(String name, int on, int against, Point at, Point way, double gap) {
        return new Force(
                Kind.PUSH, name, Mode.CONTACT, on, against, at, way, Double.POSITIVE_INFINITY, gap, Optional.empty());
    }

    /** What makes two bodies one: it stands for every force, and its direction says nothing. */
    static Force weld(String name, int on, int against, Point at) {
        return new Force(
                Kind.WELD, name, Mode.CONTACT, on, against, at, UP, Double.POSITIVE_INFINITY, 0, Optional.empty());
    }

    static Force tie(Tie tie, Mode mode, Point way, double most) {
        return new Force(
                Kind.TIE, tie.name(), mode, tie.outer(), tie.inner(), tie.at(), way, most, 0, Optional.of(tie));
    }

    /** Whether it gives at a load, as a nail does; a contact holds any push. */
    public boolean limited() {
        return Double.isFinite(most);
    }

    /** Spelled out, as the next: what a record does of itself as a key is slow to start, and most are the same object. */
    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof Force force
                        && kind == force.kind
                        && mode == force.mode
                        && on == force.on
                        && against == force.against
                        && Double.compare(most, force.most) == 0
                        && Double.compare(gap, force.gap) == 0
                        && at.equals(force.at)
                        && way.equals(force.way)
                        && name.equals(force.name));
    }

    @Override
    public int hashCode() {
        return 31 * (31 * name.hashCode() + on) + against;
    }
}
