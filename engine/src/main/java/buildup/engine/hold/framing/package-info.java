/**
 * What there is to nail to along the walls: whether each row of nails or screws that goes into wall or ceiling lands on
 * studs, joists or plates, where it misses, how it is set out so that it lands; and the blocks that a sprung molding
 * wants behind it between them. Places are inches along a stretch from its left end.
 */
@NullMarked
package buildup.engine.hold.framing;

import org.jspecify.annotations.NullMarked;
