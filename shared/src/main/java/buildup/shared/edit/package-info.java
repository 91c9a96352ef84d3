/**
 * Changes of a document, as data: what a user types behind {@code set}, what a search proposes, what a cure does. They
 * know nothing of the text they change; {@code buildup.shared.document.edit} carries them out.
 */
@NullMarked
package buildup.shared.edit;

import org.jspecify.annotations.NullMarked;
