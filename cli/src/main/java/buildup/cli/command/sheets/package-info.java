/** The command that draws a stack's sheets for the shop. */
@NullMarked
package buildup.cli.command.sheets;

import org.jspecify.annotations.NullMarked;
