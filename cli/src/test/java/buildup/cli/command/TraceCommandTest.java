package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.Ran;
import buildup.cli.Schemas;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class TraceCommandTest {
    private static final String DEMO = Ran.demo("reading-room-shelf-edge.csv").toString();

    private static Ran demo(String... more) {
        String[] words = new String[more.length + 4];
        words[0] = "trace";
        words[1] = DEMO;
        words[2] = "--units";
        words[3] = "mm";
        System.arraycopy(more, 0, words, 4, more.length);
        return Ran.of(words);
    }

    @Test
    void the_demo_is_traced_in_the_words_of_the_trade() {
        Ran ran = demo("--width", "1-1/8", "--height", "2", "--name", "shelf-edge");
        assertThat(ran.code()).isEqualTo(ExitCode.CLEAN);
        assertThat(ran.err()).isEqualTo("""
                note  reading-room-shelf-edge.csv  Scaled by the height: enlarged 1.00001 times from the stated unit.
                note  reading-room-shelf-edge.csv  By the stated unit the height comes out at 2.000; the calipers say 2.000.
                note  reading-room-shelf-edge.csv  By the height the width comes out at 1.125; the calipers say 1.125.
                note  reading-room-shelf-edge.csv  The points scatter 0.002: members under 0.014 cannot be told. Taken: --deviation 0.006.
                """);
        assertThat(ran.out()).startsWith("# Traced: 10 members from 470 points. Largest deviation 0.0058 in");
        assertThat(ran.out()).endsWith("""
                profiles:
                  - name: shelf-edge
                    kind: trim
                    about: Traced
                    sizes: [projection, height]
                    usual: [1-1/8 x 2]
                    words:
                      - out 3/8 as bottom
                      - up 1/8 as fillet
                      - cove 1/2
                      - out 1/4 as fillet-2
                      - up 3/4 as face
                      - ovolo in 3/8
                      - in 1/8 as fillet-3
                      - up 1/4 as fillet-4
                """);
    }

    @Test
    void it_is_told_in_the_unit_of_the_sizes_that_are_given_else_in_that_of_the_tracing() {
        String inches = demo("--width", "1-1/8", "--format", "text").out();
        assertThat(inches).contains("Sizes in inches", "cove 1/2,");
        for (String[] metric : new String[][] {{}, {"--width", "28.575 mm"}}) {
            String[] more = Arrays.copyOf(metric, metric.length + 2);
            more[metric.length] = "--format";
            more[metric.length + 1] = "text";
            assertThat(demo(more).out())
                    .contains("Sizes in millimeters", "projection             28.6", "cove 12.7")
                    .doesNotContainPattern("\\d/\\d");
        }
        assertThat(demo("--width", "28.575 mm", "--format", "svg").out())
                .contains("28.6- mm projection x 50.8")
                .doesNotContain("1-1/8");
        assertThat(new JsonMapper()
                        .readTree(demo("--format", "json").out())
                        .get("units")
                        .stringValue())
                .isEqualTo("mm");
    }

    /** The README's command: what is written is a catalog, and the profile in it is the traced one. */
    @Test
    void what_is_written_is_read_as_a_catalog(@TempDir Path folder) {
        Path catalog = folder.resolve("shelf-edge.yaml");
        Ran traced = demo("--width", "1-1/8", "--height", "2", "--name", "shelf-edge", "-o", catalog.toString());
        assertThat(traced.code()).isEqualTo(ExitCode.CLEAN);
        assertThat(traced.out()).isEmpty();
        Ran profile = Ran.of("profile", "shelf-edge 1-1/8 x 2", "--catalog", catalog.toString(), "--format", "json");
        assertThat(profile.code()).as(profile.err() + profile.out()).isEqualTo(ExitCode.CLEAN);
        JsonNode json = new JsonMapper().readTree(profile.out());
        // by courses: 3/8 x 1/8; the cove's 1/2 with its hollow out of 7/8; the face; the ovolo over 3/4; the top
        double area = 0.375 * 0.125
                + (0.875 * 0.5 - Math.PI / 4 * 0.25)
                + 1.125 * 0.75
                + (0.75 * 0.375 + Math.PI / 4 * 0.375 * 0.375)
                + 0.625 * 0.25;
        assertThat(json.get("area").doubleValue()).isEqualTo(area, within(1e-6));
    }

    /** 1-1/8 and 2 in are 28.575 and 50.8 mm; the molding was drawn in inches, and stays so: its cove of 1/2 is 12.7. */
    @Test
    void a_catalog_in_millimeters_is_written_for_whoever_measures_in_those(@TempDir Path folder) {
        Path catalog = folder.resolve("shelf-edge.yaml");
        Ran traced = demo("--width", "28.575 mm", "--height", "50.8 mm", "-o", catalog.toString());
        assertThat(traced.code()).isEqualTo(ExitCode.CLEAN);
        assertThat(catalog)
                .content()
                .contains("\nunits: mm\nprofiles:", "usual: [28.575 x 50.8]", "- cove 12.7\n", " mm, near (", "rms 0.0")
                .doesNotContain(" in,", " in.");
        Ran profile = Ran.of("profile", "traced", "--catalog", catalog.toString(), "--format", "json");
        assertThat(profile.code()).as(profile.err() + profile.out()).isEqualTo(ExitCode.CLEAN);
        assertThat(new JsonMapper().readTree(profile.out()).at("/width").doubleValue())
                .isEqualTo(2, within(1e-6));
    }

    @Test
    void all_figures_are_told_to_programs() {
        JsonNode json = new JsonMapper().readTree(demo("--format", "json").out());
        assertThat(json.at("/projection").doubleValue()).isEqualTo(1.125, within(1e-9));
        assertThat(json.at("/members").size()).isEqualTo(10);
        assertThat(json.at("/members/2/member").stringValue()).isEqualTo("cove");
        assertThat(json.at("/members/2/radius").doubleValue()).isEqualTo(0.5, within(1e-9));
        assertThat(json.at("/rms").doubleValue()).isEqualTo(0.002, within(3e-4));
        assertThat(json.at("/words/2").stringValue()).isEqualTo("cove 12.7");
        assertThat(json.at("/notices").size()).isOne();
        assertThat(json.at("/notices/0/code").stringValue()).isEqualTo("trace-grain");
    }

    @Test
    void the_tracing_is_laid_over_its_outline() {
        Ran ran = demo("--format", "svg", "--name", "shelf-edge");
        assertThat(ran.out()).startsWith("<?xml").contains("shelf-edge, traced", "deviations 10 times as large");
        assertThat(demo("--format", "svg", "--name", "shelf-edge").out()).isEqualTo(ran.out());
    }

    @Test
    void without_a_unit_millimeters_are_asked_for() {
        Ran ran = Ran.of("trace", DEMO, "--kind", "casing");
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .startsWith("refusal  reading-room-shelf-edge.csv  The outline is 51.")
                .endsWith(
                        " high. As inches that is 4.3 ft of casing: mm? State the unit of the tracing, or one caliper size.\n");
    }

    @Test
    void everything_wrong_with_the_command_line_is_said() {
        Ran ran = Ran.of(
                "trace", "none.csv", "--units", "cubit", "--width", "3/43", "--height", "0", "--name", "My Molding");
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).isEqualTo("""
                refusal  none.csv  'My Molding' cannot name a profile. Take small letters, digits and hyphens.
                refusal  none.csv  --width: 3/43 is not a shop fraction (halves, quarters, 8ths, 16ths, 32nds, 64ths). Meant 3/4?
                refusal  none.csv  --height must be more than 0, not 0. Give it a size, or leave it out.
                refusal  none.csv  There is no unit 'cubit'. Take in, mm, cm or ft.
                refusal  none.csv  There is no file none.csv. Name a CSV, SVG or DXF file.
                """);
    }

    @Test
    void an_empty_a_binary_and_a_crossing_file_are_refused(@TempDir Path folder) throws IOException {
        assertThat(refused(folder, "empty.csv", new byte[0]))
                .isEqualTo("refusal  empty.csv:1:1  empty.csv is empty. Is it the right file?\n");
        assertThat(refused(folder, "binary.csv", new byte[] {1, 2, 3, 0}))
                .isEqualTo("refusal  binary.csv:1:1  binary.csv is not a text file: byte 1 stands in it."
                        + " Save the profile as CSV, SVG or ASCII DXF.\n");
        assertThat(refused(folder, "crossing.csv", "x,y\n0,0\n2,0\n0.5,2\n2,2\n0,0\n".getBytes()))
                .isEqualTo("refusal  crossing.csv  Outline crosses itself near (1.14, 1.14), between points 2 and 4."
                        + " Traced twice?\n");
        Ran json = Ran.of("trace", folder.resolve("empty.csv").toString(), "--format", "json");
        assertThat(new JsonMapper().readTree(json.out()).at("/notices/0/code").stringValue())
                .isEqualTo("empty-file");
    }

    private static String refused(Path folder, String name, byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve(name), bytes);
        Ran ran = Ran.of("trace", file.toString());
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.out()).isEmpty();
        return ran.err();
    }

    @Test
    void a_tracing_is_told_as_text_for_a_spreadsheet_on_a_page_and_as_the_schema_says(@TempDir Path folder)
            throws IOException {
        Ran text = demo("--format", "text", "--name", "shelf-edge");
        assertThat(text.out())
                .startsWith("shelf-edge\nkind ")
                .contains("largest deviation      0.1476\n", "MEMBERS", "PROFILE WORDS", "ovolo in 9.525");
        assertThat(text.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        assertThat(demo("--format", "csv").out())
                .startsWith("member,shape,radius mm,length mm,")
                .contains("\r\ncove,arc,12.7,19.949113,");
        Path page = folder.resolve("shelf-edge.html");
        assertThat(demo("--format", "html", "-o", page.toString()).out()).isEmpty();
        assertThat(Files.readString(page)).startsWith("<!DOCTYPE html>").contains(">0.1476<", ">ovolo<");
        String json = demo("--format", "json").out();
        assertThat(Schemas.faults("trace", json)).isEmpty();
        assertThat(Schemas.faults("trace", json.replace("\"rms\"", "\"rsm\""))).isNotEmpty();
        Files.writeString(folder.resolve("none.csv"), "");
        String refused = Ran.of("trace", folder.resolve("none.csv").toString(), "--format", "json")
                .out();
        assertThat(Schemas.faults("trace", refused)).isEmpty();
    }
}
