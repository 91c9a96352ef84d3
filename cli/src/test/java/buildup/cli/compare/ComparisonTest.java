package buildup.cli.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.Ran;
import buildup.cli.Schemas;
import buildup.cli.command.Typed;
import buildup.cli.report.RandomStacks;
import buildup.cli.table.Display;
import buildup.cli.tell.Beside.Pair;
import buildup.engine.Answer;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ComparisonTest {
    private static final int SEEDS = 25;

    private static final String LEDGE = """
            title: Ledge
            pieces:
              - { name: rail, profile: board 3/4 x 4, back: wall, bottom: 0 }
              - { name: shelf, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: rail.top }
            """;

    @Tag("long")
    @Test
    void a_stack_beside_itself_differs_in_nothing() {
        for (long seed = 0; seed < SEEDS; seed++) {
            Comparison same = compared(RandomStacks.of(seed), RandomStacks.of(seed));
            assertThat(same.differing()).as("seed %d", seed).isZero();
            assertThat(same.alike()).isTrue();
            assertThat(same.count()).isPositive();
        }
    }

    @Tag("long")
    @Test
    void what_b_has_more_than_a_a_has_less_than_b() {
        for (long seed = 0; seed < SEEDS; seed++) {
            Answer a = Typed.of(RandomStacks.of(seed));
            Answer b = Typed.of(RandomStacks.of(seed + 1));
            if (a.known().isEmpty() || b.known().isEmpty()) {
                continue;
            }
            Comparison there = Comparison.of(a, b).orElseThrow();
            Comparison back = Comparison.of(b, a).orElseThrow();
            assertThat(back.differing()).as("seed %d", seed).isEqualTo(there.differing());
            assertThat(back.count()).as("seed %d", seed).isEqualTo(there.count());
            Pair totals = there.pairs("totals").get(0);
            Pair opposite = back.pairs("totals").get(0);
            assertThat(more(totals, "height").orElseThrow())
                    .isCloseTo(-more(opposite, "height").orElseThrow(), within(1e-12));
        }
    }

    @Test
    void rows_are_paired_by_name_whatever_their_order() {
        Comparison comparison = compared(LEDGE, """
                title: Ledge
                pieces:
                  - { name: shelf, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: 4 }
                  - { name: rail, profile: board 3/4 x 4, back: wall, bottom: 0 }
                """);
        assertThat(comparison.pairs("pieces")).allMatch(Pair::alike);
    }

    @Test
    void of_rows_with_one_name_the_first_goes_with_the_first() {
        String twice = LEDGE + "  - { name: bead, profile: board 1/4 x 1, back: rail.face, bottom: 1 }\n";
        Comparison comparison = compared(twice, twice.replace("bottom: 1 }", "bottom: 2 }"));
        List<Pair> faces = comparison.pairs("members").stream()
                .filter(pair -> pair.names().equals(List.of("rail", "face")))
                .toList();
        assertThat(faces).extracting(Pair::number).containsExactly(1, 2);
        assertThat(more(faces.get(0), "length").orElseThrow()).isCloseTo(1, within(1e-9));
        assertThat(more(faces.get(1), "length").orElseThrow()).isCloseTo(-1, within(1e-9));
    }

    @Test
    void a_row_of_one_alone_has_no_difference() {
        Comparison comparison = compared(
                LEDGE, LEDGE + "  - { name: cap, profile: board 3/4 x 5, lay: flat, back: wall, bottom: 5 }\n");
        Pair cap = last(comparison.pairs("pieces"));
        assertThat(cap.names()).containsExactly("cap");
        assertThat(cap.a()).isEmpty();
        assertThat(more(cap, "top")).isEmpty();
        assertThat(cap.alike()).isFalse();
    }

    @Test
    void the_text_shows_a_over_b_over_their_difference_and_what_is_alike_once() {
        String text = text(LEDGE, LEDGE.replace("3/4 x 4,", "3/4 x 4-1/4,"));
        assertThat(text.lines())
                .containsSubsequence(
                        "                            A      B  B - A",
                        "height                  4-3/4      5   +1/4",
                        "bottom                      0      0")
                .containsSubsequence(
                        "rail   A           0      4     0    3/4   3.00",
                        "       B           0  4-1/4     0    3/4   3.19",
                        "       B - A           +1/4               +0.19",
                        "shelf  A           4  4-3/4     0  3-1/2   2.63",
                        "       B       4-1/4      5     0  3-1/2   2.63",
                        "       B - A    +1/4   +1/4");
        assertThat(text).contains("shelf  both   trim");
    }

    @Test
    void a_difference_that_is_no_sixteenth_is_told_in_thousandths_and_metric_in_millimeters() {
        assertThat(text(LEDGE, LEDGE.replace("3/4 x 4,", "3/4 x 4.02,"))).contains("+0.020");
        String metric = "units: mm\n" + LEDGE.replace("3/4 x 3-1/2", "19 x 89");
        assertThat(text(metric.replace("3/4 x 4,", "19 x 100,"), metric.replace("3/4 x 4,", "19 x 110,")))
                .contains("+10");
    }

    @Tag("long")
    @Test
    void no_line_of_the_text_is_wider_than_a_page_nor_of_its_head_than_a_telephone() {
        for (long seed = 0; seed < SEEDS; seed++) {
            String text = text(RandomStacks.of(seed), RandomStacks.of(seed + 7));
            assertThat(text.lines()).as("seed %d", seed).allMatch(line -> Display.width(line) <= 80);
            assertThat(text.lines().takeWhile(line -> !line.startsWith("SIZE AND WEIGHT")))
                    .as("seed %d", seed)
                    .allMatch(line -> Display.width(line) <= 48);
        }
    }

    @Test
    void the_object_holds_both_reports_and_the_differences_between_their_figures() {
        JsonNode json = new JsonMapper().readTree(json(LEDGE, LEDGE.replace("3/4 x 4,", "3/4 x 4-1/4,")));
        assertThat(List.copyOf(json.propertyNames())).containsExactly("a", "b", "figures", "differing", "differences");
        JsonNode height = json.at("/differences/totals/0");
        assertThat(height.toString()).isEqualTo("{\"figure\":\"height\",\"a\":4.75,\"b\":5,\"difference\":0.25}");
        double a = json.at("/a/totals/height").doubleValue();
        double b = json.at("/b/totals/height").doubleValue();
        assertThat(height.get("difference").doubleValue()).isCloseTo(b - a, within(1e-6));
    }

    @Tag("long")
    @Test
    void the_object_of_any_two_stacks_is_as_the_schema_says() {
        for (long seed = 0; seed < SEEDS; seed++) {
            String json = json(RandomStacks.of(seed), RandomStacks.of(seed + 3));
            assertThat(faults(json)).as("seed %d", seed).isEmpty();
            assertThat(json).doesNotContain("null").endsWith("}\n");
        }
    }

    @Test
    void where_one_stack_is_refused_there_are_no_differences() {
        String json = json(LEDGE, "title: Nothing\npieces: []\n");
        assertThat(faults(json)).isEmpty();
        assertThat(json).contains("\"empty-stack\"").doesNotContain("\"differences\"");
    }

    @Test
    void the_schema_itself_catches_a_strange_key() {
        assertThat(faults(json(LEDGE, LEDGE).replace("\"differing\"", "\"difering\"")))
                .isNotEmpty();
    }

    @Test
    void in_a_page_the_names_of_both_stacks_are_text() {
        String hostile = LEDGE.replace("title: Ledge", "title: \"<script>alert('1')</script>\"")
                .replace("name: shelf", "name: \"<b>&\\\"полка\\\"\"");
        String html = ComparisonHtml.beside(compared(hostile, LEDGE));
        assertThat(html).doesNotContain("<script", "<b>").contains("&lt;script&gt;", "&lt;b&gt;&amp;&quot;полка&quot;");
    }

    @Test
    void two_files_are_reported_side_by_side_with_their_notices_apart() {
        String cornice = Ran.demo("reading-room-cornice.yaml").toString();
        String head = Ran.demo("reading-room-door-head.yaml").toString();
        Ran ran = Ran.of("report", cornice, head);
        assertThat(ran.out())
                .startsWith("A: Reading-room bookcase cornice\n(reading-room-cornice.yaml)\n")
                .contains("\nB: Reading-room door head\n");
        assertThat(ran.err().lines()).allMatch(line -> line.matches("[AB]  (note|problem)  .*"));
        assertThat(ran.code())
                .isEqualTo(Math.max(
                        Ran.of("report", cornice).code(), Ran.of("report", head).code()));
    }

    private static Pair last(List<Pair> pairs) {
        return pairs.get(pairs.size() - 1);
    }

    private static OptionalDouble more(Pair pair, String key) {
        return pair.more(pair.at(key));
    }

    private static Comparison compared(String a, String b) {
        return Comparison.of(Typed.of(a), Typed.of(b)).orElseThrow();
    }

    private static String text(String a, String b) {
        return ComparisonText.write(compared(a, b));
    }

    private static String json(String a, String b) {
        return ComparisonJson.write(Typed.of(a), Typed.of(b));
    }

    private static List<String> faults(String report) {
        return Schemas.faults("comparison", report);
    }
}
