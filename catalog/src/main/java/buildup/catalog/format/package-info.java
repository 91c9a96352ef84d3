/**
 * What comes in from outside: points of a contour gauge or a digitizer as CSV, drawings as SVG or DXF. All become
 * trails of points, y up, in the unit that the file states. Nothing is joined, scaled or cleaned here.
 *
 * <p>The bytes are a stranger's. Sizes, depths and counts are bounded, nothing outside the file is ever opened, and
 * whatever is wrong is told with its line.
 */
@NullMarked
package buildup.catalog.format;

import org.jspecify.annotations.NullMarked;
