/**
 * Whether a stack can be put up in its order: each piece's way into place by straight moves in the plane of the section,
 * the room that it needs and has, what must be joined on the bench first, and which nails are driven in which step.
 */
@NullMarked
package buildup.engine.hold.order;

import org.jspecify.annotations.NullMarked;
