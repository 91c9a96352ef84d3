package buildup.profiles.trace.fit;

import buildup.profiles.outline.Point;
import java.util.List;
import java.util.function.IntUnaryOperator;

/** What fitted curves must keep to, exactly; curves are called by their numbers in the ring. */
public sealed interface Bond
        permits Bond.Tangent, Bond.Angle, Bond.Offset, Bond.Flush, Bond.Radius, Bond.Through, Bond.Square, Bond.Alike {
    /**
     * Two neighbors touch where the walk passes from one to the other.
     *
     * @param back whether the walk turns right back there, as between two beads, and does not go on without a corner
     */
    record Tangent(int first, int second, boolean back) implements Bond {}

    /** The normal of a line has this angle, radians. */
    record Angle(int line, double angle) implements Bond {}

    /** A line lies so far from the origin along its normal. */
    record Offset(int line, double offset) implements Bond {}

    /** Two lines that face the same way lie in one. */
    record Flush(int first, int second) implements Bond {}

    /** A round has this radius. */
    record Radius(int round, double radius) implements Bond {}

    /** A round has its center on a line, so that the two meet square. */
    record Square(int line, int round) implements Bond {}

    /** Two rounds have one radius, their centers on opposite sides of the walk. */
    record Alike(int first, int second) implements Bond {}

    /** A curve passes through a point. */
    record Through(int curve, Point point) implements Bond {}

    /** The curves that keep to it, one or two. */
    default List<Integer> curves() {
        if (this instanceof Tangent tangent) {
            return List.of(tangent.first(), tangent.second());
        } else if (this instanceof Angle angle) {
            return List.of(angle.line());
        } else if (this instanceof Offset offset) {
            return List.of(offset.line());
        } else if (this instanceof Flush flush) {
            return List.of(flush.first(), flush.second());
        } else if (this instanceof Radius radius) {
            return List.of(radius.round());
        } else if (this instanceof Square square) {
            return List.of(square.line(), square.round());
        } else if (this instanceof Alike alike) {
            return List.of(alike.first(), alike.second());
        }
        return List.of(((Through) this).curve());
    }

    /** The same of curves that have other numbers now. */
    default Bond renumbered(IntUnaryOperator number) {
        if (this instanceof Tangent tangent) {
            return new Tangent(number.applyAsInt(tangent.first()), number.applyAsInt(tangent.second()), tangent.back());
        } else if (this instanceof Angle angle) {
            return new Angle(number.applyAsInt(angle.line()), angle.angle());
        } else if (this instanceof Offset offset) {
            return new Offset(number.applyAsInt(offset.line()), offset.offset());
        } else if (this instanceof Flush flush) {
            return new Flush(number.applyAsInt(flush.first()), number.applyAsInt(flush.second()));
        } else if (this instanceof Radius radius) {
            return new Radius(number.applyAsInt(radius.round()), radius.radius());
        } else if (this instanceof Square square) {
            return new Square(number.applyAsInt(square.line()), number.applyAsInt(square.round()));
        } else if (this instanceof Alike alike) {
            return new Alike(number.applyAsInt(alike.first()), number.applyAsInt(alike.second()));
        }
        Through through = (Through) this;
        return new Through(number.applyAsInt(through.curve()), through.point());
    }
}
