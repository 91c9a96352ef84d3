/** Nails and screws, and the tools that drive them. */
@NullMarked
package buildup.catalog.fastener;

import org.jspecify.annotations.NullMarked;
