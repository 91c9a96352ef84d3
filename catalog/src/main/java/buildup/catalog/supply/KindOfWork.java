package buildup.catalog.supply;

import java.math.BigDecimal;

/**
 * A kind of work, and how much more wood than its lengths take it wants.
 *
 * @param about one line for a list
 * @param waste a share, 0 or more
 */
public record KindOfWork(String name, String about, BigDecimal waste) {}
