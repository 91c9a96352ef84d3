/**
 * What wood a job takes. The cuts of a {@link buildup.engine.run.Job} become {@link buildup.engine.sticks.Piece}s; those
 * that are cut from the same stick or strip make a {@link buildup.engine.sticks.Lot}; each lot is laid out on the sticks
 * of the {@link buildup.engine.sticks.Shop} at the least price or with the fewest sticks
 * ({@link buildup.engine.solve.StickSearch}). Boards are cut in two stages: ripped into strips over their whole length,
 * then crosscut; what no board reaches is glued up from plies. Lengths are whole steps of an inch
 * ({@link buildup.engine.sticks.Fine}), money is whole hundredths.
 */
@NullMarked
package buildup.engine.sticks;

import org.jspecify.annotations.NullMarked;
