/** A stack beside the orders of the books, and what it keeps clear of. */
@NullMarked
package buildup.cli.drawing.judge;

import org.jspecify.annotations.NullMarked;
