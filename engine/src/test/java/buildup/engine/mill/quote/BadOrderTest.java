package buildup.engine.mill.quote;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.figure.FigurePrinter;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BadOrderTest {
    private static String order(String item) {
        return "rates: example\nitems: [{ " + item + " }]\n";
    }

    private static void said(String order, String... notices) {
        assertThat(Ordered.of(order).said()).containsExactly(notices);
    }

    @Test
    void an_unknown_profile() {
        said(
                order("profile: coove 3/4 x 3/4, wood: red-oak, feet: 10"),
                "refusal unknown-name 2 No profile is called 'coove'. Did you mean cove?");
    }

    @Test
    void an_unknown_wood() {
        said(
                order("profile: cove 3/4 x 3/4, wood: red-oka, feet: 10"),
                "refusal unknown-name 2 No wood is called 'red-oka'. Did you mean red-oak? Or list your own, with its"
                        + " density, under 'woods:' in a catalog file.");
    }

    @Test
    void a_wood_without_a_price() {
        said(
                order("name: a, profile: cove 3/4 x 3/4, wood: mdf, feet: 10"),
                "refusal missing-rate 2 The rates 'example' have no price for mdf. Add it under their 'wood:', or take one"
                        + " of yellow-poplar, red-oak, white-oak, black-cherry, black-walnut, hard-maple, soft-maple,"
                        + " eastern-white-pine, mahogany.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-5", "NaN", "Infinity", "1e308", "1000000", "2x", "0.99"})
    void no_number_of_feet(String feet) {
        said(
                order("profile: cove 3/4 x 3/4, wood: red-oak, feet: " + feet),
                "refusal not-a-number 2 '" + feet
                        + "' is not how much to run. Write a number of feet or meters up to 999,999, a foot at least:"
                        + " 'feet: 260', 'meters: 80'.");
    }

    @Test
    void lengths_longer_than_the_stock() {
        Ordered ordered =
                Ordered.of(order("name: a, profile: cove 3/4 x 3/4, wood: red-oak, feet: 10, lengths: [12', 18']"));
        assertThat(ordered.said())
                .containsExactly(
                        "problem longer-than-stock 2 'a' is wanted 18' long; the boards of the mill 'usual' end at 16 ft."
                                + " Take it in two with a scarf, or ask for shorter ones.");
        assertThat(ordered.notices().get(0).amount().orElseThrow().amount()).isEqualTo(24);
        assertThat(ordered.quote()).isPresent();
    }

    @Test
    void a_length_of_nothing() {
        said(
                order("name: a, profile: cove 3/4 x 3/4, wood: red-oak, feet: 10, lengths: 0"),
                "refusal not-a-size 2 'a' is wanted 0 long. Give lengths above 0.");
    }

    @Test
    void a_thickness_that_no_quarter_reaches() {
        Ordered ordered = Ordered.of(order("name: a, profile: board 2 x 3, wood: red-oak, feet: 10"));
        assertThat(ordered.said())
                .containsExactly("note glue-up 2 'a' is glued up: no quarter yields 2: 2 layers of 5/4.");
        assertThat(FigurePrinter.INCHES.print(ordered.first().assumed().get(0)))
                .startsWith("Finished 2 x 3, from 2 layers of 5/4");
    }

    @Test
    void a_knife_wider_than_the_machine_and_a_blank_wider_than_a_board() {
        Ordered ordered = Ordered.of(order(
                "name: a, section: [out 1, up 6, ovolo in 1/4, cove out 1/4, up 5-1/2], wood: red-oak, feet: 10"));
        assertThat(ordered.said())
                .containsExactly(
                        "problem knife-too-wide Knife is 12-1/4 wide; the molder head takes 9. Run it in two pieces, or"
                                + " list a wider head under 'heads:' in a catalog file. As two pieces glued it is priced:"
                                + " 'in-two: up 6-1/4'.",
                        "note glue-up 2 'a' is glued up: too few boards are as wide as the blank, 12-1/4: 2 strips edge to"
                                + " edge.");
        assertThat(ordered.first().price()).isEmpty();
        assertThat(ordered.quote().orElseThrow().notPriced())
                .extracting(FigurePrinter.INCHES::print)
                .containsExactly(
                        "'a' is not priced. Knife is 12-1/4 wide; the molder head takes 9. Run it in two pieces, or"
                                + " list a wider head under 'heads:' in a catalog file. As two pieces glued it is priced:"
                                + " 'in-two: up 6-1/4'.");
        assertThat(ordered.quote().orElseThrow().total()).isEqualByComparingTo("0");
    }

    @Test
    void missing_rates() {
        said(
                "items: [{ profile: cove 3/4 x 3/4, wood: red-oak, feet: 10 }]\n",
                "refusal missing-key 1 The order names no rates. Add 'rates:' with a list of your own, or 'rates: example'"
                        + " to try it out.");
    }

    @Test
    void unknown_rates_mill_and_head() {
        said(
                order("profile: cove 3/4 x 3/4, wood: red-oak, feet: 10").replace("example", "exmple")
                        + "mill: usaul\nhead: big\n",
                "refusal unknown-name 3 No mill is called 'usaul'. Did you mean usual?",
                "refusal unknown-name 1 No list of rates is called 'exmple'. Did you mean example?",
                "refusal unknown-name 4 No head is called 'big'. There are: molder head.");
    }

    @Test
    void an_unknown_key() {
        said(
                order("profile: cove 3/4 x 3/4, wood: red-oak, feet: 10, finsh: sanded"),
                "refusal unknown-key 2 No key is called 'finsh' in 'items'. Did you mean finish?");
    }

    @Test
    void an_empty_file() {
        said("", "refusal empty-file 1 order.yaml is empty. Begin with 'title:'.");
    }

    @Test
    void no_items() {
        said(
                "rates: example\n",
                "refusal empty-order 1 The order holds no items. Add one, as 'items: [{ profile: cove 3/4, wood: red-oak,"
                        + " feet: 200 }]'.");
    }

    @Test
    void a_bare_quantity_of_a_metric_order_could_be_feet_or_meters() {
        said(
                "units: mm\nquantities: [100]\n" + order("profile: cove 19.05 x 19.05, wood: red-oak, meters: 30.48"),
                "refusal not-a-number 2 100 ft or m? The order counts in metric units. Write 100 ft, or 100 m.");
        assertThat(Ordered.of("units: mm\nquantities: [30.48 m, 200 ft]\n"
                                + order("profile: cove 19.05 x 19.05, wood: red-oak, meters: 30.48"))
                        .quote()
                        .orElseThrow()
                        .order()
                        .breaks())
                .map(BigDecimal::doubleValue)
                .containsExactly(100.0, 200.0);
    }

    @Test
    void an_item_that_is_wanted_in_feet_and_in_meters() {
        said(
                order("name: a, profile: cove 3/4 x 3/4, wood: red-oak, feet: 100, meters: 30"),
                "refusal wanted-twice 2 'a' has both feet and meters. Leave one of them out.");
    }

    @Test
    void an_item_that_says_nothing() {
        said(
                order("name: a"),
                "refusal no-outline 2 'a' has neither profile nor section. Give 'profile: NAME SIZE', or 'section: [words]'"
                        + " for a one-off.",
                "refusal missing-key 2 'a' has no wood. Add 'wood:', as 'wood: red-oak'.",
                "refusal missing-key 2 'a' does not say how many feet are wanted. Add 'feet:', how many are wanted, or 'meters:'.");
    }

    @Test
    void unknown_words_of_an_item() {
        said(
                order(
                        "name: a, profile: cove 3/4 x 3/4, wood: red-oak, feet: 10, waste: heaps, knife: blunt, finish: gilt"),
                "refusal unknown-name 2 No state of a knife is called 'blunt'. Write new or on-hand.",
                "refusal unknown-name 2 No kind of work is called 'heaps'. Known here: many-miters, matched, simple.",
                "refusal unknown-name 2 No finish of the rates 'example' is called 'gilt'. Known here: clear, primed, sanded.");
    }

    @Test
    void the_same_name_twice() {
        String item = "{ name: a, profile: cove 3/4 x 3/4, wood: red-oak, feet: 10 }";
        said(
                "rates: example\nitems:\n  - " + item + "\n  - " + item + "\n",
                "refusal same-name-twice 4 'a' is there twice. Call one a-2, with 'name:'.");
    }

    @Test
    void millimeters_read_as_inches() {
        assertThat(Ordered.of(order("name: a, section: [out 20, up 114.3], wood: red-oak, feet: 10"))
                        .said())
                .contains("problem mm-read-as-inches 2 The section is 114.3 over all: more than any molding. Write mm"
                        + " behind it if millimeters are meant.");
    }

    @Test
    void rates_of_ones_own_with_faults() {
        Ordered ordered = Ordered.of(order("profile: cove 3/4 x 3/4, wood: red-oak, feet: 10"), """
                mills:
                  - { name: m, quarters: { 4/4: 2 }, allowance: -1, board: 10, edge: 1/4, kerf: 1/8, joint: 1/8, longest: 192,
                      sound: 0 %, set-up: 20', waste: { simple: lots }, accuracy: 1/32 }
                rates:
                  - { name: r, wood: { red-oak: NaN }, knife: 40, set-up: 1, labor: 1, machine: 1, prepared: 0, specified: 15 %,
                      mark-up: 30, minimum: 1 }
                """);
        assertThat(ordered.said())
                .containsExactlyInAnyOrder(
                        "refusal not-a-size 2 '4/4: 2' is not a quarter and what it yields. Write it as 8/4: 1-3/4.",
                        "refusal not-a-size 2 The allowance of 'm' is -1. Write it with its unit, as 6 in or 150 mm.",
                        "refusal not-a-share 3 The sound share of the wood is more than 0 and up to 100 %. Write it as 15 %.",
                        "refusal not-a-share 3 'lots' is not a share. Write it as 15 %.",
                        "refusal not-a-price 5 'NaN' is not a price. Write a plain number, as 3.20.",
                        "refusal not-a-price 5 No blank is made ready at 0 feet an hour. Write a plain number, as 3.20.",
                        "refusal not-a-share 6 '30' is not a share. Write it as 15 %.");
    }
}
