package buildup.cli.report;

import buildup.cli.table.Cell;
import buildup.cli.table.Display;
import buildup.cli.table.Table;
import buildup.cli.table.TextTable;
import buildup.engine.mill.quote.Blank;
import buildup.engine.mill.quote.Item;
import buildup.engine.mill.quote.Price;
import buildup.engine.mill.quote.Quote;
import buildup.engine.mill.quote.Quoted;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** A quote as text: what is asked, what it takes, what it costs, what was taken for granted. */
public final class QuoteText {
    /** Said wherever knives and cutters are. */
    public static final String CAUTION =
            "Knives and cutters hurt: guards, speeds and feeds are those of the machine's and the cutter's makers, and who"
                    + " runs them has been taught.";

    private static final String LINE = "______________________";

    private final Quote quote;
    private final Printed printed;
    private final StringBuilder text = new StringBuilder();

    private QuoteText(Quote quote) {
        this.quote = quote;
        this.printed = new Printed(quote.order().unit());
    }

    /** As text of at most 80 columns. */
    public static String write(Quote quote) {
        return new QuoteText(quote).written();
    }

    private String written() {
        lines(title(quote));
        lines(valid(quote));
        text.append('\n');
        text.append(TextTable.write(prices(quote), TextReport.WIDTH));
        text.append('\n');
        if (!quote.order().breaks().isEmpty()) {
            text.append(TextTable.write(breaks(quote), TextReport.WIDTH)).append('\n');
        }
        text.append(TextTable.write(blanks(), TextReport.WIDTH)).append('\n');
        text.append(TextTable.write(costs(), TextReport.WIDTH)).append('\n');
        text.append("TAKEN FOR GRANTED\n");
        quote.assumed().forEach(said -> point(printed.words(said)));
        for (Quoted one : quote.items()) {
            one.assumed().forEach(said -> point(one.item().name() + ": " + printed.words(said)));
        }
        text.append('\n');
        lines(CAUTION);
        text.append('\n');
        signOff(quote)
                .forEach(line -> text.append(line).append(" ").append(LINE).append('\n'));
        return text.toString();
    }

    private void lines(String sentence) {
        Display.wrap(sentence, TextReport.WIDTH)
                .forEach(line -> text.append(line).append('\n'));
    }

    private void point(String said) {
        List<String> lines = Display.wrap(said, TextReport.WIDTH - 2);
        for (int i = 0; i < lines.size(); i++) {
            text.append(i == 0 ? "- " : "  ").append(lines.get(i)).append('\n');
        }
    }

    public static String title(Quote quote) {
        return quote.order().title().isBlank() ? "Quote" : quote.order().title();
    }

    public static String valid(Quote quote) {
        return quote.order()
                .validUntil()
                .map(until -> "Holds until " + until + ".")
                .orElse("Holds until the day that is written here: " + LINE);
    }

    /** What is to be written by hand. */
    public static List<String> signOff(Quote quote) {
        return List.of("Quoted by, and date:  ", "Accepted by, and date:");
    }

    /** What is asked for each molding and for all. */
    public static Table prices(Quote quote) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Quoted one : quote.items()) {
            Item item = one.item();
            Price price = one.price();
            rows.add(List.of(
                    Cell.of(item.name()),
                    Cell.of(item.wood().name()),
                    sum(item.feet()),
                    sum(price.setUp()),
                    sum(price.knife()),
                    sum(price.foot()),
                    sum(price.total())));
        }
        if (quote.toMinimum().signum() > 0) {
            rows.add(summed("up to the least that an order may be", quote.toMinimum()));
        }
        rows.add(summed("all", quote.total()));
        String currency = quote.order().rates().currency();
        return new Table(
                "PRICES" + (currency.isEmpty() ? "" : " in " + currency),
                Table.columns("molding", "wood", ">feet", ">set-up", ">knife", ">each foot", ">in all"),
                rows);
    }

    private static List<Cell> summed(String what, BigDecimal sum) {
        return List.of(Cell.of(what), Cell.EMPTY, Cell.EMPTY, Cell.EMPTY, Cell.EMPTY, Cell.EMPTY, sum(sum));
    }

    /** The same moldings at other quantities. */
    public static Table breaks(Quote quote) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Quoted one : quote.items()) {
            for (Price price : one.breaks()) {
                rows.add(List.of(
                        Cell.of(one.item().name()),
                        sum(price.feet()),
                        sum(price.foot()),
                        sum(price.total()),
                        sum(price.each())));
            }
        }
        return new Table(
                "OTHER QUANTITIES, each molding by itself",
                Table.columns("molding", ">feet", ">each foot", ">in all", ">a foot with set-up and knife"),
                rows);
    }

    private Table blanks() {
        return new Table(
                "WOOD; board feet to buy, pounds of the finished molding",
                Table.columns(
                        "molding",
                        ">finished",
                        ">area, sq in",
                        ">rough",
                        ">blank",
                        ">strips",
                        ">feet run",
                        ">board feet",
                        ">pounds"),
                quote.items().stream().map(this::blank).toList());
    }

    private List<Cell> blank(Quoted one) {
        Blank blank = one.blank();
        return List.of(
                Cell.of(one.item().name()),
                Cell.of(printed.size(blank.thickness()) + "\u00A0x\u00A0" + printed.size(blank.width())),
                Printed.figure(one.item().profile().outline().area(), 4),
                Cell.of((blank.layers() > 1 ? blank.layers() + " x " : "")
                        + blank.quarter().label()),
                printed.cell(blank.blank()),
                Cell.of(blank.plies() > 1 ? blank.strips() + ", " + blank.plies() + " glued" : "" + blank.strips()),
                Printed.figure(one.price().run(), 0),
                Printed.figure(one.price().boardFeet(), 2),
                Printed.figure(one.item().weight(), 0));
    }

    private Table costs() {
        return new Table(
                "COST before mark-up, for the shop's own eyes",
                Table.columns("molding", ">wood", ">saw and jointer", ">molder", ">finish", ">lengths asked for"),
                quote.items().stream()
                        .map(one -> List.of(
                                Cell.of(one.item().name()),
                                sum(one.price().wood()),
                                sum(one.price().labor()),
                                sum(one.price().machine()),
                                sum(one.price().finish()),
                                sum(one.price().specified())))
                        .toList());
    }

    private static Cell sum(BigDecimal sum) {
        return Cell.of(sum.toPlainString(), sum.doubleValue());
    }
}
