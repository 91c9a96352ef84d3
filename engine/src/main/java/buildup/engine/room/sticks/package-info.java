/**
 * What wood a job takes. The cuts of a {@link buildup.engine.room.run.Job} become {@link buildup.engine.room.stock.StickPiece}s; those
 * that are cut from the same stick or strip make a {@link buildup.engine.room.sticks.Lot}; each lot is laid out on the sticks
 * of the {@link buildup.engine.room.stock.Shop} at the least price or with the fewest sticks
 * ({@link buildup.engine.solve.StickSearch}). Boards are cut in two stages: ripped into strips over their whole length,
 * then crosscut; what no board reaches is glued up from plies. Lengths are whole steps of an inch
 * ({@link buildup.engine.room.stock.LengthSteps}), money is whole hundredths.
 */
@NullMarked
package buildup.engine.room.sticks;

import org.jspecify.annotations.NullMarked;
