/** Clearances to the opening of a fireplace as codes, standards and manuals say them, as data. */
@NullMarked
package buildup.catalog.fire;

import org.jspecify.annotations.NullMarked;
