/** The shop drawings of a stack: sheet after sheet what is taped to the wall and lies on the bench. */
@NullMarked
package buildup.cli.drawing.job;

import org.jspecify.annotations.NullMarked;
