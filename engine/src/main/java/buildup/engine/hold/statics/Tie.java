package buildup.engine.hold.statics;

import buildup.profiles.outline.Point;

/**
 * A fastener where it holds one body to another.
 *
 * @param name as the document or the answer calls the fastener
 * @param outer body on the side of the head
 * @param inner body that the point bites in
 * @param at where it crosses from one to the other
 * @param axis unit direction from head to point
 * @param withdrawal what the bite holds along the axis, allowable pounds per foot of run
 * @param head what the side of the head holds along the axis, pounds per foot of run: where the head pulls through, or a
 *     pin slips out of the outer piece
 * @param lateral allowable pounds per foot of run across the axis
 */
public record Tie(
        String name, int outer, int inner, Point at, Point axis, double withdrawal, double head, double lateral) {
    /** A fastener whose head never pulls through. */
    public Tie(String name, int outer, int inner, Point at, Point axis, double withdrawal, double lateral) {
        this(name, outer, inner, at, axis, withdrawal, Double.POSITIVE_INFINITY, lateral);
    }

    /** What it holds along its axis, pounds per foot of run. */
    public double pull() {
        return Math.min(withdrawal, head);
    }

    /** What gives first along its axis. */
    public FirstToGive.Mode pullMode() {
        return head < withdrawal ? FirstToGive.Mode.HEAD : FirstToGive.Mode.PULL;
    }
}
