/**
 * The walls that trim runs along: a {@link buildup.engine.room.plan.Plan} holds runs of wall stretches, from left to right as
 * seen from the room, with the corners between them, openings in them and ends; lengths are taken on the wall plane x = 0.
 */
@NullMarked
package buildup.engine.room.plan;

import org.jspecify.annotations.NullMarked;
