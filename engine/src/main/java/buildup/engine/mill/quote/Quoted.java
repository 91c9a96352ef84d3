package buildup.engine.mill.quote;

import buildup.engine.mill.milling.Milled;
import buildup.engine.mill.milling.MillingNotices;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notice;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One molding, quoted.
 *
 * @param milled how it is made
 * @param price absent when it cannot be made as it is drawn
 * @param breaks the same at other quantities, as if it were ordered alone, in rising order
 * @param assumed what was taken for granted, a sentence each
 * @param how each figure of its price came about
 * @param whole what it is the last piece of, as the customer has it; absent for all others
 * @param inTwo where it could be run as two pieces that can be made and glued, when it cannot be made as it is drawn
 */
public record Quoted(
        OrderItem item,
        Blank blank,
        Milled milled,
        Optional<Price> price,
        List<Price> breaks,
        List<Phrase> assumed,
        List<PriceStep> how,
        Optional<Quoted> whole,
        Optional<Halving> inTwo) {
    /** Of these two pieces are a way out. */
    private static final Set<String> IN_PIECES =
            Set.of(MillingNotices.UNDERCUT.name(), MillingNotices.TOO_DEEP.name(), MillingNotices.WIDE_KNIFE.name());

    private static final Phrase NOT_PRICED = Phrase.of("'{item}' is not priced. {reason} {cure}");

    /** Copies the lists. */
    public Quoted {
        breaks = List.copyOf(breaks);
        assumed = List.copyOf(assumed);
        how = List.copyOf(how);
    }

    /** Why it has no price, a sentence or two each. */
    public List<Phrase> notPriced() {
        return obstacles(item, milled).stream().map(this::notPriced).toList();
    }

    /** What keeps an item from being made, each once; a piece of two is not told to be made of two. */
    static List<Notice> obstacles(OrderItem item, Milled milled) {
        return milled.obstacles().stream()
                .map(notice -> item.half().isPresent() && IN_PIECES.contains(notice.code())
                        ? notice.cure(QuoteNotices.PART_ELSEWHERE)
                        : notice)
                .distinct()
                .toList();
    }

    private Phrase notPriced(Notice notice) {
        Phrase cure = notice.cure().orElse(Phrase.of(""));
        return NOT_PRICED
                .with("item", item.name())
                .with("reason", notice.sentence())
                .with("cure", orInTwo(cure, inTwo));
    }

    /** A cure, and the two pieces that it may be made of instead. */
    static Phrase orInTwo(Phrase cure, Optional<Halving> inTwo) {
        return inTwo.map(cut -> QuoteNotices.OR_IN_TWO
                        .with("cure", cure)
                        .with("way", cut.level() ? "up" : "out")
                        .with("at", Figure.length(cut.at())))
                .orElse(cure);
    }
}
