package buildup.engine.mill.quote;

import buildup.engine.mill.milling.Milled;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notice;
import java.util.List;
import java.util.Optional;

/**
 * One molding, quoted.
 *
 * @param milled how it is made
 * @param price absent when it cannot be made as it is drawn
 * @param breaks the same at other quantities, as if it were ordered alone, in rising order
 * @param assumed what was taken for granted, a sentence each
 * @param how each figure of its price came about
 */
public record Quoted(
        OrderItem item,
        Blank blank,
        Milled milled,
        Optional<Price> price,
        List<Price> breaks,
        List<Phrase> assumed,
        List<PriceStep> how) {
    private static final Phrase NOT_PRICED = Phrase.of("'{item}' is not priced. {reason} {cure}");

    /** Copies the lists. */
    public Quoted {
        breaks = List.copyOf(breaks);
        assumed = List.copyOf(assumed);
        how = List.copyOf(how);
    }

    /** Why it has no price, a sentence or two each. */
    public List<Phrase> notPriced() {
        return milled.obstacles().stream().map(this::notPriced).toList();
    }

    private Phrase notPriced(Notice notice) {
        return NOT_PRICED
                .with("item", item.name())
                .with("reason", notice.sentence())
                .with("cure", notice.cure().orElse(Phrase.of("")));
    }
}
