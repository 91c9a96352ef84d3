/**
 * The section along the walls of a room: lengths round the corners, saw settings, sticks to buy.
 */
@NullMarked
package buildup.engine.room;

import org.jspecify.annotations.NullMarked;
