package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.Ran;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The page of the guide about all that is bought, word for word, and what its stack is told to buy. */
class BuyingTest {
    private static final String PAGE = Ran.read(Path.of("guide/buying.md"));
    private static final String STUDY =
            PAGE.substring(PAGE.indexOf("```yaml\n") + 8, PAGE.indexOf("```", PAGE.indexOf("```yaml\n") + 8));

    private static Ran run(String stack, String... words) {
        return Ran.with(stack.getBytes(UTF_8), words);
    }

    private static JsonNode json(String stack, String command) {
        return new JsonMapper()
                .readTree(run(stack, command, "-", "--format", "json").out());
    }

    /** The line of a table that begins so, blanks taken together. */
    private static String row(String text, String begins) {
        return text.lines()
                .map(line -> line.strip().replaceAll("\\s+", " "))
                .filter(line -> line.startsWith(begins))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line '" + begins + "' in " + text));
    }

    /**
     * A stick of 1x6 of 12 ft at 33.00; one of 1x3 at 15.00 and, for waste, another; a box at 9.00 and one at
     * 7.50; glue 4.20, filler 5.10, primer 16.00, paint 21.00. Together 48 + 15 + 62.80 = 125.80.
     */
    @Test
    void the_stack_of_the_guide_is_told_what_to_buy_and_what_it_costs() {
        Ran cuts = run(STUDY, "cuts", "-");
        assertThat(cuts.code()).isZero();
        assertThat(row(cuts.out(), "1x3 (softwood), 12 ft 15 %")).endsWith("1 15.00 15.00");
        assertThat(row(cuts.out(), "15 ga x 2-1/2")).endsWith("1 9.00 9.00");
        assertThat(row(cuts.out(), "trim paint 1 qt")).endsWith("1 21.00 21.00");
        assertThat(row(cuts.out(), "wood for waste")).isEqualTo("wood for waste 15.00");
        assertThat(row(cuts.out(), "supplies")).isEqualTo("supplies 62.80");
        assertThat(row(cuts.out(), "total 125")).isEqualTo("total 125.80");
        assertThat(row(cuts.out(), "all of it")).isEqualTo("all of it has a price yes");
        JsonNode cost = json(STUDY, "cuts").get("cost");
        assertThat(cost.get("total").doubleValue()).isCloseTo(125.80, within(1e-9));
        assertThat(cost.get("complete").booleanValue()).isTrue();
    }

    /** 9.7153 square feet in two coats at 400 a gallon are 6.2178 fluid ounces, as PurchasesTest works by hand. */
    @Test
    void the_report_counts_and_programs_read_it() {
        JsonNode report = json(STUDY, "report");
        assertThat(report.get("fasteners").get(0).get("count").intValue()).isEqualTo(9);
        JsonNode paint = report.get("supplies").get(report.get("supplies").size() - 1);
        assertThat(paint.get("what").asString()).isEqualTo("trim paint");
        assertThat(paint.get("volume").doubleValue()).isCloseTo(6.217778, within(1e-6));
        assertThat(PAGE).contains("9.72 square feet").contains("6.22 fluid ounces");
    }

    @Test
    void a_stack_that_asks_for_nothing_is_told_nothing() {
        String plain = STUDY.substring(0, STUDY.indexOf("supplies:")).replace("  waste: mitered", "");
        assertThat(run(plain, "report", "-").out()).doesNotContain("ROWS COUNTED", "TO FINISH", "SUPPLIES");
        assertThat(run(plain, "cuts", "-").out())
                .doesNotContain("SHOPPING LIST", "WASTE: what")
                .contains("all of the wood has a price  yes");
    }

    /** The rows at 24 in place of 16: 119-1/2 has 5 spaces, 6 nails; a tenth more is 7. */
    @Test
    void two_stacks_are_set_beside_each_other(@TempDir Path folder) throws Exception {
        Path one = folder.resolve("a.yaml");
        Path other = folder.resolve("b.yaml");
        Files.writeString(one, STUDY);
        Files.writeString(
                other,
                STUDY.replace("spacing: 16", "spacing: 24")
                        .replace("18 ga x 1-3/4, box: { 1000: 7.50 }", "18 ga x 1-3/4, box: { 1000: 9.50 }"));
        String beside = Ran.of("cuts", one.toString(), other.toString()).out();
        assertThat(beside.replaceAll("\\s+", " ")).contains("1 row, 6");
        assertThat(row(beside, "supplies")).isEqualTo("supplies 62.80 64.80 +2.00");
        JsonNode json = new JsonMapper()
                .readTree(Ran.of("report", one.toString(), other.toString(), "--format", "json")
                        .out());
        assertThat(json.toString()).contains("\"fasteners\"");
    }

    @Test
    void the_material_sheet_is_drawn_with_it(@TempDir Path folder) throws Exception {
        Path stack = folder.resolve("study.yaml");
        Files.writeString(stack, STUDY);
        Path page = folder.resolve("study.html");
        Ran sheets = Ran.of("sheets", stack.toString(), "--only", "material", "-o", page.toString());
        assertThat(sheets.code()).isZero();
        assertThat(Ran.read(page)).contains("SHOPPING LIST").contains("FACES TO FINISH");
    }

    /** Every figure that the page says of the study stands in its answers. */
    @Test
    void what_the_page_says_of_the_study_is_so() {
        JsonNode report = json(STUDY, "report");
        assertThat(report.get("fasteners").get(0).get("count").intValue()).isEqualTo(9);
        assertThat(report.get("supplies").get(0).get("counted").intValue()).isEqualTo(10);
        double shown = 0;
        for (JsonNode face : report.get("finishFaces")) {
            shown += face.get("area").doubleValue();
        }
        assertThat(shown).isCloseTo(9.72, within(0.005));
        JsonNode waste = json(STUDY, "cuts").get("wasteSticks").get(1);
        assertThat(waste.get("lengths").doubleValue()).isCloseTo(10.83, within(0.005));
        assertThat(waste.get("lengths").doubleValue() * 1.15).isCloseTo(12.46, within(0.005));
        assertThat(waste.get("bought").doubleValue()).isEqualTo(12);
    }
}
