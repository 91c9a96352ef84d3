/**
 * How a profile is made and what that costs.
 */
@NullMarked
package buildup.engine.mill;

import org.jspecify.annotations.NullMarked;
