package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A board flat on a frieze and on a bed that is fixed to it leans past both: every output says so, with the figures of
 * statics by hand. The board weighs 6.9375 sq in x 29.366 lb/cu ft / 144 = 1.4148 lb/ft at 4.625 out; the bearing ends at
 * 1.75, on the bed. Past it 2.875; held back at 6-3/8, 3/8 over the bearing: 1.4148 x 2.875 / 0.375 = 10.85; held down at
 * 1/2: 1.4148 x 2.875 / 1.25 = 3.25. Without the bed the bearing ends at 0.75: 3.875 past, 14.62 and 21.93.
 */
class TwoCarriersEverywhereTest {
    @TempDir
    private Path folder;

    private Path stack(boolean bed) throws IOException {
        return Files.writeString(
                folder.resolve("two.yaml"),
                """
                title: two carriers
                wood: yellow-poplar
                space: { floor: -84, wall: { solid: no } }
                pieces:
                  - { name: case, kind: framing, section: [out 14, up 90], face: wall, top: 6 }
                  - { name: frieze, profile: board 3/4 x 6, back: wall, bottom: datum }
                """
                        + (bed
                                ? "  - { name: bed, profile: board 1 x 1, back: frieze.face, top: frieze.top, fixed: frieze }\n"
                                : "")
                        + "  - { name: soffit, profile: board 3/4 x 9-1/4, lay: flat, back: wall, bottom: frieze.top }\n");
    }

    private static JsonNode json(Path file) {
        return new JsonMapper()
                .readTree(Ran.of("report", file.toString(), "--format", "json").out());
    }

    private static JsonNode leaning(JsonNode report) {
        return StreamSupport.stream(report.at("/support/balances").spliterator(), false)
                .filter(balance -> balance.get("piece").asString().equals("soffit"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_object_holds_the_figures_and_the_verdict_says_no() throws IOException {
        JsonNode report = json(stack(true));
        JsonNode soffit = leaning(report);
        assertThat(soffit.get("weight").asDouble()).isCloseTo(1.4148, within(0.0001));
        assertThat(soffit.get("margin").asDouble()).isCloseTo(-2.875, within(1e-6));
        assertThat(soffit.get("holdBack").asDouble()).isCloseTo(10.85, within(0.005));
        assertThat(soffit.get("holdBackAt").asDouble()).isEqualTo(6.375);
        assertThat(soffit.get("holdDown").asDouble()).isCloseTo(3.25, within(0.005));
        assertThat(soffit.get("holdDownAt").asDouble()).isEqualTo(0.5);
        assertThat(report.at("/verdict/0/question").asString()).isEqualTo("stands");
        assertThat(report.at("/verdict/0/answer").asString()).isEqualTo("no");
        assertThat(report.at("/verdict/0/cure").asString())
                .contains("through soffit")
                .contains("[tried]");
        JsonNode alone = leaning(json(stack(false)));
        assertThat(alone.get("margin").asDouble()).isCloseTo(-3.875, within(1e-6));
        assertThat(alone.get("holdBack").asDouble()).isCloseTo(14.62, within(0.005));
    }

    @Test
    void text_check_and_page_say_so_in_their_first_lines() throws IOException {
        Path file = stack(true);
        String said = "soffit leans out: 1.41 lb a foot falls 2-7/8 past frieze and bed."
                + " To stand, hold back 10.85 lb a foot at 6-3/8 up, or down 3.25 lb a foot at 1/2 out.";
        for (String command : new String[] {"report", "check"}) {
            Ran ran = Ran.of(command, file.toString());
            assertThat(ran.code()).isEqualTo(ExitCode.PROBLEM);
            assertThat(ran.out().replaceAll("\\s+", " ")).contains("NO stands " + said);
        }
        String page = Ran.of("report", file.toString(), "--format", "html").out();
        assertThat(page).contains("<div class=\"no\"><dt><span class=\"answer\">no</span> stands</dt>");
        assertThat(page).contains("10.85 lb a foot at 6-3/8 up").contains("3.25 lb a foot at 1/2 out");
        String alone = Ran.of("report", stack(false).toString()).out().replaceAll("\\s+", " ");
        assertThat(alone).contains("falls 3-7/8 past frieze.").contains("hold back 14.62 lb a foot at 6-3/8 up");
    }

    @Test
    void the_picture_of_what_holds_names_the_fall() throws IOException {
        Path svg = folder.resolve("holds.svg");
        Ran.of("draw", stack(true).toString(), "--view", "holds", "-o", svg.toString());
        assertThat(Ran.read(svg)).contains("falls: ").contains("10.85").contains("2-7/8");
    }
}
