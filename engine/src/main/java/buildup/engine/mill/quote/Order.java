package buildup.engine.mill.quote;

import buildup.catalog.Catalog;
import buildup.catalog.mill.Head;
import buildup.catalog.mill.Mill;
import buildup.catalog.mill.Rates;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.Fields;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notices;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An order of moldings.
 *
 * @param unit that the order counts in, and that it is told in
 * @param validUntil until when the quote holds, as the order says; the program knows no date
 * @param head that runs them
 * @param sheet what stands on the paper beside them
 * @param breaks other quantities to be priced, feet
 */
public record Order(
        String title,
        LengthUnit unit,
        Optional<String> validUntil,
        Mill mill,
        Rates rates,
        Head head,
        OrderSheet sheet,
        List<OrderItem> items,
        List<BigDecimal> breaks) {
    public Order {
        items = List.copyOf(items);
        breaks = List.copyOf(breaks);
    }

    /** The unit that an order counts in, also of one that is refused. */
    public static LengthUnit unit(Document document) {
        return Fields.of(document, new Claims(), new Notices(), new LengthReader(LengthUnit.INCH, Map.of()))
                .text("units")
                .flatMap(LengthUnit::named)
                .orElse(LengthUnit.INCH);
    }

    /** Reads an order; empty when anything in it was refused. */
    public static Optional<Order> read(Document document, Catalog catalog, Claims claims, Notices notices) {
        return new OrderReader(catalog, claims, notices).read(document);
    }
}
