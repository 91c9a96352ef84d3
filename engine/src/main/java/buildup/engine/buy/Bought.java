package buildup.engine.buy;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import java.util.OptionalDouble;

/**
 * One thing that is bought, in whole packs.
 *
 * @param name of it, without its length
 * @param length of a fastener that is sold in several, in
 * @param called of it as the trade asks for it
 * @param use what it is for, and how the need is counted
 * @param needed how much, spares included, before what lies in the shop is taken off
 * @param onHand how much of it lies in the shop
 * @param basket the packs that are bought; empty when none is needed, or it is not known how it is sold
 */
record Bought(
        String name, OptionalDouble length, Phrase called, Phrase use, Figure needed, Figure onHand, Basket basket) {}
