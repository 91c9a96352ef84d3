package buildup.engine.mill.quote;

import buildup.catalog.Catalog;
import buildup.catalog.words.WordNotices;
import buildup.engine.mill.milling.Knife;
import buildup.engine.mill.milling.Milled;
import buildup.engine.mill.milling.Milling;
import buildup.engine.mill.milling.MillingNotices;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notices;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;

/**
 * What a mill asks for an order.
 *
 * @param toMinimum what is added where all items together come to less than the mill takes
 * @param marks knife marks in an inch
 * @param assumed what was taken for granted of all items, a sentence each
 */
public record Quote(
        Order order, List<Quoted> items, BigDecimal toMinimum, BigDecimal total, double marks, List<Phrase> assumed) {
    public Quote {
        items = List.copyOf(items);
        assumed = List.copyOf(assumed);
    }

    /** What of the mill's answers stops a molding from being run as it is drawn. */
    private static final Set<String> TOLD =
            Set.of(WordNotices.KERF_THROUGH.name(), MillingNotices.THIN_WEB.name(), MillingNotices.TOO_DEEP.name());

    /**
     * The order at its rates.
     *
     * @param notices told what cannot be run as it is drawn
     */
    public static Quote of(Order order, Catalog catalog, Notices notices) {
        List<Quoted> items = order.items().stream()
                .map(item -> quoted(order, item, milled(item, catalog, notices)))
                .toList();
        BigDecimal sum = items.stream().map(item -> item.price().total()).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal toMinimum = Price.cents(order.rates().minimum().subtract(sum).max(BigDecimal.ZERO));
        double marks = Knife.marks(
                order.head().speed(), order.head().knives(), order.head().feed().toInches() / 12);
        return new Quote(
                order, items, toMinimum, Price.cents(sum.add(toMinimum)), marks, new Assumptions(order).ofAll(marks));
    }

    private static Milled milled(Item item, Catalog catalog, Notices notices) {
        Notices said = new Notices();
        Milled milled = Milling.of(item.profile(), catalog, List.of(), said);
        boolean closed = milled.undercuts().stream().anyMatch(undercut -> !undercut.open());
        said.sorted().stream()
                .filter(notice -> TOLD.contains(notice.code())
                        || (closed && notice.code().equals(MillingNotices.UNDERCUT.name())))
                .forEach(notice -> notices.add(notice.of(item.name())));
        return milled;
    }

    private static Quoted quoted(Order order, Item item, Milled milled) {
        Blank blank = Blank.of(item.profile(), order.mill());
        Price price = price(order, item, item.feet(), blank);
        List<Price> breaks = order.breaks().stream()
                .map(feet -> price(order, item, feet, blank))
                .toList();
        return new Quoted(item, blank, price, breaks, new Assumptions(order).of(item, blank, price, milled));
    }

    private static Price price(Order order, Item item, BigDecimal feet, Blank blank) {
        return Price.of(item, feet, blank, order.mill(), order.rates(), order.head());
    }

    /** Pounds of everything ordered. */
    public double weight() {
        return items.stream().mapToDouble(one -> one.item().weight()).sum();
    }
}
