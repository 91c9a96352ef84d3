package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.MetricTwin;
import buildup.cli.Ran;
import buildup.cli.Schemas;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class QuoteCommandTest {
    private static final String DEMO = Ran.demo("reading-room-order.yaml").toString();

    static Ran quote(String order, String... options) {
        String[] words = new String[options.length + 2];
        words[0] = "quote";
        words[1] = "-";
        System.arraycopy(options, 0, words, 2, options.length);
        return Ran.with(order.getBytes(UTF_8), words);
    }

    @Test
    void a_quote_holds_everything_within_eighty_columns() {
        Ran ran = Ran.of("quote", DEMO);
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
        assertThat(ran.out())
                .startsWith("Reading-room moldings\nValid until 31 March 2027.\n\nPRICES in USD\n")
                .contains(
                        "OTHER QUANTITIES",
                        "WOOD",
                        "443.06",
                        "HOW BOARDS ARE RIPPED",
                        "HOW EACH FIGURE CAME ABOUT, nosing",
                        "SHOP ONLY",
                        "ASSUMPTIONS",
                        "all         Rates 'example': invented figures, to be replaced by the mill's own.",
                        "Trained operators only.",
                        "Quoted by, and date:",
                        "Accepted by, and date:");
        assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }

    /** Worked example H, and the form in which short runs are billed (engine's reference/blanks.md). */
    @Test
    void a_quote_is_told_to_programs() {
        JsonNode json = new JsonMapper()
                .readTree(Ran.of("quote", DEMO, "--format", "json").out());
        JsonNode nosing = json.at("/items/0");
        assertThat(nosing.at("/area").doubleValue()).isCloseTo(5.7140, within(5e-5));
        assertThat(nosing.at("/blank/blank").doubleValue()).isEqualTo(4.75);
        assertThat(nosing.at("/knives").size()).isEqualTo(1);
        assertThat(nosing.at("/knives/0/head").stringValue()).isEqualTo("top");
        assertThat(nosing.at("/knives/0/width").doubleValue()).isEqualTo(4.75);
        assertThat(nosing.at("/knives/0/depth").doubleValue()).isCloseTo(1.102, within(5e-4));
        assertThat(nosing.at("/knives/0/steel").doubleValue()).isEqualTo(5);
        assertThat(nosing.at("/cutters/0").stringValue()).isEqualTo("straight bit, diameter 1/4");
        JsonNode price = nosing.at("/price");
        assertThat(price.get("run").doubleValue()).isEqualTo(319);
        assertThat(price.get("boardFeet").doubleValue()).isCloseTo(443.06, within(5e-3));
        assertThat(price.get("total").doubleValue())
                .isCloseTo(
                        price.get("setUp").doubleValue()
                                + price.get("knife").doubleValue()
                                + 260 * price.get("foot").doubleValue(),
                        within(1e-9));
    }

    @Test
    void the_quote_and_the_refusal_are_as_the_schema_says() {
        assertThat(faults(Ran.of("quote", DEMO, "--format", "json").out())).isEmpty();
        Ran refused = quote("items: []\n", "--format", "json");
        assertThat(refused.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(refused.err()).isEmpty();
        assertThat(faults(refused.out())).isEmpty();
        assertThat(new JsonMapper().readTree(refused.out()).propertyNames())
                .containsExactly("title", "units", "notices");
    }

    @Test
    void the_schema_itself_catches_a_missing_figure_and_a_strange_one() {
        String good = Ran.of("quote", DEMO, "--format", "json").out();
        assertThat(faults(good.replace("\"boardFeet\"", "\"boardFoot\""))).isNotEmpty();
        assertThat(faults(good.replace("\"newKnife\": true", "\"newKnife\": 1")))
                .isNotEmpty();
    }

    private static List<String> faults(String quote) {
        return Schemas.faults("quote", quote);
    }

    /** All but what is charged, which is whole hundredths a foot in one order and a meter in the other. */
    private static Map<String, Double> measured(Map<String, Double> numbers) {
        Map<String, Double> measured = new TreeMap<>(numbers);
        measured.keySet().removeIf(key -> key.matches(".*/(foot|each|total)"));
        return measured;
    }

    private static final String TWIN = MetricTwin.of(Ran.read(Ran.demo("reading-room-order.yaml")));

    @Test
    void a_metric_order_has_the_same_figures_and_is_told_in_metric_units() {
        String json = quote(TWIN, "--format", "json").out();
        assertThat(json).contains("\"units\": \"mm\"", "28.00 mm on the steel");
        Map<String, Double> metric = MetricTwin.numbers(json);
        Map<String, Double> inches =
                MetricTwin.numbers(Ran.of("quote", DEMO, "--format", "json").out());
        assertThat(measured(metric)).isEqualTo(measured(inches));
        // half a hundredth a foot of them is 1.6 hundredths a meter
        inches.forEach((key, charged) -> assertThat(metric.get(key))
                .as(key)
                .isCloseTo(charged, within(Math.max(0.01, Math.abs(charged) * 0.002))));
        String text = quote(TWIN).out();
        assertThat(text)
                // 260 ft are 79.248 m at 57.84, and 195 and 247 with them; 443.06 board feet are 1.0455 cubic meters;
                // 490.5 lb
                // are 222.5 kg (NIST SP 811, appendix B.8: 0.3048 m, 0.002359737 m3, 0.45359237 kg)
                .contains("nosing      white-oak        79.25  195.00  247.00           57.84  5025.70")
                .contains("34.9+ x  ", "114.3", "1.0455", "222")
                .contains("7.6 meters a minute", "7.9 marks", "28.00", "m long", "Sizes in millimeters;")
                .doesNotContain("ft", " lb", "board feet", "inch");
        assertThat(text.lines())
                .allSatisfy(line -> assertThat(line)
                        .hasSizeLessThanOrEqualTo(80)
                        .as("no inch fraction but the names of rough stock")
                        .doesNotContainPattern("\\d/(?!4\\b)\\d"));
        assertThat(quote(TWIN, "--format", "html").out()).contains("quantity, m", ">79.25<");
        assertThat(quote(TWIN, "--format", "csv").out())
                .contains("quantity, m", "price, a meter", "finished thickness mm")
                .contains(",79.248,");
        String svg = quote(TWIN, "--format", "svg").out();
        assertThat(svg)
                .contains(">114.3<", ">34.9+<", "79.25 m<", "This line is 100 mm", ">57.84<")
                .doesNotContain(">4-1/2<", " ft<", "4 in<");
    }

    /** 10 ft come to far less than the least that the rates take, and no sum below it is printed. */
    @Test
    void a_customer_is_told_no_sum_under_the_smallest_order() {
        String order = "rates: example\nwood: yellow-poplar\nquantities: [20, 100]\nitems:\n"
                + "  - { name: a, profile: cove 3/4 x 3/4, feet: 10 }\n"
                + "  - { name: b, profile: quarter-round 3/4 x 3/4, feet: 20, knife: on-hand }\n";
        JsonNode json = new JsonMapper()
                .readTree(quote(order, "--for", "customer", "--format", "json").out());
        JsonNode shop =
                new JsonMapper().readTree(quote(order, "--format", "json").out());
        assertThat(shop.get("toMinimum").doubleValue()).isPositive();
        assertThat(json.get("total").doubleValue()).isEqualTo(350);
        double sum = 0;
        for (JsonNode item : json.get("items")) {
            sum += item.at("/price/total").doubleValue();
            for (JsonNode other : item.get("quantities")) {
                assertThat(other.get("total").doubleValue()).isGreaterThanOrEqualTo(350);
            }
        }
        assertThat(sum).isCloseTo(350, within(1e-9));
    }

    @Test
    void the_block_of_the_paper_is_printed_and_its_shares_are_worked_out() {
        String order = """
                title: Trim
                valid-until: 30 June 2027
                rates: example
                sheet:
                  number: 1041
                  revision: B
                  date: 3 May 2027
                  mill: |
                    A mill
                    12 Weir Lane
                  customer: [Two joiners, 4 Hill Street]
                  terms: thirty days
                  tax: 8.25 %
                  deposit: 50 %
                items: [{ profile: cove 3/4 x 3/4, wood: red-oak, feet: 500 }]
                """;
        String text = quote(order, "--for", "customer").out();
        assertThat(text)
                .contains("1041", "3 May 2027", "30 June 2027", "A mill, 12 Weir Lane", "Two joiners, 4 Hill Street");
        JsonNode json = new JsonMapper()
                .readTree(quote(order, "--for", "customer", "--format", "json").out());
        double sum = json.get("sum").doubleValue();
        assertThat(json.get("tax").doubleValue()).isCloseTo(sum * 0.0825, within(0.005));
        assertThat(json.get("total").doubleValue())
                .isCloseTo(sum + json.get("tax").doubleValue(), within(1e-9));
        assertThat(json.get("deposit").doubleValue())
                .isCloseTo(json.get("total").doubleValue() / 2, within(0.005));
        assertThat(Schemas.faults(
                        "offer",
                        quote(order, "--for", "customer", "--format", "json").out()))
                .isEmpty();
        assertThat(quote(order.replace("  deposit", "  desposit"), "--for", "customer")
                        .err())
                .contains("No key is called 'desposit' in 'sheet'. Did you mean deposit?");
    }

    /** Depths of knives by two right triangles over R sin h: circle 4, hook 0: 1.000; circle 5, hook 12: 1.038. */
    @Test
    void knives_are_judged_by_the_head_of_the_order(@TempDir Path folder) throws IOException {
        assertThat(depth(folder, "circle: 4, hook: 0, deepest: 1-1/8")).isCloseTo(1.000, within(5e-4));
        assertThat(depth(folder, "circle: 5, hook: 12, deepest: 1-1/8")).isCloseTo(1.038, within(5e-4));
        Ran refused = headed(folder, "circle: 5, hook: 12, deepest: 1/2");
        assertThat(refused.code()).isEqualTo(ExitCode.PROBLEM);
        JsonNode json = new JsonMapper().readTree(refused.out());
        assertThat(json.at("/items/0/price").isMissingNode()).isTrue();
        assertThat(json.at("/total").isMissingNode()).isTrue();
        assertThat(json.at("/notPriced/0").stringValue())
                .isEqualTo(
                        "'nosing' is not priced. A knife would cut 1 deep; the head takes 1/2. Rip the deepest waste off"
                                + " first, or run it in two pieces.");
        JsonNode board = new JsonMapper()
                .readTree(quote(
                                "rates: example\nitems: [{ profile: board 3/4 x 5, wood: red-oak, feet: 90 }]\n",
                                "--format",
                                "json")
                        .out());
        assertThat(board.at("/items/0/knives").size()).isZero();
        assertThat(board.at("/items/0/price/knife").doubleValue()).isZero();
    }

    @Test
    void what_cannot_be_made_is_said_at_the_top_of_the_paper() {
        String order = "title: Trim\nrates: example\nwood: red-oak\nitems:\n"
                + "  - { name: slot, section: [out 1, up 1, in 1/4, down 1/4, in 1/8, up 1/2, out 1/4, up 1/8, out 1/8, up 1],"
                + " feet: 60 }\n  - { name: base, profile: board 3/4 x 5, feet: 200 }\n";
        Ran shop = quote(order);
        assertThat(shop.code()).isEqualTo(ExitCode.PROBLEM);
        assertThat(shop.out())
                .startsWith("Trim\n'slot' is not priced. No straight pass reaches the slot")
                .contains("Make it of two pieces.");
        Ran customer = quote(order, "--for", "customer");
        assertThat(customer.code()).isEqualTo(ExitCode.PROBLEM);
        assertThat(customer.out()).startsWith("Trim\n'slot' cannot be made as it is drawn. It is not quoted.");
        JsonNode json = new JsonMapper()
                .readTree(quote(order, "--for", "customer", "--format", "json").out());
        assertThat(json.get("items").size()).isEqualTo(1);
    }

    private static Ran headed(Path folder, String head) throws IOException {
        Files.writeString(
                folder.resolve("shop.yaml"),
                "heads: [{ name: own, " + head
                        + ", speed: 6000, knives: 1, feed: 25 ft, widest: 9, corner: 1/16, stock: 6 }]\n");
        Path order = folder.resolve("order.yaml");
        Files.writeString(
                order,
                "catalog: shop.yaml\nrates: example\nhead: own\nitems:\n"
                        + "  - { name: nosing, wood: red-oak, feet: 260, section: [out 1, drip 1/4 x 1/4, out to 4-1/2, up 3/8,"
                        + " ovolo in 1, in to 1/2, cove in down 1/2] }\n");
        return Ran.of("quote", order.toString(), "--format", "json");
    }

    private static double depth(Path folder, String head) throws IOException {
        return new JsonMapper()
                .readTree(headed(folder, head).out())
                .at("/items/0/knives/0/depth")
                .doubleValue();
    }

    @Test
    void an_old_key_is_refused_with_the_new_one_named() {
        assertThat(quote(
                                "rates: example\nbreaks: [100]\nitems: [{ profile: cove 3/4 x 3/4, wood: red-oak, feet: 9 }]\n")
                        .err())
                .isEqualTo("refusal  stdin:2:1  The key 'breaks' is now called 'quantities'. Write 'quantities:' in its"
                        + " place.\n");
    }

    @Test
    void a_spreadsheet_gets_a_row_for_each_molding() {
        String csv = Ran.of("quote", DEMO, "--format", "csv").out();
        assertThat(csv.lines()).hasSize(3);
        assertThat(csv).startsWith("molding,profile,wood,").contains("quantity, ft", "price, a foot", ",260,");
    }

    @Test
    void the_sheet_shows_the_profiles_at_full_size(@TempDir Path folder) throws IOException {
        Path sheet = folder.resolve("quote.svg");
        assertThat(Ran.of("quote", DEMO, "--to", "svg", "-o", sheet.toString()))
                .isEqualTo(new Ran(ExitCode.CLEAN, "", Ran.of("quote", DEMO).err()));
        String svg = Files.readString(sheet);
        // the user unit is an inch; from the kerf's far side to the front edge it is 3-1/4, up that edge 3/8
        Matcher edge = Pattern.compile("L([\\d.]+) ([\\d.]+) L([\\d.]+) \\2 L\\3 ([\\d.]+) A1 1 ")
                .matcher(svg);
        assertThat(edge.find()).isTrue();
        assertThat(Double.parseDouble(edge.group(3)) - Double.parseDouble(edge.group(1)))
                .isCloseTo(3.25, within(1e-4));
        assertThat(Double.parseDouble(edge.group(2)) - Double.parseDouble(edge.group(4)))
                .isCloseTo(0.375, within(1e-4));
        assertThat(svg)
                .contains("id=\"profile-1\"", "id=\"profile-2\"", ">4-1/2<", ">1-3/8<", "This line is 4 in")
                .contains(">PRICES in USD<", ">Accepted by, and date:<");
        Path pdf = folder.resolve("quote.pdf");
        Ran.of("quote", DEMO, "--format", "pdf", "-o", pdf.toString());
        assertThat(Files.readAllBytes(pdf)).startsWith("%PDF".getBytes(UTF_8));
        assertThat(Ran.of("quote", DEMO, "--format", "svg").out()).isEqualTo(svg);
    }

    @ParameterizedTest
    @ValueSource(strings = {"letter", "a4"})
    void a_page_that_is_too_small_is_refused(String page) {
        String wide = "rates: example\nitems: [{ name: a, profile: board 3/4 x 8-3/4, wood: red-oak, feet: 500 }"
                + ", { name: b, profile: board 3/4 x 8-1/2, wood: red-oak, feet: 500 }]\nquantities: [1, 2, 3, 4, 5, 6, 7, 8]\n";
        Ran ran = quote(wide, "--format", "svg", "--page", page);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .contains("refusal  stdin  With its profiles at full size the quote does not fit on " + page
                        + ". Leave --page out, and the smallest that holds it is taken.");
        Ran fitting = quote(wide, "--format", "svg");
        assertThat(fitting.code()).as(fitting.err()).isLessThan(ExitCode.REFUSED);
    }

    @Test
    void an_unknown_page_is_answered_with_the_nearest() {
        assertThat(Ran.of("quote", DEMO, "--format", "svg", "--page", "leter").err())
                .contains("No page is called 'leter'. Did you mean letter?");
    }

    @Test
    void an_order_that_is_not_there_is_refused(@TempDir Path folder) {
        Ran ran = Ran.of("quote", folder.resolve("none.yaml").toString());
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains("There is no file ");
        assertThat(Ran.of("quote", "a\0b").err())
                .isEqualTo("refusal  a b  'a b' is not the name of a file. Name an order document.\n");
    }

    @Test
    void rates_of_ones_own_lie_beside_the_order(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("shop.yaml"), """
                rates:
                  - { name: shop, wood: { red-oak: 5 }, knife: 1, set-up: 1, labor: 1, machine: 1, prepared: 100,
                      specified: 0 %, mark-up: 0 %, minimum: 0 }
                """);
        Path order = folder.resolve("order.yaml");
        Files.writeString(order, """
                catalog: shop.yaml
                rates: shop
                items: [{ profile: cove 3/4 x 3/4, wood: red-oak, feet: 100 }]
                """);
        Ran ran = Ran.of("quote", order.toString());
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
        assertThat(ran.out()).contains("Valid until: ____");
        Files.writeString(order, "catalog: ../shop.yaml\nrates: shop\nitems: []\n");
        assertThat(Ran.of("quote", order.toString()).err())
                .contains("refusal  order.yaml:1:10  '../shop.yaml' is not the name of a file beside the order."
                        + " Put it beside the order and give its name alone, or use --catalog.");
    }
}
