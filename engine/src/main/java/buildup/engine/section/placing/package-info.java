/**
 * Gives every piece of a stack its place: rules on edges become coordinates, boards are ripped to fit, and pieces that
 * move until they touch are stopped.
 */
@NullMarked
package buildup.engine.section.placing;

import org.jspecify.annotations.NullMarked;
