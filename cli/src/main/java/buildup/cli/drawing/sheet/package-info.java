/**
 * The sheet that is printed, made of blocks: the picture with its dimensions, the list of pieces, the title with its
 * notes, the lines by which full size is checked.
 */
@NullMarked
package buildup.cli.drawing.sheet;

import org.jspecify.annotations.NullMarked;
