package buildup.engine.mill.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.shared.figure.FigurePrinter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class PriceTest {
    /** Round figures, by which a price can be worked out on paper. */
    private static final String ROUND = """
            rates:
              - { name: round, currency: EUR, wood: { white-oak: 10, red-oak: 1 }, knife: 50, set-up: 100, labor: 60, machine: 90,
                  prepared: 319, finish: { oiled: 0.5 }, specified: 10 %, mark-up: 20 %, minimum: 0 }
            """;

    /** The nosing from boards 10 wide, as its worked example takes them. */
    private static final String ON_TENS = Ordered.NOSING + "    board: 10\n";

    private static BigDecimal sum(String sum) {
        return new BigDecimal(sum);
    }

    /** By hand, line for line: reference/blanks.md, "The price of the nosing". */
    @Test
    void the_price_of_the_nosing_is_what_paper_says() {
        Quoted nosing = Ordered.of(ON_TENS.replace("example", "round"), ROUND).first();
        Price price = nosing.price().orElseThrow();
        // 319 x 0.79167 / 0.95 / 0.8 = 332.2917 board feet at 10, and no drop beside two strips
        assertThat(price.wood()).isEqualTo(sum("3322.92"));
        assertThat(price.drops()).isEqualTo(sum("0.00"));
        assertThat(price.labor()).isEqualTo(sum("60.00"));
        assertThat(price.glue()).isEqualTo(sum("0.00"));
        // 319 ft at 25 ft a minute, by the molder and once more for the kerf: 25.52 minutes of 90 an hour
        assertThat(price.machine()).isEqualTo(sum("38.28"));
        // the top head with its knife, and the bit for the kerf, at 100 and a fifth more
        assertThat(price.setUp()).isEqualTo(sum("240.00"));
        // 4-1/2 and 1/8 at either edge, at 50 and a fifth more
        assertThat(price.knife()).isEqualTo(sum("285.00"));
        // (3322.92 + 60.00 + 38.28) x 1.2 / 260 = 15.7902
        assertThat(price.foot()).isEqualTo(sum("15.79"));
        // 260 x 15.79 + 240 + 285
        assertThat(price.total()).isEqualTo(sum("4630.40"));
        assertThat(price.each()).isEqualTo(sum("17.81"));
    }

    /** The same figures stand on the shop's paper, each with how it came about. */
    @Test
    void every_figure_of_the_price_says_how_it_came_about() {
        Quoted nosing = Ordered.of(ON_TENS.replace("example", "round"), ROUND).first();
        assertThat(nosing.how())
                .extracting(step -> step.what() + " " + FigurePrinter.INCHES.print(step.amount()) + ": "
                        + FigurePrinter.INCHES.print(step.how()))
                .containsExactly(
                        "run 319 ft: 260 ft, 15 % more for waste, and 20 ft to set up",
                        "wood to buy 332.29 board feet: 252.54 board feet in 1 x 319 ft of strip; 95.0 % of the boards'"
                                + " width is strip, and 80 % is sound",
                        "lumber 3322.92: 332.29 board feet at 10.00 a board foot",
                        "labor 60.00: 1 x 319 ft of strip, 319 ft in an hour, at 60.00",
                        "machine 38.28: 319 ft at 25 feet a minute, 2 passes: 0.425 hours at 90.00",
                        "set-up 240.00: 2 x 100.00, and 20 % on it",
                        "knives 285.00: 4-3/4 wide at 50.00 an inch, and 20 % on it",
                        "price 15.79 a foot: 3421.20 of wood and work, and 20 % on it, over 260.00 ft",
                        "total 4630.40: 260.00 ft at 15.79 a foot, and set-up and knives");
    }

    /** A meter's price is what a metric customer multiplies: so many meters at it are the sum, to the hundredth. */
    @Test
    void a_metric_order_is_priced_by_whole_hundredths_a_meter() {
        String metric = "units: mm\n"
                + ON_TENS.replace("example", "round")
                        .replace("feet: 260", "meters: 79")
                        .replace("board: 10", "board: 10 in")
                        .replace(
                                "[out 1, drip 1/4 x 1/4, out to 4-1/2, up 3/8, ovolo in 1, in to 1/2, cove in down 1/2]",
                                "[out 100, up 20]");
        Price price = Ordered.of(metric, ROUND).first().price().orElseThrow();
        BigDecimal meter = price.foot().divide(sum("0.3048"), MathContext.DECIMAL64);
        assertThat(meter.stripTrailingZeros().scale()).isLessThanOrEqualTo(2);
        assertThat(price.total().subtract(price.setUp()).subtract(price.knife()))
                .isEqualByComparingTo(meter.multiply(sum("79")));
        assertThat(price.each().divide(sum("0.3048"), MathContext.DECIMAL64).doubleValue())
                .isCloseTo(price.total().doubleValue() / 79, within(0.005));
    }

    @Test
    void finish_and_lengths_asked_for_come_on_top() {
        String more = ON_TENS.replace("example", "round") + "    finish: oiled\n    lengths: [12', 8']\n";
        Price price = Ordered.of(more, ROUND).first().price().orElseThrow();
        assertThat(price.finish()).isEqualTo(sum("130.00"));
        // a tenth of 3322.92 + 60.00 + 38.28 + 130.00
        assertThat(price.specified()).isEqualTo(sum("355.12"));
    }

    @Test
    void lengths_asked_for_come_in_whole_sticks() {
        String more = Ordered.NOSING.replace("feet: 260", "feet: 263") + "    lengths: [12', 8']\n";
        Price price = Ordered.of(more).first().price().orElseThrow();
        // 263 / 20 is 13.15: 14 of each
        assertThat(price.sticks().each()).isEqualTo(14);
        assertThat(price.feet()).isEqualByComparingTo("280");
        assertThat(price.run()).isCloseTo(280 * 1.15 + 20, within(1e-9));
    }

    /** 4-9/16 took one board's half and 4-5/8 all of it, when boards had one width. */
    @Test
    void a_sixteenth_more_of_width_never_costs_more_than_one_strip_of_some_boards() {
        double before = 0;
        double most = 0;
        for (int sixteenths = 16; sixteenths <= 8 * 16; sixteenths++) {
            double foot = board(sixteenths / 16.0);
            most = before > 0 ? Math.max(most, foot / before) : 0;
            before = foot;
        }
        assertThat(most).isBetween(1.0, 1.08);
        assertThat(board(4.625) / board(4.5625)).isLessThan(1.05);
    }

    /** Price of a foot without set-up. */
    private static double board(double width) {
        return Ordered.of("rates: example\nitems: [{ name: a, profile: board 3/4 x " + width
                        + ", wood: red-oak, feet: 500 }]\n")
                .first()
                .price()
                .orElseThrow()
                .foot()
                .doubleValue();
    }

    /** Boards of one width: what falls off beside the strip is taken back, so that half a board is not paid whole. */
    @Test
    void a_drop_wide_enough_is_taken_back() {
        String order =
                "rates: round\nitems: [{ name: a, profile: board 3/4 x 5, wood: white-oak, feet: 100, board: 10 }]\n";
        Price price = Ordered.of(order, ROUND).first().price().orElseThrow();
        // one strip of 5-1/4 a board: 10 - 1/4 - 5-1/4 - 1/8 = 4-3/8 of 10 are left, at half of 10 a foot
        assertThat(price.boardFeet()).isCloseTo(130 * 10 / 12.0 / 0.8, within(1e-6));
        assertThat(price.drops().doubleValue()).isCloseTo(price.boardFeet() * 0.8 * 4.375 / 10 * 10 / 2, within(0.005));
    }

    @Test
    void layers_and_edges_that_are_glued_cost_their_gluing() {
        String order = "rates: round\nitems: [{ name: a, profile: board 2-1/2 x 3, wood: white-oak, feet: 100 }]\n";
        Price glued = Ordered.of(order, ROUND.replace("prepared: 319", "prepared: 319, glue: 6"))
                .first()
                .price()
                .orElseThrow();
        // 130 ft of one face joint 3-1/4 wide at 6 a square foot; two layers are made ready
        assertThat(glued.glue()).isEqualTo(sum("211.25"));
        assertThat(glued.labor()).isEqualTo(sum("48.90"));
        assertThat(Ordered.of(order, ROUND).said())
                .contains("refusal missing-rate 2 The rates 'round' have no price for gluing, and 'a' is glued up. Add"
                        + " 'glue:' to them, the price of a square foot of joint.");
    }

    @Test
    void a_knife_on_hand_costs_nothing() {
        Price price = Ordered.of(Ordered.NOSING + "    knife: on-hand\n")
                .first()
                .price()
                .orElseThrow();
        assertThat(price.knife()).isEqualTo(sum("0.00"));
        assertThat(price.total()).isEqualTo(price.setUp().add(price.foot().multiply(price.feet())));
    }

    /** The form in which short runs are billed: reference/blanks.md, "Price" (seen). */
    @RepeatedTest(20)
    void every_total_is_set_up_and_knife_and_so_much_a_foot(RepetitionInfo round) {
        Random random = new Random(round.getCurrentRepetition());
        String order = Ordered.NOSING.replace("feet: 260", "feet: " + (1 + random.nextInt(5000))) + "quantities: ["
                + (1 + random.nextInt(99)) + ", 100, 250.5, 1000]\n";
        Quoted quoted = Ordered.of(order).first();
        assertThat(quoted.breaks()).hasSize(4);
        for (Price price : quoted.breaks()) {
            assertThat(price.total())
                    .isEqualTo(Price.cents(
                            price.setUp().add(price.knife()).add(price.feet().multiply(price.foot()))));
        }
        for (int i = 1; i < quoted.breaks().size(); i++) {
            Price fewer = quoted.breaks().get(i - 1);
            Price more = quoted.breaks().get(i);
            assertThat(more.each()).isLessThanOrEqualTo(fewer.each());
            assertThat(more.total()).isGreaterThan(fewer.total());
        }
    }

    @Test
    void an_order_below_the_least_is_charged_the_least() {
        Quote quote = Ordered.of(
                        "rates: example\nitems: [{ profile: cove 3/4 x 3/4, wood: yellow-poplar, feet: 10 }]\n")
                .quote()
                .orElseThrow();
        assertThat(quote.total()).isEqualTo(sum("350.00"));
        assertThat(quote.toMinimum())
                .isEqualTo(quote.total()
                        .subtract(quote.items().get(0).price().orElseThrow().total()));
    }

    @Test
    void the_sum_of_all_items_is_the_total() {
        Quote quote = Ordered.of("""
                        rates: example
                        wood: red-oak
                        items:
                          - { name: a, profile: plain-crown 3-1/4, feet: 120 }
                          - { name: b, profile: cove 1 x 1, feet: 77.5, wood: white-oak }
                        """).quote().orElseThrow();
        assertThat(quote.toMinimum()).isEqualByComparingTo(BigDecimal.ZERO);
        assertThat(quote.items()
                        .get(0)
                        .price()
                        .orElseThrow()
                        .total()
                        .add(quote.items().get(1).price().orElseThrow().total()))
                .isEqualTo(quote.total());
        assertThat(quote.items().get(0).item().wood().name()).isEqualTo("red-oak");
    }

    /** reference/blanks.md, "Knife marks" (computed there). */
    @Test
    void knife_marks_are_told_by_speed_knives_and_feed() {
        assertThat(Ordered.of(Ordered.NOSING).quote().orElseThrow().marks()).isCloseTo(20, within(1e-9));
    }

    /** 5.7140 sq in over 144 of a cubic foot a foot, at the wood's density. */
    @Test
    void the_order_weighs_what_its_sections_hold() {
        Quote quote = Ordered.of(Ordered.NOSING).quote().orElseThrow();
        double density = quote.items().get(0).item().wood().densityPerCubicFoot();
        assertThat(quote.weight()).isCloseTo(5.7140 / 144 * density * 260, within(0.02));
    }

    @Test
    void all_that_a_price_rests_on_is_said() {
        Quote quote = Ordered.of(ON_TENS).quote().orElseThrow();
        assertThat(quote.items().get(0).assumed())
                .extracting(FigurePrinter.INCHES::print)
                .containsExactly(
                        "Finished 1-3/8 x 4-1/2, from 8/4, which yields up to 1-3/4.",
                        "Blank 4-3/4 wide, 1/4 over the finished width.",
                        "95 % of the boards' width goes into strips: 1/4 goes with the edge, 1/8 with each cut.",
                        "Waste 15 % (many-miters): 319 ft go through the machine.",
                        "Lengths are random.",
                        "A new knife is ground for the top head: 4-3/4 wide, 1/8 over the molding at either edge, 1.000 deep"
                                + " in the wood and 1.102 on the steel.",
                        "The bottom head takes a cutter of the shop's list: straight bit, diameter 1/4. It has a pass of its"
                                + " own.");
        assertThat(quote.assumed())
                .extracting(FigurePrinter.INCHES::print)
                .contains(
                        "Rates 'example': invented figures, to be replaced by the mill's own.",
                        "Boards come 5 to 12 wide, 7.6 on average, up to 16 ft long; 80 % of the wood is sound.",
                        "Profiles within 1/32 of the drawing.",
                        "Prices are those of the rates; taxes, freight and packing are not in them.");
    }

    @Test
    void a_board_is_planed_and_takes_no_knife_however_wide_it_is() {
        Ordered wide = Ordered.of(
                "rates: example\nwood: red-oak\nitems: [{ name: shelf, profile: board 3/4 x 14, feet: 100 }]\n");
        assertThat(wide.said()).noneMatch(line -> line.contains("knife"));
        assertThat(wide.first().price().orElseThrow().knife()).isEqualByComparingTo(BigDecimal.ZERO);
        assertThat(wide.first().assumed())
                .extracting(FigurePrinter.INCHES::print)
                .contains("S4S: it takes no knife.");
    }
}
