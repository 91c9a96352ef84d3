package buildup.engine.mill.quote;

import buildup.shared.figure.Phrase;
import java.util.List;

/**
 * One molding, quoted.
 *
 * @param breaks the same at other quantities, as if it were ordered alone, in rising order
 * @param assumed what was taken for granted, a sentence each
 */
public record Quoted(Item item, Blank blank, Price price, List<Price> breaks, List<Phrase> assumed) {
    public Quoted {
        breaks = List.copyOf(breaks);
        assumed = List.copyOf(assumed);
    }
}
