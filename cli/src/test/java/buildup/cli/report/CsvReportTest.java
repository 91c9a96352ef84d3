package buildup.cli.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.Ran;
import buildup.cli.Sheeted;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CsvReportTest {
    private static final String CORNICE = Ran.demo("reading-room-cornice.yaml").toString();

    @Test
    void every_sheet_of_the_report_that_has_rows_stands_under_its_title() {
        JsonNode json = new JsonMapper()
                .readTree(Ran.of("report", CORNICE, "--format", "json").out());
        List<String> titles =
                Sheeted.titles(Ran.of("report", CORNICE, "--format", "csv").out());
        assertThat(titles)
                .startsWith("SIZE AND WEIGHT", "PIECES", "PIECES: bears on", "PIECES: backing to nail to")
                .anyMatch(title -> title.startsWith("MEMBERS"))
                .anyMatch(title -> title.startsWith("UNFINISHED WOOD SEEN"))
                .doesNotHaveDuplicates();
        assertThat(titles.contains("NOTICES")).isEqualTo(!json.get("notices").isEmpty());
        assertThat(json.get("voids")).isNotEmpty();
        assertThat(titles).contains("CLOSED VOIDS");
    }

    @Test
    void figures_are_those_of_the_object_to_the_last_decimal() {
        JsonNode json = new JsonMapper()
                .readTree(Ran.of("report", CORNICE, "--format", "json").out());
        Sheeted.Block totals =
                Sheeted.block(Ran.of("report", CORNICE, "--format", "csv").out(), "SIZE AND WEIGHT");
        assertThat(Double.parseDouble(totals.cell(0, "height in")))
                .isCloseTo(json.at("/totals/height").doubleValue(), within(1e-6));
        assertThat(Double.parseDouble(totals.cell(0, "weight, lb a foot")))
                .isCloseTo(json.at("/totals/weightPerFoot").doubleValue(), within(1e-6));
        Sheeted.Block pieces =
                Sheeted.block(Ran.of("report", CORNICE, "--format", "csv").out(), "PIECES");
        for (int i = 0; i < pieces.rows().size(); i++) {
            assertThat(Double.parseDouble(pieces.cell(i, "blank width in")))
                    .isCloseTo(json.at("/pieces/" + i + "/blank/width").doubleValue(), within(1e-6));
        }
    }

    @Test
    void lengths_are_in_the_unit_that_is_printed_and_the_heading_says_so() {
        Ran ran = Ran.report(
                "units: cm\npieces: [{ name: rail, profile: board 2 x 10, back: wall, bottom: 0 }]\n",
                "--format",
                "csv");
        assertThat(ran.code()).as(ran.err()).isZero();
        String metric = ran.out();
        Sheeted.Block pieces = Sheeted.block(metric, "PIECES");
        assertThat(pieces.cell(0, "top mm")).isEqualTo("100");
        assertThat(pieces.cell(0, "face mm")).isEqualTo("20");
        assertThat(pieces.cell(0, "area, sq cm")).isEqualTo("20");
        assertThat(metric.lines().filter(line -> line.contains(" in,"))).isEmpty();
    }

    @Test
    void of_two_stacks_each_row_stands_as_a_and_as_b_and_what_differs_below() {
        String csv = Ran.of("report", CORNICE, CORNICE, "--format", "csv").out();
        assertThat(csv).doesNotContain("B - A");
        Sheeted.Block whole = Sheeted.block(csv, "SIZE AND WEIGHT");
        assertThat(whole.rows()).hasSize(2);
        assertThat(whole.cell(0, "height in")).isEqualTo(whole.cell(1, "height in"));
    }
}
