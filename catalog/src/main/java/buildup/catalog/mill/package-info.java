/** What a mill works with: cutters, heads for ground knives, how it cuts its blanks, what it asks. */
@NullMarked
package buildup.catalog.mill;

import org.jspecify.annotations.NullMarked;
