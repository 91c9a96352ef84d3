/** Woods, and the boards in which they are sold. */
@NullMarked
package buildup.catalog.wood;

import org.jspecify.annotations.NullMarked;
