/** Where pieces longer than any stick are joined, and why there: on studs, out of sight, clear of their ends. */
@NullMarked
package buildup.engine.room.splice;

import org.jspecify.annotations.NullMarked;
