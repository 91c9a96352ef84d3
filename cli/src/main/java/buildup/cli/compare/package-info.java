/**
 * Two answers beside each other. Each is laid out as {@link buildup.cli.compare.Sheet}s: blocks of rows that are known
 * by name and hold figures. {@link buildup.cli.compare.Comparison} pairs the rows of two answers by name; what differs
 * is then told as tables, as an object for other programs, or in words.
 */
@NullMarked
package buildup.cli.compare;

import org.jspecify.annotations.NullMarked;
