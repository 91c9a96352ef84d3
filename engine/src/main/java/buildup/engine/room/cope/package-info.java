/**
 * Copes as they are cut: which stick of an inside corner is coped and why, how sharp the coped edge becomes, and the line
 * to cut it to.
 */
@NullMarked
package buildup.engine.room.cope;

import org.jspecify.annotations.NullMarked;
