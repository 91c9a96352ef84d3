/**
 * Points, true segments (line, arc), rigid motions and closed outlines, with exact area, centroid and bounds.
 *
 * <p>Frame: x out from the wall, y up, inches, angles in radians counterclockwise from +x. Curves stay curves here;
 * {@link buildup.profiles.outline.Segment#flattened} is the only place where a chord replaces an arc.
 */
@NullMarked
package buildup.profiles.outline;

import org.jspecify.annotations.NullMarked;
