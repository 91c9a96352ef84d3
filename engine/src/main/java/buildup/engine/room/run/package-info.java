/**
 * Round the corner: what a section becomes when it runs along the walls of a {@link buildup.engine.room.plan.Plan}. A course
 * (a piece of the stack that is put up) lies at its own projection and so has its own length on every stretch: a cut at an
 * end moves out by a fixed amount and by so much for every inch of projection ({@link buildup.engine.room.run.Meeting}), and
 * every figure of a {@link buildup.engine.room.run.Job} follows from that one rule. {@link buildup.engine.room.run.Saw} turns
 * the same cut into the settings of a saw.
 */
@NullMarked
package buildup.engine.room.run;

import org.jspecify.annotations.NullMarked;
