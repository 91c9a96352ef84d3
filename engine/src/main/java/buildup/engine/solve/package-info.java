/** Solvers, behind plain records: nothing else knows which library works. */
@NullMarked
package buildup.engine.solve;

import org.jspecify.annotations.NullMarked;
