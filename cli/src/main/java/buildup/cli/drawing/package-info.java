/**
 * Turns what was computed into pictures.
 *
 * <p>A sheet is made of blocks: the picture with its dimensions, the list of pieces, the title with its notes, the
 * lines by which full size is checked. The picture is drawn in the frame of the section; {@code Clearances} keeps what
 * lies on it already, so that no text ever meets another text or a line: a dimension tries places from near to far and
 * takes the best that is free, and thin lines are broken at every text.
 */
@NullMarked
package buildup.cli.drawing;

import org.jspecify.annotations.NullMarked;
