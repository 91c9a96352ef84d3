package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CustomersPaperTest {
    /** What a customer has no business to know, in any case. */
    private static final List<String> SHOP_WORDS = List.of(
            "mark-up",
            "markup",
            "yield",
            "strip",
            "hour",
            "labor",
            "machine",
            "minimum",
            "set-up",
            "setup",
            "knife",
            "knives",
            "board feet",
            "waste",
            "lumber",
            "drop",
            "sound",
            "cost",
            "blank",
            "shop",
            "rates",
            "steel",
            "run ",
            "added");

    @ParameterizedTest
    @ValueSource(strings = {"text", "json", "csv", "html", "svg"})
    void the_customers_paper_holds_no_word_of_the_shops(String format) {
        String order = Ran.read(Ran.demo("reading-room-order.yaml"));
        Ran ran = QuoteCommandTest.quote(order, "--for", "customer", "--format", format);
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
        String paper = holdsNone(ran.out());
        // cost before mark-up, mark-up on set-up and knives, and the price a foot without them
        assertThat(paper).doesNotContain("3633.12", "195.00", "247.00", "17.63");
    }

    /** Orders that nobody thought of, some of which cannot be made, or come to less than the smallest order. */
    @RepeatedTest(24)
    void no_order_of_chance_lets_a_word_of_the_shops_through(RepetitionInfo round) {
        Random random = new Random(round.getCurrentRepetition() * 97L);
        StringBuilder order = new StringBuilder("title: Moldings\nrates: example\nwood: ")
                .append(one(random, "red-oak", "yellow-poplar", "hard-maple"))
                .append(random.nextBoolean() ? "\nquantities: [10, 300, 2000]" : "")
                .append(
                        random.nextBoolean()
                                ? "\nsheet: { number: 7, tax: 8.25 %, deposit: 30 %, terms: 30 days }"
                                : "")
                .append("\nitems:\n");
        int items = 1 + random.nextInt(4);
        for (int i = 0; i < items; i++) {
            order.append("  - { name: molding ")
                    .append(i + 1)
                    .append(", ")
                    .append(one(
                            random,
                            "profile: plain-crown 3-1/4",
                            "profile: cyma-crown 11/16 x 4-5/8",
                            "profile: ogee-cap 3/4 x 3-1/2",
                            "profile: corona 2-1/2 x 2",
                            "profile: attic-base 1-1/2 x 3",
                            "profile: board 3/4 x 14",
                            "profile: board 2-1/2 x 3",
                            "section: [out 3, up 2, in 2, up 1]",
                            "section: [out 3/4, up 10, in 1/4, up 1], in-two: up 6",
                            "section: [out 1, drip 1/4 x 1/4 as groove, out to 4-1/2, up 3/8, ovolo in 1, in to 1/2, cove in"
                                    + " down 1/2]"))
                    .append(", feet: ")
                    .append(1 + random.nextInt(random.nextBoolean() ? 20 : 3000))
                    .append(random.nextBoolean() ? ", lengths: [7', 12']" : "")
                    .append(random.nextBoolean() ? ", finish: [sanded, clear]" : "")
                    .append(random.nextBoolean() ? ", knife: on-hand" : "")
                    .append(random.nextBoolean() ? ", waste: matched" : "")
                    .append(" }\n");
        }
        Ran ran = QuoteCommandTest.quote(
                order.toString(), "--for", "customer", "--format", one(random, "text", "html", "csv", "json", "svg"));
        assertThat(ran.code()).as(ran.err()).isIn(ExitCode.CLEAN, ExitCode.PROBLEM);
        holdsNone(ran.out());
    }

    private static String one(Random random, String... choices) {
        return choices[random.nextInt(choices.length)];
    }

    private static String holdsNone(String out) {
        String paper =
                out.replaceAll("(?s)<style.*?</style>|<script.*?</script>", "").toLowerCase(Locale.ROOT);
        SHOP_WORDS.forEach(word -> assertThat(paper).as(word).doesNotContain(word));
        return paper;
    }
}
