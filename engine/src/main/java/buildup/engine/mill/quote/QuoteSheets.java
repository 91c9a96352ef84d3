package buildup.engine.mill.quote;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A quote as sheets: what is asked, what it takes, what it costs, what it rests on. */
public final class QuoteSheets {
    private static final String OTHER = "OTHER QUANTITIES, each molding by itself";

    private static final Phrase PRICES = Phrase.of("PRICES");
    private static final Phrase PRICES_IN = Phrase.of("PRICES in {currency}");
    private static final Phrase ROUGH = Phrase.of("{quarter}");
    private static final Phrase LAYERS = Phrase.of("{layers} x {quarter}");
    private static final Phrase STRIPS = Phrase.of("{strips}");
    private static final Phrase GLUED = Phrase.of("{strips}, {plies} glued");

    /** A sentence about a molding, or about all. */
    private record Assumed(String molding, Phrase sentence) {}

    private QuoteSheets() {}

    /**
     * All that is known, in the order of a quote.
     *
     * @param quote absent for the columns alone
     */
    public static List<Sheet> of(Optional<Quote> quote) {
        return List.of(head(quote), items(quote), total(quote), shop(quote), assumptions(quote));
    }

    /** What a customer is told of the prices. */
    public static List<Sheet> prices(Quote quote) {
        return List.of(items(Optional.of(quote)), total(Optional.of(quote)));
    }

    private static Sheet head(Optional<Quote> quote) {
        return Sheet.single("", "ORDER", quote)
                .wordsIf("validUntil", "valid until", one -> one.order().validUntil())
                .words("mill", "mill", one -> one.order().mill().name())
                .words("rates", "rates", one -> one.order().rates().name())
                .wordsIf(
                        "currency",
                        "currency",
                        one -> Optional.of(one.order().rates().currency()))
                .words("head", "head that runs them", one -> one.order().head().name())
                .measure("marksPerInch", "knife", Quantity.MARKS, Quote::marks)
                .measure("weight", "weight of all", Quantity.WEIGHT, Quote::weight)
                .silent()
                .sheet();
    }

    /** The moldings with their prices. */
    public static Sheet items(Optional<Quote> quote) {
        String currency = quote.map(one -> one.order().rates().currency()).orElse("");
        return moldings(quote)
                .table(
                        currency.isEmpty() ? PRICES : PRICES_IN.with("currency", currency),
                        "name",
                        "wood",
                        "price.feet",
                        "price.setUp",
                        "price.knife",
                        "price.foot",
                        "price.total")
                .tableOfEach("breaks", OTHER, "name", "breaks.feet", "breaks.foot", "breaks.total", "breaks.each")
                .sheet();
    }

    /** The same, as the shop alone sees it. */
    private static Sheet shop(Optional<Quote> quote) {
        return moldings(quote)
                .people()
                .table(
                        "WOOD to buy, and the weight of the finished molding",
                        "name",
                        "size",
                        "area",
                        "rough",
                        "blank.blank",
                        "strips",
                        "price.run",
                        "price.boardFeet",
                        "weight")
                .table(
                        "COST before mark-up, SHOP ONLY",
                        "name",
                        "price.wood",
                        "price.labor",
                        "price.machine",
                        "price.finish",
                        "price.specified")
                .sheet();
    }

    private static Columns<Quoted> moldings(Optional<Quote> quote) {
        return Sheet.of("items", "MOLDINGS", quote.map(Quote::items).orElse(List.of()))
                .name("name", "molding", one -> one.item().name())
                .words("profile", "profile", one -> one.item().profile().name())
                .words("kind", "kind", one -> one.item().profile().kind())
                .json()
                .words("wood", "wood", one -> one.item().wood().name())
                .one("size", "finished", " x ", size(), one -> Optional.of(one.blank()))
                .text()
                .measure(
                        "area",
                        "area",
                        Quantity.AREA,
                        Rounding.decimals(4),
                        one -> one.item().profile().outline().area())
                .measure(
                        "weight",
                        "weight",
                        Quantity.WEIGHT,
                        Rounding.decimals(0),
                        one -> one.item().weight())
                .lengths(
                        "lengths",
                        "lengths asked for",
                        Rounding.NEAREST,
                        one -> one.item().lengths())
                .flag("newKnife", "new knife", one -> one.item().newKnife())
                .length("knifeWidth", "knife width", one -> one.item().knifeWidth())
                .names("finish", "finishes", one -> one.item().finishes())
                .saying("rough", "rough", one -> rough(one.blank()))
                .saying("strips", "strips of a board", one -> strips(one.blank()))
                .one("blank", "blank", ", ", blank(), one -> Optional.of(one.blank()))
                .one("price", "price", ", ", price(), one -> Optional.of(one.price()))
                .many("breaks", "other quantities", price(), Quoted::breaks)
                .json()
                .sayings("assumed", "assumptions", Quoted::assumed)
                .json();
    }

    private static Columns<Blank> size() {
        return Columns.<Blank>inner()
                .length("thickness", "finished thickness", Blank::thickness)
                .length("width", "finished width", Blank::width);
    }

    private static Phrase rough(Blank blank) {
        return (blank.layers() > 1 ? LAYERS : ROUGH)
                .with("layers", Figure.count(blank.layers()))
                .with("quarter", blank.quarter().label());
    }

    private static Phrase strips(Blank blank) {
        return (blank.plies() > 1 ? GLUED : STRIPS)
                .with("strips", Figure.count(blank.strips()))
                .with("plies", Figure.count(blank.plies()));
    }

    private static Columns<Blank> blank() {
        return Columns.<Blank>inner()
                .length("thickness", "finished thickness", Blank::thickness)
                .json()
                .length("width", "finished width", Blank::width)
                .json()
                .words("rough", "rough stock", blank -> blank.quarter().label())
                .json()
                .count("layers", "layers", Blank::layers)
                .length("blank", "blank", Blank::blank)
                .count("plies", "plies", Blank::plies)
                .length("strip", "strip", Blank::strip)
                .count("strips", "strips", Blank::strips)
                .measure("yield", "yield of a board", Quantity.SHARE, Blank::yield);
    }

    private static Columns<Price> price() {
        return Columns.<Price>inner()
                .measure("feet", "quantity", Quantity.RUN, Rounding.decimals(2), price -> sum(price.feet()))
                .measure("run", "run", Quantity.RUN, Price::run)
                .measure("boardFeet", "", Quantity.BOARD_FEET, Price::boardFeet)
                .measure("wood", "lumber", Quantity.MONEY, price -> sum(price.wood()))
                .measure("labor", "labor", Quantity.MONEY, price -> sum(price.labor()))
                .measure("machine", "machine", Quantity.MONEY, price -> sum(price.machine()))
                .measure("finish", "finish", Quantity.MONEY, price -> sum(price.finish()))
                .measure("specified", "lengths asked for", Quantity.MONEY, price -> sum(price.specified()))
                .measure("setUp", "set-up", Quantity.MONEY, price -> sum(price.setUp()))
                .measure("knife", "knife", Quantity.MONEY, price -> sum(price.knife()))
                .measure("foot", "price", Quantity.MONEY_PER_RUN, price -> sum(price.foot()))
                .measure("total", "total", Quantity.MONEY, price -> sum(price.total()))
                .measure("each", "all-in price", Quantity.MONEY_PER_RUN, price -> sum(price.each()));
    }

    private static double sum(BigDecimal sum) {
        return sum.doubleValue();
    }

    private static Sheet total(Optional<Quote> quote) {
        return Sheet.single("", "TOTAL", quote)
                .measure("toMinimum", "added up to the smallest order", Quantity.MONEY, one -> sum(one.toMinimum()))
                .json()
                .measureIf(
                        "added",
                        "added up to the smallest order",
                        Quantity.MONEY,
                        Rounding.NEAREST,
                        one -> one.toMinimum().signum() > 0
                                ? OptionalDouble.of(sum(one.toMinimum()))
                                : OptionalDouble.empty())
                .text()
                .measure("total", "total", Quantity.MONEY, one -> sum(one.total()))
                .sayings("assumed", "assumptions", Quote::assumed)
                .json()
                .sheet();
    }

    private static Sheet assumptions(Optional<Quote> quote) {
        List<Assumed> rows = new ArrayList<>();
        quote.ifPresent(one -> {
            one.assumed().forEach(sentence -> rows.add(new Assumed("all", sentence)));
            one.items()
                    .forEach(item -> item.assumed()
                            .forEach(
                                    sentence -> rows.add(new Assumed(item.item().name(), sentence))));
        });
        return Sheet.of("assumptions", "ASSUMPTIONS", rows)
                .words("molding", "molding", Assumed::molding)
                .sayings("sentence", "what is assumed", assumed -> List.of(assumed.sentence()))
                .people()
                .sheet();
    }
}
