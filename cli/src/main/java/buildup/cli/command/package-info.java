/**
 * The commands: each reads its words, opens its files, asks, and hands the answer to a writer. Only here are files
 * opened and exit codes chosen ({@link buildup.cli.command.files.ExitCode}); formulas and layout live elsewhere.
 */
@NullMarked
package buildup.cli.command;

import org.jspecify.annotations.NullMarked;
