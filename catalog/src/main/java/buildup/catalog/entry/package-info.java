/** What the readers of all lists share: sizes, and what is said of an entry. */
@NullMarked
package buildup.catalog.entry;

import org.jspecify.annotations.NullMarked;
