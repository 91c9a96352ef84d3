/**
 * What a stack document says, read and checked but not yet placed: the pieces in the order in which they are put up, the
 * space they stand in, the eyes and the lights, and for each piece the rules that will place it.
 */
@NullMarked
package buildup.engine.section.stack;

import org.jspecify.annotations.NullMarked;
