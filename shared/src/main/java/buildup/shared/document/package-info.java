/**
 * A YAML file as a tree of text, every node with its line and column, and the typed reading of it.
 *
 * <p>{@link buildup.shared.document.DocumentReader} turns bytes into a {@link buildup.shared.document.Document}; no
 * scalar is taken for a number or a truth value, so {@code 1:12}, {@code yes} and {@code 3/4} arrive as written. {@link
 * buildup.shared.document.Fields} reads one mapping of it; {@link buildup.shared.document.Claims} remembers what was
 * asked, so that a key which nobody asked for is reported instead of ignored.
 */
@NullMarked
package buildup.shared.document;

import org.jspecify.annotations.NullMarked;
