package buildup.cli.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.Ran;
import buildup.cli.Schemas;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class JsonReportTest {
    private static final int SEEDS = 60;

    private static final List<String> TOP = List.of(
            "title",
            "units",
            "totals",
            "pieces",
            "steps",
            "space",
            "members",
            "reveals",
            "contacts",
            "overlaps",
            "voids",
            "support",
            "nails",
            "proposals",
            "order",
            "lights",
            "shadows",
            "darkness",
            "eyes",
            "seen",
            "coverage",
            "joints",
            "must",
            "verdict",
            "notices");

    @Test
    void the_report_has_the_keys_of_the_contract_in_their_order() {
        assertThat(keys(cornice())).isEqualTo(TOP);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/totals | height projection bottom top trimHeight trimProjection area weightPerFoot",
                "/pieces/1 | name letter profile kind wood bottom top back face area blank grounded bearing backing outline",
                "/pieces/1/blank | width thickness stock",
                "/pieces/2/bearing/0 | on from to",
                "/pieces/2/backing/0 | by from to",
                "/steps/0 | piece height projection top",
                "/space | ceilingLeft projectionLeft",
                "/members/3 | piece member from to length bottom top projection step",
                "/reveals/0 | piece over amount along at step",
                "/contacts/0 | a b facing slope length from to",
                "/voids/0 | area at closedBy",
                "/eyes/0 | name distance height heightOverFloor"
            })
    void each_row_has_the_keys_of_the_contract_in_their_order(String where, String keys) {
        assertThat(keys(cornice().at(where))).isEqualTo(List.of(keys.split(" ")));
    }

    @Test
    void a_notice_has_the_keys_of_the_contract_in_their_order() {
        JsonNode notice = json(Ran.report("""
                title: Two in one place
                pieces:
                  - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: 0 }
                  - { name: bed, profile: board 3/4 x 2, back: 1/2, bottom: 4 }
                """, "--format", "json").out()).at("/notices/0");
        assertThat(keys(notice))
                .containsExactly("level", "code", "file", "line", "piece", "amount", "values", "message", "cure");
        assertThat(notice.get("code").stringValue()).isEqualTo("overlap");
        assertThat(notice.get("amount").doubleValue()).isCloseTo(0.25, within(1e-6));
    }

    @Test
    void an_overlap_has_the_keys_of_the_contract_in_their_order() {
        JsonNode overlap = json(Ran.report("""
                pieces:
                  - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: 0 }
                  - { name: bed, profile: board 3/4 x 2, back: 1/2, bottom: 4 }
                """, "--format", "json").out()).at("/overlaps/0");
        assertThat(keys(overlap)).containsExactly("a", "b", "area", "depth", "at");
    }

    @Test
    void a_lamp_and_a_distant_light_each_have_their_own_keys() {
        JsonNode lights = json(Ran.report("""
                space: { floor: -84 }
                lights:
                  - { name: sun, altitude: 40, azimuth: 60 }
                  - { name: sconce, at: { distance: 20, height: floor + 70 }, width: 4 }
                pieces:
                  - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: 0 }
                """, "--format", "json").out()).get("lights");
        assertThat(keys(lights.get(0))).startsWith("name", "altitude", "azimuth");
        assertThat(keys(lights.get(1))).containsExactly("name", "at", "width");
        assertThat(lights.get(1).get("at").toString()).isEqualTo("[20,-14]");
    }

    @Test
    void a_contact_of_no_length_carries_nothing_and_has_no_slope() {
        JsonNode corner = json(Ran.report("""
                pieces:
                  - { name: low, profile: board 1 x 2, back: 0, bottom: 0 }
                  - { name: high, profile: board 1 x 2, back: 1, bottom: 2 }
                """, "--format", "json").out()).get("contacts");
        List<List<String>> rows = new ArrayList<>();
        corner.forEach(row -> {
            if (row.get("length").doubleValue() == 0) {
                rows.add(keys(row));
            }
        });
        assertThat(rows)
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row).containsExactly("a", "b", "length", "from", "to"));
    }

    @Test
    void figures_are_inches_and_pounds_per_foot() {
        JsonNode totals = json(Ran.report("""
                units: mm
                wood: yellow-poplar
                pieces:
                  - { name: frieze, profile: board 25.4 x 254, back: wall, bottom: 0 }
                """, "--format", "json").out()).get("totals");
        assertThat(totals.get("height").doubleValue()).isCloseTo(10, within(1e-6));
        assertThat(totals.get("area").doubleValue()).isCloseTo(10, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(strings = {"reading-room-cornice.yaml", "reading-room-door-head.yaml"})
    void the_reports_of_the_demo_stacks_are_as_the_schema_says(String demo) {
        Ran ran = Ran.of("report", Ran.demo(demo).toString(), "--format", "json");
        assertThat(faults(ran.out())).isEmpty();
        assertThat(ran.err()).isEmpty();
    }

    @Test
    @Tag("long")
    void the_report_of_any_stack_is_as_the_schema_says() {
        for (long seed = 0; seed < SEEDS; seed++) {
            Ran ran = Ran.report(RandomStacks.of(seed), "--format", "json");
            assertThat(faults(ran.out())).as("seed %d", seed).isEmpty();
            assertThat(ran.out()).as("seed %d", seed).doesNotContain("null").endsWith("}\n");
        }
    }

    @Test
    void a_refused_stack_has_a_title_and_notices_and_no_figures() {
        Ran ran = Ran.report("title: Nothing\npieces: []\n", "--format", "json");
        JsonNode json = json(ran.out());
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).isEmpty();
        assertThat(keys(json)).containsExactly("title", "units", "notices");
        assertThat(json.get("title").stringValue()).isEqualTo("Nothing");
        assertThat(json.at("/notices/0/code").stringValue()).isEqualTo("empty-stack");
        assertThat(faults(ran.out())).isEmpty();
    }

    @Test
    void the_schema_itself_catches_a_missing_figure_and_a_strange_one() {
        String report = Ran.of("report", Ran.demo("reading-room-cornice.yaml").toString(), "--format", "json")
                .out();
        assertThat(faults(report.replace("\"height\":", "\"heigth\":"))).isNotEmpty();
        assertThat(faults(report.replace("\"steps\":", "\"stepps\":"))).isNotEmpty();
        assertThat(faults(report.replaceFirst("\"level\": \"note\"", "\"level\": \"refusal\"")))
                .isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"reading-room-cornice.yaml", "reading-room-wainscot-cap.yaml", "reading-room-door-head.yaml"})
    void the_outline_of_a_piece_is_a_closed_walk_round_its_area(String demo) {
        JsonNode report = json(
                Ran.of("report", Ran.demo(demo).toString(), "--format", "json").out());
        for (JsonNode piece : report.get("pieces")) {
            List<JsonNode> walk = new ArrayList<>();
            piece.get("outline").forEach(walk::add);
            double twice = 0;
            for (int i = 0; i < walk.size(); i++) {
                JsonNode segment = walk.get(i);
                assertThat(segment.get("to"))
                        .isEqualTo(walk.get((i + 1) % walk.size()).get("from"));
                twice += twiceArea(segment);
            }
            String name = piece.get("name").asString();
            // coordinates have six decimals: half of the last along the outline is lost
            assertThat(twice / 2).as(name).isCloseTo(piece.get("area").asDouble(), within(1e-4));
        }
    }

    /** Green's theorem: the triangle with the origin, and of an arc the circular segment on its chord. */
    private static double twiceArea(JsonNode segment) {
        double[] from = place(segment.get("from"));
        double[] to = place(segment.get("to"));
        double triangle = from[0] * to[1] - from[1] * to[0];
        if (segment.get("kind").asString().equals("line")) {
            assertThat(segment.has("center")).isFalse();
            assertThat(segment.has("clockwise")).isFalse();
            return triangle;
        }
        double[] center = place(segment.get("center"));
        boolean clockwise = segment.get("clockwise").asBoolean();
        double turn =
                Math.atan2(to[1] - center[1], to[0] - center[0]) - Math.atan2(from[1] - center[1], from[0] - center[0]);
        turn += clockwise && turn > 0 ? -2 * Math.PI : !clockwise && turn < 0 ? 2 * Math.PI : 0;
        double radius = Math.hypot(from[0] - center[0], from[1] - center[1]);
        return triangle + radius * radius * (turn - Math.sin(turn));
    }

    private static double[] place(JsonNode pair) {
        return new double[] {pair.get(0).asDouble(), pair.get(1).asDouble()};
    }

    private static JsonNode cornice() {
        return json(Ran.of("report", Ran.demo("reading-room-cornice.yaml").toString(), "--format", "json")
                .out());
    }

    private static JsonNode json(String text) {
        return new JsonMapper().readTree(text);
    }

    private static List<String> keys(JsonNode object) {
        return List.copyOf(object.propertyNames());
    }

    private static List<String> faults(String report) {
        return Schemas.faults("report", report);
    }
}
