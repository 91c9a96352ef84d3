package buildup.engine.room.sticks;

import buildup.engine.room.stock.Shop.Aim;

/**
 * Boards of one thickness that are ripped: how far the two stages together can be from the best. The strips of each lot
 * are laid out by themselves, then boards are filled with strips; another way to mix them may take less.
 *
 * @param over how much more this may take than any other way to rip boards over their whole length into such strips: hundredths when the aim is the price, else boards bought
 */
public record RipPlan(double thickness, String wood, Aim aim, long over) {}
