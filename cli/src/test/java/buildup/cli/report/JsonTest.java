package buildup.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.tell.Json;
import buildup.profiles.outline.Point;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.json.JsonMapper;

class JsonTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "1, 1",
        "100, 100",
        "1e9, 1000000000",
        "0.1, 0.1",
        "2.0009000, 2.0009",
        "0.33333333, 0.333333",
        "-0.0000004, 0",
        "0.0078125, 0.007813",
        "-0.0078125, -0.007813"
    })
    void a_number_has_at_most_six_decimals_and_no_zeros_behind(double number, String written) {
        assertThat(Json.number(number)).isEqualTo(written);
    }

    @Test
    void an_object_is_laid_out_the_same_each_time() {
        Json json = new Json()
                .put("name", "cap")
                .put("at", new Point(0.5, -1))
                .put("grounded", true)
                .put("blank", new Json().put("width", 2.5))
                .put("rows", List.of(new Json().put("on", "frieze")))
                .put("none", List.<Json>of())
                .texts("closedBy", List.of("wall", "floor"));
        assertThat(json.written()).isEqualTo("""
                {
                  "name": "cap",
                  "at": [0.5, -1],
                  "grounded": true,
                  "blank": {
                    "width": 2.5
                  },
                  "rows": [
                    {
                      "on": "frieze"
                    }
                  ],
                  "none": [],
                  "closedBy": ["wall", "floor"]
                }""");
    }

    @Test
    void what_is_absent_leaves_no_trace() {
        assertThat(new Json()
                        .put("a", OptionalDouble.empty())
                        .put("b", Optional.empty())
                        .written())
                .isEqualTo("{}");
    }

    @Test
    void any_text_comes_back_as_it_was() {
        StringBuilder all = new StringBuilder("\"\\/ 飾り縁 \uD83E\uDEB5 \u2028\u2029");
        for (char c = 0; c < 0xA0; c++) {
            all.append(c);
        }
        String written = new Json().put("text", all.toString()).written();
        assertThat(new JsonMapper().readTree(written).get("text").stringValue()).isEqualTo(all.toString());
        assertThat(written.substring(1, written.length() - 1).strip()).doesNotContain("\n", "\r", "\u0000", "\u001B");
    }

    @Test
    void half_a_letter_is_written_so_that_utf_8_can_hold_it() {
        assertThat(new Json().put("text", "a\uD83Eb").written()).contains("\"a\\ud83eb\"");
    }
}
