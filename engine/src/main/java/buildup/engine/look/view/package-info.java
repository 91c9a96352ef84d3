/**
 * What a viewpoint has in front of it: an eye, a lamp, or parallel light from a direction. Light falls on what the light
 * "sees", so both questions are one sweep: the nearest outline along every ray, found by divide and conquer in
 * n log n, exact at the corners and tangent points that bound it.
 *
 * <p>Every ray has a key that grows from one side of the view to the other; seen from the viewpoint, an outline with its
 * wood on the left faces it where the key falls along the walk.
 */
@NullMarked
package buildup.engine.look.view;

import org.jspecify.annotations.NullMarked;
