/** The mill: passes, knives, tracings, profiles nearest to one asked for, and the sheets of a quote. */
@NullMarked
package buildup.cli.drawing.mill;

import org.jspecify.annotations.NullMarked;
