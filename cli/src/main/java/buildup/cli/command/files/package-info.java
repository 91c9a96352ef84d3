/** Files by their names: what a command reads, where its answer goes, and what is said when that fails. */
@NullMarked
package buildup.cli.command.files;

import org.jspecify.annotations.NullMarked;
