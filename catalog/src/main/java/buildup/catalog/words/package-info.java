/**
 * Profile words: an outline said in the terms of the trade ({@code out 1/4, cove 1, fillet 3/8}).
 *
 * <p>A {@link buildup.catalog.words.Word} is one such term with its sizes read; {@link
 * buildup.catalog.words.WalkReader} walks the words one after another, closes the outline and says what is wrong with
 * it, each time with the place of the word.
 */
@NullMarked
package buildup.catalog.words;

import org.jspecify.annotations.NullMarked;
