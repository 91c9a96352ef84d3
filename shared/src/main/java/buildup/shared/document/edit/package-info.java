/**
 * Edits of a document, as pure functions from text and edit to text.
 *
 * <p>{@link buildup.shared.document.edit.Editor} carries out a list of {@link buildup.shared.edit.Edit}s. Each touches
 * only the characters it must: comments, order, spacing, quotes, line ends and a byte order mark stay as they are. {@link
 * buildup.shared.document.edit.Tidying} lays a whole document out anew without changing what it says.
 *
 * <p>Both stand on {@link buildup.shared.document.edit.ParsedText}: the text, with every part of it ({@link
 * buildup.shared.document.edit.TextPart}) from its first to its last character. A change is a list of {@link
 * buildup.shared.document.edit.TextSplice}s. What a document says is decided by its reader alone: whatever comes out has been
 * read again, and an edit that would break the document is refused.
 */
@NullMarked
package buildup.shared.document.edit;

import org.jspecify.annotations.NullMarked;
