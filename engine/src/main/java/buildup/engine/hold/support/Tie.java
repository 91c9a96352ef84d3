package buildup.engine.hold.support;

import buildup.profiles.outline.Point;

/**
 * A fastener where it holds one body to another.
 *
 * @param name as the document or the answer calls the fastener
 * @param outer body on the side of the head
 * @param inner body that the point bites in
 * @param at where it crosses from one to the other
 * @param axis unit direction from head to point
 * @param withdrawal, lateral allowable pounds per foot of run, along the axis and across it
 */
public record Tie(String name, int outer, int inner, Point at, Point axis, double withdrawal, double lateral) {}
