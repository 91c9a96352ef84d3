/** What stands behind each piece of trim to nail into. */
@NullMarked
package buildup.engine.hold.backing;

import org.jspecify.annotations.NullMarked;
