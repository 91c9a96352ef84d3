/** The command that solves backwards, and the folder into which it writes its answers. */
@NullMarked
package buildup.cli.command.search;

import org.jspecify.annotations.NullMarked;
