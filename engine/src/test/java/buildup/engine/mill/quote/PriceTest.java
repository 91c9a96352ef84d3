package buildup.engine.mill.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.shared.figure.FigurePrinter;
import java.math.BigDecimal;
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

    private static BigDecimal sum(String sum) {
        return new BigDecimal(sum);
    }

    @Test
    void the_price_of_the_nosing_is_what_paper_says() {
        Price price = Ordered.of(Ordered.NOSING.replace("example", "round"), ROUND)
                .first()
                .price();
        // 332.29 board feet to the last place: 319 x 0.79167 / 0.95 / 0.8 = 332.2917
        assertThat(price.wood()).isEqualTo(sum("3322.92"));
        assertThat(price.labor()).isEqualTo(sum("60.00"));
        // 319 ft at 25 ft a minute: 12.76 minutes of 90 an hour
        assertThat(price.machine()).isEqualTo(sum("19.14"));
        assertThat(price.setUp()).isEqualTo(sum("120.00"));
        // 4-1/2 and 1/8 at either edge, at 50 and a fifth more
        assertThat(price.knife()).isEqualTo(sum("285.00"));
        // (3322.92 + 60.00 + 19.14) x 1.2 / 260 = 15.7018
        assertThat(price.foot()).isEqualTo(sum("15.70"));
        assertThat(price.total()).isEqualTo(sum("4487.00"));
        assertThat(price.each()).isEqualTo(sum("17.26"));
    }

    @Test
    void finish_and_lengths_asked_for_come_on_top() {
        String more = Ordered.NOSING.replace("example", "round") + "    finish: oiled\n    lengths: [12', 8']\n";
        Price price = Ordered.of(more, ROUND).first().price();
        assertThat(price.finish()).isEqualTo(sum("130.00"));
        // a tenth of 3322.92 + 60.00 + 19.14 + 130.00
        assertThat(price.specified()).isEqualTo(sum("353.21"));
    }

    @Test
    void a_knife_on_hand_costs_nothing() {
        Price price =
                Ordered.of(Ordered.NOSING + "    knife: on-hand\n").first().price();
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
                .isEqualTo(quote.total().subtract(quote.items().get(0).price().total()));
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
                        .total()
                        .add(quote.items().get(1).price().total()))
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
        Quote quote = Ordered.of(Ordered.NOSING).quote().orElseThrow();
        assertThat(quote.items().get(0).assumed())
                .extracting(FigurePrinter.INCHES::print)
                .containsExactly(
                        "Finished 1-3/8 x 4-1/2, from 8/4, which yields up to 1-3/4.",
                        "Blank 4-3/4 wide, 1/4 over the finished width.",
                        "A board gives 2 strips, 95 % of its width: 1/4 goes with its edge, 1/8 with each cut.",
                        "Waste 15 % (many-miters): 319 ft go through the machine.",
                        "Lengths are random.",
                        "A new knife is ground, 4-3/4 wide, 1/8 over the molding at either edge, and 1.102 deep on the steel.",
                        "The outside head does not reach all of it: also cut by the bottom head, with a cutter of the shop's own.");
        assertThat(quote.assumed())
                .extracting(FigurePrinter.INCHES::print)
                .contains(
                        "Rates 'example': invented figures, to be replaced by the mill's own.",
                        "Boards come in 10 wide, one with another, up to 16 ft long; 80 % of the wood is sound.",
                        "Profiles within 1/32 of the drawing.",
                        "Prices are those of the rates; taxes, freight and packing are not in them.");
    }

    @Test
    void a_board_is_planed_and_takes_no_knife_however_wide_it_is() {
        Ordered wide = Ordered.of(
                "rates: example\nwood: red-oak\nitems: [{ name: shelf, profile: board 3/4 x 14, feet: 100 }]\n");
        assertThat(wide.said()).noneMatch(line -> line.contains("knife"));
        assertThat(wide.first().price().knife()).isEqualByComparingTo(BigDecimal.ZERO);
        assertThat(wide.first().assumed())
                .extracting(FigurePrinter.INCHES::print)
                .contains("S4S: it takes no knife.");
    }
}
