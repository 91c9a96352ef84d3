package buildup.engine.mill.quote;

import buildup.catalog.Catalog;
import buildup.engine.mill.milling.Knife;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notices;
import java.math.BigDecimal;
import java.util.List;

/**
 * What a mill asks for an order.
 *
 * @param items those that are run: a molding that is glued of two pieces stands as two
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
        List<Quoted> items = new Quoting(order, catalog, notices).items();
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

    /** Pounds of everything that is priced. */
    public double weight() {
        return items.stream()
                .mapToDouble(one -> one.price()
                        .map(price -> one.item().weight(price.feet()))
                        .orElse(0.0))
                .sum();
    }
}
