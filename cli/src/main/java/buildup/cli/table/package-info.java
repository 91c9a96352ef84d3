/**
 * Answers as tables. A {@link buildup.cli.table.Table} is headings and rows of cells and knows nothing of the question;
 * each writer knows tables only. Text is laid out by display columns, so that a name in any script stays in its place.
 */
@NullMarked
package buildup.cli.table;

import org.jspecify.annotations.NullMarked;
