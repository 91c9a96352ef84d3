/**
 * How a stack reads beside the orders and rules of the books: its parts and their shares, what overhangs what, the rhythm of
 * its members, its size in the room. A reading, never a judgment of taste.
 */
@NullMarked
package buildup.engine.judge.proportion;

import org.jspecify.annotations.NullMarked;
