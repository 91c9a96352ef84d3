package buildup.engine.mill.quote;

import buildup.catalog.mill.Mill;
import buildup.engine.mill.milling.Milled;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
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

/** What a customer reads of a quote: what is delivered, and what it costs. Nothing of how the shop comes to it. */
public final class OfferSheets {
    private static final Phrase PRICES = Phrase.of("PRICES");
    private static final Phrase PRICES_IN = Phrase.of("PRICES in {currency}; the amount counts, the price is rounded");
    private static final Phrase QUANTITIES = Phrase.of("OTHER QUANTITIES, each molding ordered by itself");

    private static final Phrase NAMED = Phrase.of("{name}.");
    private static final Phrase SIZE =
            Phrase.of("{wood}, finished {thickness} x {width}, within {accuracy} of the drawing.");
    private static final Phrase MOISTURE = Phrase.of("Moisture of the wood when it leaves the mill: {moisture}.");
    private static final Phrase RANDOM = Phrase.of("Random lengths up to {longest}.");
    private static final Phrase RANDOM_FROM =
            Phrase.of("Random lengths from {shortest} to {longest}; no more than {few} of it under {under}.");
    private static final Phrase LENGTHS = Phrase.of("Lengths: {lengths}.");
    private static final Phrase STICKS = Phrase.of("{each} of {length}");
    private static final Phrase GLUED_WIDE = Phrase.of("Glued up of {pieces} pieces across its width.");
    private static final Phrase GLUED_THICK = Phrase.of("Glued up of {pieces} layers.");
    private static final Phrase GLUED_OF_TWO = Phrase.of("Glued up of two pieces.");
    private static final Phrase CORNERS = Phrase.of("Inside corners drawn sharp come with a radius of {radius}.");
    private static final Phrase FINISH = Phrase.of("Finish: {finishes}.");
    private static final Phrase NOT_QUOTED = Phrase.of("'{item}' cannot be made as it is drawn. It is not quoted.");

    private OfferSheets() {}

    /** In the order of a quote. */
    public static List<Sheet> of(Quote quote) {
        return of(Optional.of(quote));
    }

    /**
     * The same, or the columns alone.
     *
     * @param quote absent for the columns alone
     */
    public static List<Sheet> of(Optional<Quote> quote) {
        return List.of(head(quote), details(quote), items(quote), total(quote));
    }

    /** What is not quoted, a sentence each. */
    public static List<Phrase> notQuoted(Quote quote) {
        return quote.items().stream()
                .filter(one -> one.price().isEmpty())
                .map(one -> one.item()
                        .half()
                        .map(Halving.Half::whole)
                        .orElse(one.item().name()))
                .distinct()
                .map(name -> NOT_QUOTED.with("item", name))
                .toList();
    }

    private static Sheet head(Optional<Quote> quote) {
        Optional<OrderSheet> sheet = quote.map(one -> one.order().sheet());
        return Sheet.single("", "QUOTE", sheet)
                .wordsIf("number", "quote", OrderSheet::number)
                .wordsIf("revision", "revision", OrderSheet::revision)
                .wordsIf("date", "date", OrderSheet::date)
                .wordsIf(
                        "validUntil",
                        "valid until",
                        one -> quote.orElseThrow().order().validUntil())
                .wordsIf("mill", "from", one -> lines(one.mill()))
                .wordsIf("customer", "to", one -> lines(one.customer()))
                .wordsIf("terms", "terms", OrderSheet::terms)
                .wordsIf("note", "note", OrderSheet::note)
                .sheet();
    }

    private static Optional<String> lines(List<String> lines) {
        return lines.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", lines));
    }

    /** A molding and what is said of it. */
    private record Detail(String molding, List<Phrase> sentences) {}

    private static Sheet details(Optional<Quote> quote) {
        List<Detail> rows = quote.map(one -> one.offer().items().stream()
                        .map(line -> new Detail(line.quoted().item().name(), details(one, line.quoted())))
                        .toList())
                .orElse(List.of());
        return Sheet.of("details", "WHAT IS DELIVERED", rows)
                .words("molding", "molding", Detail::molding)
                .sayings("details", "what is delivered", Detail::sentences)
                .sheet();
    }

    /** Size, wood, lengths and finish of a molding, a sentence each. */
    public static List<Phrase> details(Quote quote, Quoted one) {
        Mill mill = quote.order().mill();
        Blank blank = one.blank();
        List<Phrase> all = new ArrayList<>();
        String called = one.item().profile().name();
        if (!called.equals(one.item().name())) {
            all.add(NAMED.with("name", called));
        }
        all.add(SIZE.with("wood", one.item().wood().name())
                .with("thickness", Amounts.size(blank.thickness()))
                .with("width", Amounts.size(blank.width()))
                .with("accuracy", Amounts.size(mill.accuracy())));
        mill.moisture().ifPresent(moisture -> all.add(MOISTURE.with("moisture", moisture)));
        all.add(lengths(mill, one));
        if (one.item().halving().isPresent()) {
            all.add(GLUED_OF_TWO);
        } else if (blank.plies() > 1) {
            all.add(GLUED_WIDE.with("pieces", Figure.count(blank.plies())));
        }
        if (one.item().halving().isEmpty() && blank.layers() > 1) {
            all.add(GLUED_THICK.with("pieces", Figure.count(blank.layers())));
        }
        Milled milled = one.milled();
        milled.corners().stream()
                .findFirst()
                .ifPresent(corner -> all.add(CORNERS.with("radius", Amounts.size(corner.radius()))));
        if (!one.item().finishes().isEmpty()) {
            all.add(FINISH.with(
                    "finishes",
                    Listing.commas(
                            one.item().finishes().stream().map(Phrase::plain).toList())));
        }
        return List.copyOf(all);
    }

    private static Phrase lengths(Mill mill, Quoted one) {
        Optional<Sticks> sticks =
                one.price().map(Price::sticks).filter(asked -> !asked.lengths().isEmpty());
        if (sticks.isPresent()) {
            Figure each = Figure.count(sticks.get().each());
            return LENGTHS.with(
                    "lengths",
                    Listing.and(sticks.get().lengths().stream()
                            .map(length -> STICKS.with("each", each)
                                    .with("length", Figure.length(length).rounded(Rounding.STICK)))
                            .toList()));
        }
        Phrase random = mill.random()
                .map(lengths -> RANDOM_FROM
                        .with("shortest", Amounts.run(lengths.shortest()))
                        .with("few", Amounts.percent(lengths.few()))
                        .with("under", Amounts.run(lengths.under())))
                .orElse(RANDOM);
        return random.with("longest", Amounts.run(mill.longest()));
    }

    private static Sheet items(Optional<Quote> quote) {
        String currency = quote.map(one -> one.order().rates().currency()).orElse("");
        List<Offer.Line> lines = quote.map(one -> one.offer().items()).orElse(List.of());
        return Sheet.of("items", "MOLDINGS", lines)
                .name("name", "molding", line -> line.quoted().item().name())
                .words("wood", "wood", line -> line.quoted().item().wood().name())
                .one("price", "price", ", ", ask(), line -> Optional.of(line.ask()))
                .many("quantities", "other quantities", ask(), Offer.Line::breaks)
                .json()
                .table(
                        currency.isEmpty() ? PRICES : PRICES_IN.with("currency", currency),
                        "name",
                        "wood",
                        "price.quantity",
                        "price.each",
                        "price.total")
                .tableOfEach(
                        "quantities",
                        QUANTITIES.template(),
                        "name",
                        "quantities.quantity",
                        "quantities.each",
                        "quantities.total")
                .sheet();
    }

    private static Columns<Offer.Ask> ask() {
        return Columns.<Offer.Ask>inner()
                .measure("quantity", "quantity", Quantity.RUN, Rounding.decimals(2), ask -> sum(ask.feet()))
                .measure("each", "price", Quantity.MONEY_PER_RUN, ask -> sum(ask.each()))
                .measure("total", "amount", Quantity.MONEY, ask -> sum(ask.total()));
    }

    private static Sheet total(Optional<Quote> quote) {
        Optional<OrderSheet> sheet = quote.map(one -> one.order().sheet());
        return Sheet.single("", "TOTAL", quote.map(Quote::offer))
                .measureIf("sum", "sum", Quantity.MONEY, Rounding.NEAREST, offer -> some(Optional.of(offer.sum())))
                .json()
                .measureIf(
                        "beforeTax",
                        "sum",
                        Quantity.MONEY,
                        Rounding.NEAREST,
                        offer -> some(offer.tax().map(tax -> offer.sum())))
                .text()
                .wordsIf("taxWords", "tax", offer -> said(sheet.flatMap(OrderSheet::tax), false))
                .wordsIf("taxRate", "tax rate", offer -> said(sheet.flatMap(OrderSheet::tax), true))
                .measureIf("tax", "tax", Quantity.MONEY, Rounding.NEAREST, offer -> some(offer.tax()))
                .measureIf(
                        "total", "total", Quantity.MONEY, Rounding.NEAREST, offer -> some(Optional.of(offer.total())))
                .wordsIf("depositWords", "deposit", offer -> said(sheet.flatMap(OrderSheet::deposit), false))
                .wordsIf("depositRate", "deposit rate", offer -> said(sheet.flatMap(OrderSheet::deposit), true))
                .measureIf(
                        "deposit",
                        "deposit, with the order",
                        Quantity.MONEY,
                        Rounding.NEAREST,
                        offer -> some(offer.deposit()))
                .sheet();
    }

    /** What the order says of a charge, where it names a share or where it does not. */
    private static Optional<String> said(Optional<OrderSheet.Charge> charge, boolean shared) {
        return charge.filter(one -> one.share().isPresent() == shared).map(OrderSheet.Charge::words);
    }

    /** Nothing where nothing is priced. */
    private static OptionalDouble some(Optional<BigDecimal> sum) {
        return sum.filter(amount -> amount.signum() > 0)
                .map(amount -> OptionalDouble.of(amount.doubleValue()))
                .orElse(OptionalDouble.empty());
    }

    private static double sum(BigDecimal sum) {
        return sum.doubleValue();
    }
}
