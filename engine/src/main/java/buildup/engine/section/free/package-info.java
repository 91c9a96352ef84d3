/**
 * Sizes that a document leaves free for a search: {@code between 3 and 5 by 1/8, now 3-1/2}, {@code one of [1x4, 1x6]},
 * {@code any cove-bed}. They stand where a value stands; to all other readers a free size is what it is now.
 */
@NullMarked
package buildup.engine.section.free;

import org.jspecify.annotations.NullMarked;
