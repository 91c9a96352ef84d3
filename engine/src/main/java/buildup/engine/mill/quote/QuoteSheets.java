package buildup.engine.mill.quote;

import buildup.engine.mill.milling.Knife;
import buildup.engine.mill.milling.Pass;
import buildup.engine.mill.milling.Side;
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
import java.util.function.Function;

/** A quote as sheets: what is asked, what it takes, what it costs, what it rests on. */
public final class QuoteSheets {
    private static final String OTHER =
            "OTHER QUANTITIES, each molding by itself; the smallest order is asked at least";

    private static final Phrase PRICES = Phrase.of("PRICES");
    private static final Phrase PRICES_IN = Phrase.of("PRICES in {currency}");
    private static final Phrase ROUGH = Phrase.of("{quarter}");
    private static final Phrase LAYERS = Phrase.of("{layers} x {quarter}");
    private static final Phrase STRIPS = Phrase.of("{strips}");
    private static final Phrase FROM_TO = Phrase.of("{strips} to {most}");
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
        return List.of(
                head(quote),
                items(quote),
                total(quote),
                shop(quote),
                ripping(quote),
                knives(quote),
                how(quote),
                assumptions(quote));
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
                .sayings("notPriced", "what cannot be made", Quote::notPriced)
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
                        "WHAT WOOD AND WORK COME TO before mark-up, SHOP ONLY",
                        "name",
                        "price.wood",
                        "price.drops",
                        "price.labor",
                        "price.glue",
                        "price.machine",
                        "price.finish",
                        "price.specified")
                .sheet();
    }

    /** Boards that give as many strips of a molding and whose drops go the same way, narrowest to widest. */
    private record Ripped(String molding, List<Blank.Ripping> boards) {
        Blank.Ripping narrowest() {
            return boards.get(0);
        }

        Blank.Ripping widest() {
            return boards.get(boards.size() - 1);
        }

        double share() {
            return boards.stream().mapToDouble(Blank.Ripping::share).sum();
        }

        boolean goesOn(Blank.Ripping next) {
            return narrowest().strips() == next.strips() && narrowest().kept() == next.kept();
        }

        static List<Ripped> of(Quoted one) {
            List<Ripped> rows = new ArrayList<>();
            for (Blank.Ripping board : one.blank().ripped()) {
                int last = rows.size() - 1;
                if (last >= 0 && rows.get(last).goesOn(board)) {
                    List<Blank.Ripping> more = new ArrayList<>(rows.get(last).boards());
                    more.add(board);
                    rows.set(last, new Ripped(one.item().name(), more));
                } else {
                    rows.add(new Ripped(one.item().name(), List.of(board)));
                }
            }
            return rows;
        }
    }

    private static Sheet ripping(Optional<Quote> quote) {
        return Sheet.of("ripping", "HOW BOARDS ARE RIPPED", all(quote, Ripped::of))
                .words("molding", "molding", Ripped::molding)
                .length("from", "boards from", ripped -> ripped.narrowest().board())
                .length("to", "to", ripped -> ripped.widest().board())
                .measure("share", "of the wood", Quantity.SHARE, Rounding.decimals(1), Ripped::share)
                .count("strips", "strips", ripped -> ripped.narrowest().strips())
                .length("dropFrom", "drop from", ripped -> ripped.narrowest().drop())
                .length("dropTo", "to", ripped -> ripped.widest().drop())
                .flag(
                        "kept",
                        "wide enough to take back",
                        ripped -> ripped.narrowest().kept())
                .people()
                .sheet();
    }

    /** A knife to be ground for a molding. */
    private record Ground(String molding, Knife knife) {}

    private static Sheet knives(Optional<Quote> quote) {
        List<Ground> rows = all(
                quote,
                one -> one.milled().knives().stream()
                        .map(knife -> new Ground(one.item().name(), knife))
                        .toList());
        return Sheet.of("grinding", "KNIVES", rows)
                .words("molding", "molding", Ground::molding)
                .words("head", "head", ground -> ground.knife().side().word())
                .length("width", "width", ground -> ground.knife().width())
                .wordsIf(
                        "noSteel",
                        "",
                        ground -> ground.knife().stock().isPresent() ? Optional.empty() : Optional.of("none listed"))
                .lengthIf("steel", "steel", ground -> ground.knife().steel())
                .fine("woodDepth", "depth in the wood", ground -> ground.knife().woodDepth())
                .measureIf(
                        "depth",
                        "depth on the knife",
                        Quantity.LENGTH,
                        Rounding.FINE,
                        ground -> OptionalDouble.of(ground.knife().depth()))
                .people()
                .sheet();
    }

    /** A line of the reckoning of a molding. */
    private record Reckoned(String molding, PriceStep step) {}

    private static Sheet how(Optional<Quote> quote) {
        List<Reckoned> rows = all(
                quote,
                one -> one.how().stream()
                        .map(step -> new Reckoned(one.item().name(), step))
                        .toList());
        return Sheet.of("how", "HOW EACH FIGURE CAME ABOUT", rows)
                .words("molding", "molding", Reckoned::molding)
                .words("figure", "figure", row -> row.step().what())
                .value("amount", "amount", row -> row.step().amount())
                .saying("how", "how", row -> row.step().how())
                .people()
                .tableFor("molding", "HOW EACH FIGURE CAME ABOUT", "figure", "amount", "how")
                .sheet();
    }

    private static <T> List<T> all(Optional<Quote> quote, Function<Quoted, List<T>> rows) {
        return quote.map(Quote::items).orElse(List.of()).stream()
                .flatMap(one -> rows.apply(one).stream())
                .toList();
    }

    private static Columns<Quoted> moldings(Optional<Quote> quote) {
        return Sheet.of("items", "MOLDINGS", quote.map(Quote::items).orElse(List.of()))
                .name("name", "molding", one -> one.item().name())
                .wordsIf("pieceOf", "piece of", one -> one.item().half().map(Halving.Half::whole))
                .json()
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
                .measureIf("weight", "weight", Quantity.WEIGHT, Rounding.decimals(0), QuoteSheets::weight)
                .lengths(
                        "lengths",
                        "lengths asked for",
                        Rounding.NEAREST,
                        one -> one.item().lengths())
                .flag("newKnife", "new knife", one -> one.item().newKnife())
                .many("knives", "knives", knife(), one -> one.milled().knives())
                .json()
                .sayings(
                        "cutters",
                        "listed cutters",
                        one -> one.milled().cutters().stream().map(Pass::cutter).toList())
                .json()
                .names("finish", "finishes", one -> one.item().finishes())
                .saying("rough", "rough", one -> rough(one.blank()))
                .saying("strips", "strips of a board", one -> strips(one.blank()))
                .one("blank", "blank", ", ", blank(), one -> Optional.of(one.blank()))
                .one("price", "price", ", ", price(), Quoted::price)
                .sayings("notPriced", "why it is not priced", Quoted::notPriced)
                .json()
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
        int least =
                blank.ripped().stream().mapToInt(Blank.Ripping::strips).min().orElse(0);
        int most = blank.ripped().stream().mapToInt(Blank.Ripping::strips).max().orElse(0);
        Phrase strips = (least == most ? STRIPS : FROM_TO)
                .with("strips", Figure.count(least))
                .with("most", Figure.count(most));
        return blank.plies() > 1 ? GLUED.with("strips", strips).with("plies", Figure.count(blank.plies())) : strips;
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
                .many("boards", "boards", board(), Blank::ripped)
                .json()
                .measure("enough", "of the wood wide enough", Quantity.SHARE, Blank::enough)
                .measure("yield", "yield of a board", Quantity.SHARE, Blank::inStrips);
    }

    private static Columns<Blank.Ripping> board() {
        return Columns.<Blank.Ripping>inner()
                .length("width", "width", Blank.Ripping::board)
                .measure("share", "of the wood", Quantity.SHARE, Blank.Ripping::share)
                .count("strips", "strips", Blank.Ripping::strips)
                .length("drop", "drop", Blank.Ripping::drop)
                .flag("kept", "wide enough to take back", Blank.Ripping::kept);
    }

    private static Columns<Knife> knife() {
        return Columns.<Knife>inner()
                .words(
                        "head",
                        "head",
                        knife -> knife.side().isTilted()
                                ? Side.FRONT.word()
                                : knife.side().word())
                .measureIf(
                        "tilt",
                        "tilt",
                        Quantity.ANGLE,
                        Rounding.NEAREST,
                        knife -> knife.side().isTilted()
                                ? OptionalDouble.of(knife.side().degrees())
                                : OptionalDouble.empty())
                .length("width", "width", Knife::width)
                .measureIf(
                        "depth",
                        "depth on the knife",
                        Quantity.LENGTH,
                        Rounding.FINE,
                        knife -> OptionalDouble.of(knife.depth()))
                .fine("woodDepth", "depth in the wood", Knife::woodDepth)
                .lengthIf("steel", "steel", Knife::steel);
    }

    private static OptionalDouble weight(Quoted one) {
        return one.price()
                .map(price -> OptionalDouble.of(one.item().weight(price.feet())))
                .orElse(OptionalDouble.empty());
    }

    private static Columns<Price> price() {
        return Columns.<Price>inner()
                .measure("feet", "quantity", Quantity.RUN, Rounding.decimals(2), price -> sum(price.feet()))
                .measure("run", "run", Quantity.RUN, Price::run)
                .measure("boardFeet", "", Quantity.BOARD_FEET, Price::boardFeet)
                .measure("wood", "lumber", Quantity.MONEY, price -> sum(price.wood()))
                .measure("drops", "less drops", Quantity.MONEY, price -> sum(price.drops()))
                .measure("labor", "labor", Quantity.MONEY, price -> sum(price.labor()))
                .measure("glue", "glue", Quantity.MONEY, price -> sum(price.glue()))
                .measure("hours", "hours", Quantity.HOURS, Price::hours)
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
                .measureIf(
                        "total",
                        "total",
                        Quantity.MONEY,
                        Rounding.NEAREST,
                        one -> one.total().signum() > 0 ? OptionalDouble.of(sum(one.total())) : OptionalDouble.empty())
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
