/**
 * The ground: a document is read into a stack, its pieces are placed, and the stack is composed into a section that
 * keeps what a union throws away.
 */
@NullMarked
package buildup.engine.section;

import org.jspecify.annotations.NullMarked;
