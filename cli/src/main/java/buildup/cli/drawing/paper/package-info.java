/**
 * Pictures and text on the paper that there is: a page's frame with its title strip and check lines, pictures that are larger
 * than a page cut into parts that are put together again by crosses, and text that goes on on the next page.
 */
@NullMarked
package buildup.cli.drawing.paper;

import org.jspecify.annotations.NullMarked;
