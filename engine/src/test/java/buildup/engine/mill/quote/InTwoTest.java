package buildup.engine.mill.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.engine.mill.nearest.Neighbors;
import buildup.profiles.Profile;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthUnit;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InTwoTest {
    private static final String ROUND = """
            rates:
              - { name: round, wood: { white-oak: 10 }, knife: 50, set-up: 100, labor: 60, machine: 90, prepared: 300,
                  glue: 6, finish: { oiled: 0.5 }, specified: 10 %, mark-up: 20 %, minimum: 0 }
            """;

    /** An L, 3/4 thick and 11 high, with a rabbet of 1/4 x 1 at its top: cut 6 up, two boards, one of them rabbeted. */
    private static final String TALL = """
            rates: round
            items:
              - { name: tall, wood: white-oak, section: [out 3/4, up 10, in 1/4, up 1, in 1/2], feet: 100, board: 12,
                  finish: [oiled] }
            quantities: [200]
            """;

    private static final String CUT = TALL.replace("feet: 100", "in-two: up 6, feet: 100");

    /** What no head cuts as one: 1-3/4 deep where the head takes 1-1/8. */
    private static final String DEEP = """
            rates: example
            wood: white-oak
            items:
              - { name: step, section: [out 2, up 1, in 1/2, down 1/4, in 1/2, up 3/4, in 1/4, up 1], feet: 80 }
            """;

    /**
     * By hand, from what each piece is: 130 ft of each are run, of strips 6-1/4 and 5-1/4 wide, one from a board of 12 (the
     * second needs 10-3/4 with its kerf, and has 11-3/4: two), the second from its own boards as far as the drops of the
     * first do not hold it; the joint is 3/4 wide.
     */
    @Test
    void two_pieces_cost_what_each_costs_and_their_joint() {
        Quote quote = Ordered.of(CUT, ROUND).quote().orElseThrow();
        Quoted lower = quote.items().get(0);
        Quoted upper = quote.items().get(1);
        assertThat(lower.item().name()).isEqualTo("tall, lower");
        assertThat(upper.item().name()).isEqualTo("tall, upper");
        assertThat(lower.blank().width()).isCloseTo(6, within(1e-9));
        assertThat(upper.blank().width()).isCloseTo(5, within(1e-9));
        Price first = lower.price().orElseThrow();
        Price second = upper.price().orElseThrow();
        assertThat(first.run()).isCloseTo(130, within(1e-9));
        assertThat(first.glue()).isEqualByComparingTo("0");
        // 130 ft of a joint 3/4 wide are 8.125 sq ft, at 6
        assertThat(second.glue()).isEqualByComparingTo("48.75");
        assertThat(first.labor()).isEqualByComparingTo("26.00");
        assertThat(second.labor()).isEqualByComparingTo("26.00");
        // a board runs once through the molder, one with a rabbet by a listed cutter twice: 130 ft at 25 a minute, at
        // 90
        assertThat(first.machine()).isEqualByComparingTo("7.80");
        assertThat(second.machine()).isEqualByComparingTo("15.60");
        // set up once each, with the mark-up; what is oiled is oiled once
        assertThat(first.setUp()).isEqualByComparingTo("120.00");
        assertThat(second.setUp()).isEqualByComparingTo("120.00");
        assertThat(first.finish()).isEqualByComparingTo("0");
        assertThat(second.finish()).isEqualByComparingTo("50.00");
    }

    @Test
    void the_customer_has_one_molding_at_the_price_of_both_pieces() {
        Quote quote = Ordered.of(CUT, ROUND).quote().orElseThrow();
        BigDecimal both = quote.items().stream()
                .map(one -> one.price().orElseThrow().total())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal more =
                quote.items().stream().map(one -> one.breaks().get(0).total()).reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(quote.offer().items()).hasSize(1);
        Offer.Line line = quote.offer().items().get(0);
        assertThat(line.quoted().item().name()).isEqualTo("tall");
        assertThat(line.quoted().blank().width()).isCloseTo(11, within(1e-9));
        assertThat(line.ask().total()).isEqualByComparingTo(both);
        assertThat(line.breaks().get(0).total()).isEqualByComparingTo(more);
        assertThat(line.breaks().get(0).feet()).isEqualByComparingTo("200");
    }

    /**
     * Closed forms: the areas of the two add up to that of the whole, and what their outlines are longer by than its own is
     * the joint, once on either side.
     */
    @Test
    void every_cut_parts_the_wood_and_nothing_else() {
        int cuts = 0;
        for (Profile profile : Neighbors.usual(Catalog.builtIn(), LengthUnit.INCH)) {
            for (Halving cut : Halving.through(profile)) {
                List<Profile> pieces = Halving.of(profile, cut);
                double area = pieces.stream()
                        .mapToDouble(piece -> piece.outline().area())
                        .sum();
                double way = pieces.stream()
                        .mapToDouble(piece -> piece.outline().perimeter())
                        .sum();
                assertThat(area)
                        .as("%s %s", profile.name(), cut)
                        .isCloseTo(profile.outline().area(), within(1e-6));
                assertThat(2 * Halving.joint(profile, cut))
                        .as("%s %s", profile.name(), cut)
                        .isCloseTo(way - profile.asRun().perimeter(), within(1e-6));
                cuts++;
            }
        }
        assertThat(cuts).isGreaterThan(100);
    }

    @Test
    void the_cut_that_is_named_makes_what_could_not_be_made() {
        Ordered one = Ordered.of(DEEP);
        assertThat(one.first().price()).isEmpty();
        Matcher cure = Pattern.compile("'in-two: ([^']*)'").matcher(one.said().toString());
        assertThat(cure.find()).as("%s", one.said()).isTrue();
        Ordered two = Ordered.of(DEEP.replace("feet: 80", "in-two: " + cure.group(1) + ", feet: 80"));
        assertThat(two.quote().orElseThrow().items())
                .hasSize(2)
                .allSatisfy(piece -> assertThat(piece.price()).isPresent());
        assertThat(two.said()).noneMatch(line -> line.startsWith("problem"));
    }

    /**
     * A slot 1 high and 1-1/2 deep, where the head takes 1-1/8, lies halfway up: parted there it is 1/2 deep in either piece,
     * cut from the joint.
     */
    @Test
    void a_slot_that_is_too_deep_is_parted_in_its_middle() {
        Ordered order = Ordered.of("""
                rates: example
                wood: black-walnut
                items: [{ name: channel, section: [out 3, up 1/4, in 1-1/2, up 1, out 1-1/2, up 1/4], feet: 40 }]
                """);
        assertThat(said(order))
                .containsExactly("'channel' is not priced. A knife would cut 1-1/2 deep; the head takes 1-1/8. Rip the"
                        + " deepest waste off first, or run it in two pieces. As two pieces glued it is priced: 'in-two: up"
                        + " 3/4'.");
    }

    /** Its nose is an ovolo of 1, twice as deep as the head takes: halfway a joint would run through that. */
    @Test
    void no_molding_is_parted_in_a_curve_between_its_corners() {
        Ordered order = Ordered.of("""
                rates: round
                head: flat
                items:
                  - { name: nosing, wood: white-oak, feet: 260, section: [out 1, drip 1/4 x 1/4, out to 4-1/2, up 3/8,
                      ovolo in 1, in to 1/2, cove in down 1/2] }
                """, ROUND + """
                heads:
                  - { name: flat, circle: 5, hook: 12, deepest: 1/2, speed: 6000, knives: 1, feed: 25 ft, widest: 9,
                      corner: 1/16, stock: 6 }
                """);
        assertThat(said(order)).singleElement().asString().endsWith("or run it in two pieces.");
    }

    /** Its upper piece is 2-1/2 thick below and 3/4 above: the outside head would cut 1-3/4. */
    @Test
    void a_piece_of_two_is_told_the_least_depth_and_not_to_be_run_in_two() {
        Ordered order = Ordered.of("""
                rates: example
                wood: black-walnut
                items: [{ name: step, section: [out 2-1/2, up 1/2, cove in 1-1/4, in to 3/4, up 3], feet: 40, in-two: up 1/2 }]
                """);
        assertThat(said(order))
                .containsExactly(
                        "'step, upper' is not priced. A knife would cut 1-3/4 deep; the head takes 1-1/8. Part the"
                                + " molding elsewhere, or draw it less deep.");
    }

    @Test
    void each_reason_is_said_once() {
        Ordered order = Ordered.of("""
                rates: example
                wood: black-walnut
                items:
                  - { name: tee, section: [out 1, up 1/2, in 1/4, down 1/4, in 1/4, up 1/2, out 1/4, down 1/8, out 1/4, up 3/4], feet: 9 }
                """);
        assertThat(said(order)).doesNotHaveDuplicates().isNotEmpty();
    }

    private static List<String> said(Ordered order) {
        return order.quote().orElseThrow().notPriced().stream()
                .map(FigurePrinter.INCHES::print)
                .toList();
    }

    @Test
    void a_piece_that_cannot_be_made_leaves_the_other_without_a_price() {
        Ordered order = Ordered.of("""
                rates: example
                wood: white-oak
                items: [{ name: deep, section: [out 3, up 1, cove in 2, up 1], feet: 100, in-two: up 1 }]
                """);
        assertThat(order.quote().orElseThrow().items())
                .hasSize(2)
                .allSatisfy(piece -> assertThat(piece.price()).isEmpty());
        assertThat(OfferSheets.notQuoted(order.quote().orElseThrow())).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"6", "across 6", "up 20", "up 1/8", "out 1/2", "up six"})
    void what_is_no_cut_is_refused(String words) {
        Ordered order = Ordered.of(TALL.replace("feet: 100", "in-two: " + words + ", feet: 100"), ROUND);
        assertThat(order.said()).anyMatch(line -> line.startsWith("refusal"));
    }

    @Test
    void rates_without_a_price_for_gluing_are_refused() {
        assertThat(Ordered.of(CUT, ROUND.replace("glue: 6, ", "")).said())
                .anyMatch(line -> line.startsWith("refusal missing-rate"));
    }
}
