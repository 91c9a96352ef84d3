/** The program's door: {@code Main} hands the words of the command line to {@link buildup.cli.command}. */
@NullMarked
package buildup.cli;

import org.jspecify.annotations.NullMarked;
