package buildup.engine.mill.quote;

import buildup.catalog.Catalog;
import buildup.engine.mill.milling.Knife;
import buildup.engine.mill.milling.Milled;
import buildup.engine.mill.milling.Milling;
import buildup.engine.mill.milling.MillingNotices;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notices;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/**
 * What a mill asks for an order.
 *
 * @param toMinimum what is added where all items together come to less than the mill takes
 * @param total of all that is priced; nothing when nothing is
 * @param marks knife marks in an inch
 * @param assumed what was taken for granted of all items, a sentence each
 */
public record Quote(
        Order order, List<Quoted> items, BigDecimal toMinimum, BigDecimal total, double marks, List<Phrase> assumed) {
    /** Copies the lists. */
    public Quote {
        items = List.copyOf(items);
        assumed = List.copyOf(assumed);
    }

    /**
     * The order at its rates.
     *
     * @param notices told what cannot be run as it is drawn
     */
    public static Quote of(Order order, Catalog catalog, Notices notices) {
        List<Milled> milled = order.items().stream()
                .map(item -> milled(order, item, catalog, notices))
                .toList();
        List<Quoted> items = quoted(order, milled);
        List<BigDecimal> totals = items.stream()
                .flatMap(item -> item.price().stream())
                .map(Price::total)
                .toList();
        BigDecimal sum = totals.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal least = totals.isEmpty() ? BigDecimal.ZERO : order.rates().minimum();
        BigDecimal toMinimum = Price.cents(least.subtract(sum).max(BigDecimal.ZERO));
        double marks = Knife.marks(order.head());
        return new Quote(
                order, items, toMinimum, Price.cents(sum.add(toMinimum)), marks, new Assumptions(order).ofAll(marks));
    }

    /** What the customer is asked for it. */
    public Offer offer() {
        return Offer.of(this);
    }

    /** What cannot be made, and so has no price, in sentences. */
    public List<Phrase> notPriced() {
        return items.stream().flatMap(item -> item.notPriced().stream()).toList();
    }

    private static Milled milled(Order order, OrderItem item, Catalog catalog, Notices notices) {
        Notices said = new Notices();
        Milled milled = Milling.of(item.profile(), catalog, Optional.of(order.head()), List.of(), said);
        milled.obstacles().forEach(notice -> notices.add(notice.of(item.name())));
        said.sorted().stream()
                .filter(notice -> notice.code().equals(MillingNotices.THIN_WEB.name()))
                .forEach(notice -> notices.add(notice.of(item.name())));
        return milled;
    }

    private static List<Quoted> quoted(Order order, List<Milled> milled) {
        List<OrderItem> cut = new ArrayList<>();
        for (int i = 0; i < milled.size(); i++) {
            if (milled.get(i).obstacles().isEmpty()) {
                cut.add(order.items().get(i));
            }
        }
        Iterator<Shared> shared = Sharing.of(order, cut).iterator();
        List<Quoted> items = new ArrayList<>();
        for (int i = 0; i < milled.size(); i++) {
            Shared own = milled.get(i).obstacles().isEmpty() ? shared.next() : Shared.NONE;
            items.add(quoted(order, order.items().get(i), milled.get(i), own));
        }
        return items;
    }

    private static Quoted quoted(Order order, OrderItem item, Milled milled, Shared shared) {
        Blank blank = item.blank(order.mill());
        Optional<Price> price = milled.obstacles().isEmpty()
                ? Optional.of(Price.of(order, item, milled, blank, item.feet(), shared))
                : Optional.empty();
        List<Price> breaks = price.isEmpty()
                ? List.of()
                : order.breaks().stream()
                        .map(feet -> Price.of(order, item, milled, blank, feet, Shared.NONE))
                        .toList();
        return new Quoted(
                item,
                blank,
                milled,
                price,
                breaks,
                new Assumptions(order).of(item, blank, price, milled),
                price.map(one -> new Reckoning(order, item, blank, milled, one, shared).steps())
                        .orElse(List.of()));
    }

    /** Pounds of everything that is priced. */
    public double weight() {
        return items.stream()
                .mapToDouble(one -> one.price()
                        .map(price -> one.item().weight(price.feet()))
                        .orElse(0.0))
                .sum();
    }
}
