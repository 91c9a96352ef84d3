/** Templates to cut wood by: shapes of ends, and what guides the cutter along them. */
@NullMarked
package buildup.engine.mill.template;

import org.jspecify.annotations.NullMarked;
