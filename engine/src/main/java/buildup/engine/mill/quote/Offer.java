package buildup.engine.mill.quote;

import buildup.shared.length.LengthUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a customer is asked to pay. Where all items together come to less than the mill takes, each bears its part of what is
 * added, so that no smaller sum stands anywhere.
 *
 * @param items those that can be made, with their prices
 * @param sum of them
 * @param tax on it; absent where the order names no share
 * @param total with the tax
 * @param deposit to be paid with the order; absent where the order names no share
 */
public record Offer(
        List<Line> items, BigDecimal sum, Optional<BigDecimal> tax, BigDecimal total, Optional<BigDecimal> deposit) {
    /**
     * A price for so many feet.
     *
     * @param each for a foot, all in
     */
    public record Ask(BigDecimal feet, BigDecimal each, BigDecimal total) {
        static Ask of(BigDecimal feet, BigDecimal total, LengthUnit unit) {
            return new Ask(feet, Price.rate(total, feet, unit), total);
        }
    }

    /**
     * One molding.
     *
     * @param breaks other quantities, each ordered alone
     */
    public record Line(Quoted quoted, Ask ask, List<Ask> breaks) {
        /** Copies the list. */
        public Line {
            breaks = List.copyOf(breaks);
        }
    }

    /** Copies the list. */
    public Offer {
        items = List.copyOf(items);
    }

    static Offer of(Quote quote) {
        List<Line> lines = new ArrayList<>();
        BigDecimal own = quote.total().subtract(quote.toMinimum());
        BigDecimal asked = BigDecimal.ZERO;
        BigDecimal reached = BigDecimal.ZERO;
        for (List<Quoted> pieces : moldings(quote)) {
            Quoted last = pieces.get(pieces.size() - 1);
            // running sums are rounded, not parts, so that the parts add up
            reached = reached.add(total(pieces));
            BigDecimal upTo = quote.total().multiply(reached).divide(own, 2, RoundingMode.HALF_UP);
            BigDecimal feet = last.price().orElseThrow().feet();
            lines.add(new Line(
                    last.whole().orElse(last),
                    Ask.of(feet, upTo.subtract(asked), quote.order().unit()),
                    breaks(quote, pieces)));
            asked = upTo;
        }
        OrderSheet sheet = quote.order().sheet();
        Optional<BigDecimal> tax = sheet.tax().flatMap(charge -> charge.of(quote.total()));
        BigDecimal total = Price.cents(quote.total().add(tax.orElse(BigDecimal.ZERO)));
        return new Offer(lines, quote.total(), tax, total, sheet.deposit().flatMap(charge -> charge.of(total)));
    }

    /** What is priced, molding by molding, each with all its pieces. */
    private static List<List<Quoted>> moldings(Quote quote) {
        Map<String, List<Quoted>> moldings = new LinkedHashMap<>();
        for (Quoted one : quote.items()) {
            if (one.price().isPresent()) {
                String whole = one.item()
                        .half()
                        .map(Halving.Half::whole)
                        .orElse(one.item().name());
                moldings.computeIfAbsent(whole, name -> new ArrayList<>()).add(one);
            }
        }
        return List.copyOf(moldings.values());
    }

    private static BigDecimal total(List<Quoted> pieces) {
        return pieces.stream()
                .map(piece -> piece.price().orElseThrow().total())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static List<Ask> breaks(Quote quote, List<Quoted> pieces) {
        BigDecimal least = quote.order().rates().minimum();
        List<Ask> breaks = new ArrayList<>();
        for (int i = 0; i < pieces.get(0).breaks().size(); i++) {
            int at = i;
            BigDecimal sum = pieces.stream()
                    .map(piece -> piece.breaks().get(at).total())
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            breaks.add(Ask.of(
                    pieces.get(0).breaks().get(at).feet(),
                    Price.cents(sum.max(least)),
                    quote.order().unit()));
        }
        return breaks;
    }
}
