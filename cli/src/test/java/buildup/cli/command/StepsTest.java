package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The order of putting up, as it is asked for at the command line. */
class StepsTest {
    private static final String HOOKED = """
            title: Hooked
            wood: yellow-poplar
            space: { wall: { solid: no }, floor: -84, ceiling: %s }
            pieces:
              - { name: fascia, section: [out 3/4, up 2], back: 3, bottom: 0 }
              - { name: crown, section: [out 1, up 1/2, out 2, up 1], back: 2, bottom: 1-1/2 }
            """;

    private static String drawn(String yaml, Path folder) throws Exception {
        Path stack = Files.writeString(folder.resolve("stack.yaml"), yaml);
        Path picture = folder.resolve("steps.svg");
        Ran ran = Ran.of("draw", stack.toString(), "--view", "steps", "-o", picture.toString());
        assertThat(ran.code()).as(ran.err()).isLessThan(2);
        return Ran.read(picture);
    }

    @Test
    void the_strip_has_a_small_section_for_each_step_with_its_number_and_its_way(@TempDir Path folder)
            throws Exception {
        String svg = drawn(HOOKED.formatted("4"), folder);
        Matcher steps = Pattern.compile("<g id=\"step-\\d+\"").matcher(svg);
        assertThat(steps.results().count()).isEqualTo(2);
        assertThat(svg).contains("1  fascia").contains("2  crown").contains("then down 1/2; there");
    }

    @Test
    void a_report_says_what_cannot_go_in_by_how_much_and_what_order_goes() {
        Ran ran = Ran.report(HOOKED.formatted("3-7/16"));
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains(
                        " NO order 'crown' cannot go in past 'fascia': it has to be lifted 1/2, and the ceiling leaves"
                                + " room for 7/16.")
                .contains("AN ORDER THAT GOES");
        assertThat(ran.code()).isEqualTo(1);
    }

    @Test
    void the_verdict_says_what_has_to_be_done_with_the_tightest_piece() {
        Ran ran = Ran.report(HOOKED.formatted("9"));
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("order each piece goes in; the tightest: crown has to be lifted 1/2, and there is room for");
    }

    @Test
    void in_millimeters_the_way_is_told_in_millimeters() {
        Ran ran = Ran.report("""
                title: Hooked
                units: mm
                wood: yellow-poplar
                space: { wall: { solid: no }, floor: -2100, ceiling: 100 }
                pieces:
                  - { name: fascia, section: [out 19, up 50], back: 75, bottom: 0 }
                  - { name: crown, section: [out 25, up 12, out 50, up 25], back: 50, bottom: 38 }
                """);
        assertThat(ran.out().replaceAll("\\s+", " ")).contains("then down 12; there is room for 25");
    }

    @Test
    void a_bench_unit_has_its_weight_and_what_two_people_lift() {
        Ran ran = Ran.report(HOOKED.formatted("9").replace("pieces:", "bench: { top: [fascia, crown] }\npieces:"));
        // (1.5 + 3.5) sq in of yellow poplar at 29.3 lb a cubic foot
        assertThat(ran.out()).contains("BENCH UNITS: joined first, put up as one");
    }
}
