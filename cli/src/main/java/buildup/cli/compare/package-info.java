/**
 * Two answers beside each other. {@link buildup.cli.tell.Beside} pairs the rows of their sheets by name; what differs is
 * told as tables, as an object for other programs, or in words.
 */
@NullMarked
package buildup.cli.compare;

import org.jspecify.annotations.NullMarked;
