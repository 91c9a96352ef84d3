/** The ground of every picture: sizes of letters and lines, level and upright, scale, wood with its hatch and edges. */
@NullMarked
package buildup.cli.drawing.draft;

import org.jspecify.annotations.NullMarked;
