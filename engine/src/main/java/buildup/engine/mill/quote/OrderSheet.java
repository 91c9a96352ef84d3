package buildup.engine.mill.quote;

import buildup.catalog.mill.RatesReader;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What stands on the paper beside the moldings, as the order gives it. The program knows no date and no law: all of it is
 * in the words of who writes the quote.
 *
 * @param number of the quote
 * @param revision of it
 * @param date of it
 * @param customer the lines of name and address
 * @param mill the same of who quotes
 * @param terms of payment and delivery
 * @param tax on the sum
 * @param deposit to be paid with the order
 * @param note anything else
 */
public record OrderSheet(
        Optional<String> number,
        Optional<String> revision,
        Optional<String> date,
        List<String> customer,
        List<String> mill,
        Optional<String> terms,
        Optional<Charge> tax,
        Optional<Charge> deposit,
        Optional<String> note) {
    /**
     * A part of the sum, or what is said of it.
     *
     * @param words as they were written
     * @param share of the sum, where they name one
     */
    public record Charge(String words, Optional<BigDecimal> share) {
        static Charge of(String words) {
            return new Charge(words.strip(), RatesReader.share(words));
        }

        /** Of a sum, to the hundredth; absent where no share is named. */
        Optional<BigDecimal> of(BigDecimal sum) {
            return share.map(part -> Price.cents(sum.multiply(part)));
        }
    }

    /** Copies the lists. */
    public OrderSheet {
        customer = List.copyOf(customer);
        mill = List.copyOf(mill);
    }

    /** Reads the block {@code sheet:} of an order; nothing but its own keys belongs there. */
    static OrderSheet read(Fields order) {
        Optional<Fields> sheet = order.fields("sheet");
        return new OrderSheet(
                text(sheet, "number"),
                text(sheet, "revision"),
                text(sheet, "date"),
                lines(sheet, "customer"),
                lines(sheet, "mill"),
                text(sheet, "terms"),
                text(sheet, "tax").map(Charge::of),
                text(sheet, "deposit").map(Charge::of),
                text(sheet, "note"));
    }

    private static Optional<String> text(Optional<Fields> sheet, String key) {
        return sheet.flatMap(fields -> fields.text(key)).map(String::strip);
    }

    /** A list of lines, or one text of one or more. */
    private static List<String> lines(Optional<Fields> sheet, String key) {
        return sheet.map(fields -> fields.scalars(key)).orElse(List.of()).stream()
                .map(Scalar::text)
                .flatMap(String::lines)
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
    }
}
