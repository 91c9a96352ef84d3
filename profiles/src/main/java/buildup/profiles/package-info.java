/**
 * Section geometry of single pieces: outlines of true lines and arcs, the members of the trade that draw them, and
 * the unions of many outlines. Everything here is in inches as {@code double}, x = projection out from the wall,
 * y = height; an outline runs counterclockwise, so its wood lies on the left of the walk.
 */
@NullMarked
package buildup.profiles;

import org.jspecify.annotations.NullMarked;
