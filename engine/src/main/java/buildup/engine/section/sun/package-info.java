/** Where the sun stands for a place, a day and an hour; worked out by a library of astronomy. */
@NullMarked
package buildup.engine.section.sun;

import org.jspecify.annotations.NullMarked;
