/**
 * Curves as other programs draw them: arcs of circles and ellipses, Bezier curves, rational B-splines. Each can be
 * stretched and turned without loss, and becomes points on the true curve. Nothing here is a section yet: numbers are
 * in the unit of the drawing, and {@link buildup.profiles.outline} knows only the lines and arcs that a shop can make.
 */
@NullMarked
package buildup.profiles.curve;

import org.jspecify.annotations.NullMarked;
