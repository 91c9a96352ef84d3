package buildup.catalog.wood;

import buildup.shared.length.Length;

/**
 * How far sizes of one kind of stock stray from what they are called, plus and minus.
 *
 * @param name the kind of stock, or a wood that has its own
 * @param about one line for a list
 */
public record StockSpread(String name, String about, Length thickness, Length width) {}
