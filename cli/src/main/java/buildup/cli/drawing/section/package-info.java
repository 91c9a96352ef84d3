/** The section with its dimensions: on the sheet to be printed, and on the screen. */
@NullMarked
package buildup.cli.drawing.section;

import org.jspecify.annotations.NullMarked;
