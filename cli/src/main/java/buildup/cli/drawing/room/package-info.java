/** The room: the plan with its corners, and how the pieces are cut from sticks. */
@NullMarked
package buildup.cli.drawing.room;

import org.jspecify.annotations.NullMarked;
