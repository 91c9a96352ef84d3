/** Solvers, behind plain records: nothing else knows how they work. */
@NullMarked
package buildup.engine.solve;

import org.jspecify.annotations.NullMarked;
