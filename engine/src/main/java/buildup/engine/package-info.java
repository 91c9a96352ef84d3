/**
 * The stack and the questions asked of it. Data flows one way: a document is read into a
 * {@link buildup.engine.stack.Stack}, placed, composed into a {@link buildup.engine.compose.Section}, and asked.
 * Inches as {@code double}; x out from the wall plane, y up from the stack's datum. Nothing here opens a file, prints or
 * draws.
 */
@NullMarked
package buildup.engine;

import org.jspecify.annotations.NullMarked;
