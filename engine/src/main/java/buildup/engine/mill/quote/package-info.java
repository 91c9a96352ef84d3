/**
 * What an order of moldings takes and costs: the blank that a profile is run from, the wood that goes into it, the time
 * at the saw and at the molder, and the price of it all at the rates of a mill.
 *
 * <p>An order is read by {@link buildup.engine.mill.quote.Order}, answered by {@link buildup.engine.mill.quote.Quote}. Lengths are
 * inches, lengths of a run feet; sums of money are exact decimals, rounded to the hundredth where they are charged. No
 * clock is asked: until when a quote holds is written in the order.
 */
@NullMarked
package buildup.engine.mill.quote;

import org.jspecify.annotations.NullMarked;
