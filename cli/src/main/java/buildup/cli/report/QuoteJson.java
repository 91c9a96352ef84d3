package buildup.cli.report;

import buildup.cli.tell.Json;
import buildup.engine.mill.quote.Blank;
import buildup.engine.mill.quote.Item;
import buildup.engine.mill.quote.Order;
import buildup.engine.mill.quote.Price;
import buildup.engine.mill.quote.Quote;
import buildup.engine.mill.quote.Quoted;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** A quote for programs; what it holds is in {@code quote.schema.json}. */
public final class QuoteJson {
    private QuoteJson() {}

    public static String write(Quote quote, List<Notice> notices, String file) {
        Order order = quote.order();
        Printed printed = new Printed(order.unit());
        return head(QuoteText.title(quote))
                        .put("validUntil", order.validUntil())
                        .put("mill", order.mill().name())
                        .put("rates", order.rates().name())
                        .put("currency", order.rates().currency())
                        .put("head", order.head().name())
                        .put("marksPerInch", quote.marks())
                        .put("weight", quote.weight())
                        .put(
                                "items",
                                quote.items().stream()
                                        .map(one -> item(one, printed))
                                        .toList())
                        .put("toMinimum", sum(quote.toMinimum()))
                        .put("total", sum(quote.total()))
                        .texts(
                                "assumed",
                                quote.assumed().stream().map(printed::words).toList())
                        .put("notices", JsonReport.notices(notices, Optional.of(file), order.unit()))
                        .written()
                + "\n";
    }

    /** What is said of an order that was refused. */
    public static String refusal(String title, List<Notice> notices, String file, LengthUnit unit) {
        return head(title)
                        .put("notices", JsonReport.notices(notices, Optional.of(file), unit))
                        .written()
                + "\n";
    }

    private static Json head(String title) {
        return new Json().put("title", title);
    }

    private static Json item(Quoted quoted, Printed printed) {
        Item item = quoted.item();
        return new Json()
                .put("name", item.name())
                .put("profile", item.profile().name())
                .put("kind", item.profile().kind())
                .put("wood", item.wood().name())
                .put("area", item.profile().outline().area())
                .put("weight", item.weight())
                .numbers("lengths", item.lengths())
                .put("newKnife", item.newKnife())
                .put("knifeWidth", item.knifeWidth())
                .texts("finish", item.finishes())
                .put("blank", blank(quoted.blank()))
                .put("price", price(quoted.price()))
                .put("breaks", quoted.breaks().stream().map(QuoteJson::price).toList())
                .texts("assumed", quoted.assumed().stream().map(printed::words).toList());
    }

    private static Json blank(Blank blank) {
        return new Json()
                .put("thickness", blank.thickness())
                .put("width", blank.width())
                .put("rough", blank.quarter().label())
                .put("layers", blank.layers())
                .put("blank", blank.blank())
                .put("plies", blank.plies())
                .put("strip", blank.strip())
                .put("strips", blank.strips())
                .put("yield", blank.yield());
    }

    private static Json price(Price price) {
        return new Json()
                .put("feet", sum(price.feet()))
                .put("run", price.run())
                .put("boardFeet", price.boardFeet())
                .put("wood", sum(price.wood()))
                .put("labor", sum(price.labor()))
                .put("machine", sum(price.machine()))
                .put("finish", sum(price.finish()))
                .put("specified", sum(price.specified()))
                .put("setUp", sum(price.setUp()))
                .put("knife", sum(price.knife()))
                .put("foot", sum(price.foot()))
                .put("total", sum(price.total()))
                .put("each", sum(price.each()));
    }

    private static double sum(BigDecimal sum) {
        return sum.doubleValue();
    }
}
