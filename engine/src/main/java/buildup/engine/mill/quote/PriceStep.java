package buildup.engine.mill.quote;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;

/**
 * One figure of a price, and how it came about.
 *
 * @param what it is
 * @param amount the figure itself
 * @param how it follows from figures before it and from the lists
 */
public record PriceStep(String what, Figure amount, Phrase how) {}
