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

    private static Ran quote(String order, String... options) {
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
                        "332.29",
                        "COST",
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
        assertThat(nosing.at("/blank/strips").intValue()).isEqualTo(2);
        JsonNode price = nosing.at("/price");
        assertThat(price.get("run").doubleValue()).isEqualTo(319);
        assertThat(price.get("boardFeet").doubleValue()).isCloseTo(332.29, within(5e-3));
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

    private static final String TWIN = MetricTwin.of(Ran.read(Ran.demo("reading-room-order.yaml")));

    @Test
    void a_metric_order_has_the_same_figures_and_is_told_in_metric_units() {
        String json = quote(TWIN, "--format", "json").out();
        assertThat(json).contains("\"units\": \"mm\"", "28.00 mm deep on the steel");
        assertThat(MetricTwin.numbers(json))
                .isEqualTo(MetricTwin.numbers(
                        Ran.of("quote", DEMO, "--format", "json").out()));
        String text = quote(TWIN).out();
        assertThat(text)
                // 260 ft are 79.248 m; 14.46 a foot are 47.441 a meter; 332.29 board feet are 0.7841 cubic meters;
                // 490.5 lb
                // are 222.5 kg (NIST SP 811, appendix B.8: 0.3048 m, 0.002359737 m3, 0.45359237 kg)
                .contains("nosing      white-oak        79.25  156.00  247.00           47.44  4162.60")
                .contains("34.9+ x  ", "114.3", "0.7841", "222")
                .contains(
                        "7.6 meters a minute",
                        "7.9 marks",
                        "28.00 mm deep on the steel",
                        "4.88 m long",
                        "Sizes in millimeters;")
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
                .contains(">114.3<", ">34.9+<", "79.25 m<", "this line is 100 mm", ">47.44<")
                .doesNotContain(">4-1/2<", " ft<", "4 in<");
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
                .contains(
                        "id=\"profile-1\"",
                        "id=\"profile-2\"",
                        ">4-1/2<",
                        ">1-3/8<",
                        "Full size only if this line is 4 in")
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
