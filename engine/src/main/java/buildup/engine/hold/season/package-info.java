/**
 * Does the stack stay right through the year? Air becomes moisture of wood, moisture becomes movement across the grain,
 * and movement, counted from where each piece is held, opens and closes reveals, joints, laps, bearings and miters.
 */
@NullMarked
package buildup.engine.hold.season;

import org.jspecify.annotations.NullMarked;
