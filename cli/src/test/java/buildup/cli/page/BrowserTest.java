package buildup.cli.page;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.OutsideTool;
import buildup.cli.Ran;
import buildup.cli.command.Typed;
import buildup.cli.report.RandomStacks;
import buildup.engine.Answer;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page in a real browser, opened from disk. Skipped where there is no Chromium or no Node.js with its packages. */
@Tag("long")
class BrowserTest {
    private static final Path CHECKS = Path.of("src/test/browser").toAbsolutePath();

    /** Names that try what names can: markup, quotes, scripts from the right, one id for two. */
    private static final String HOSTILE = """
            title: "</script><script>window.taken = 1</script> & \\"quoted\\" 'title' \u05e6\u05d9\u05e4\u05d5\u05d9"
            wood: yellow-poplar
            space: { wall: { solid: no } }
            eyes: [ { name: "<i>seated</i>", distance: 72, height: -40 } ]
            lights: [ { name: "\\" onclick=window.taken=1 x=\\"", altitude: 30, azimuth: 20 } ]
            pieces:
              - { name: "<img src=x onerror=taken=1>", profile: board 3/4 x 3-1/2, back: 0, bottom: 0 }
              - { name: "\u00c9cran 1", section: [out 2, up 3/4], back: 0, bottom: 3-1/2 }
              - { name: "ecran 1", section: [out 2-1/2, up 3/4], back: 0, bottom: 4-1/4 }
              - { name: "\u98fe\u308a\u7e01", section: [out 3, up 3/4], back: 0, bottom: 5 }
              - { name: "\u05e6\u05d9\u05e4\u05d5\u05d9", section: [out 3-1/4, up 3/4], back: 0, bottom: 5-3/4 }
              - { name: "SECTION FRONT KEY- %s", kind: nailer, section: [out 1, up 1], back: 3/4, bottom: 1 }
            """;

    @TempDir
    private Path folder;

    @Test
    void opens_from_disk_without_a_request_or_a_complaint() throws Exception {
        check("opens", demo("cornice"), demo("door-head"), demo("wainscot-cap"));
    }

    @Test
    void light_from_any_side_falls_as_the_engine_says() throws Exception {
        Path[] demos = {withAnswers(demo("cornice")), withAnswers(demo("door-head")), withAnswers(demo("wainscot-cap"))
        };
        check("bands", demos);
        check("casters", demos);
    }

    @Test
    void light_falls_as_the_engine_says_on_stacks_that_nobody_would_build() throws Exception {
        List<Path> pages = new ArrayList<>();
        for (long seed : LongStream.rangeClosed(1, 12).toArray()) {
            Answer answer = Typed.of(RandomStacks.of(seed));
            if (answer.known().isPresent()) {
                pages.add(withAnswers(page("random-" + seed, answer), answer));
            }
        }
        assertThat(pages).hasSizeGreaterThan(5);
        check("bands", pages.toArray(Path[]::new));
    }

    @Test
    void light_that_cannot_be_is_said_and_leaves_no_shadow() throws Exception {
        check("impossible_light", demo("cornice"));
    }

    @Test
    void three_buttons_set_the_light() throws Exception {
        check("three_lights", demo("cornice"));
    }

    @Test
    void numbered_steps_build_the_stack_up() throws Exception {
        check("steps", demo("cornice"));
    }

    @Test
    void a_piece_shows_its_row_and_a_row_its_piece() throws Exception {
        check("pieces", demo("cornice"));
        check("touched", demo("cornice"));
    }

    @Test
    void sizes_turn_from_inches_to_millimeters_and_back() throws Exception {
        check("units", demo("cornice"));
    }

    @Test
    void nothing_scrolls_sideways_on_a_telephone() throws Exception {
        check("narrow", demo("cornice"), demo("door-head"), demo("wainscot-cap"), hostile());
    }

    @Test
    void a_checker_of_accessibility_finds_nothing_serious() throws Exception {
        check("accessible", demo("cornice"), hostile());
    }

    @Test
    void the_keyboard_alone_reaches_everything() throws Exception {
        check("keyboard", demo("cornice"));
    }

    /** A shelf over a board, its depth free; what its report says at each depth stands beside. */
    @Test
    void a_slider_shows_at_each_size_what_the_report_of_the_stack_with_that_size_says() throws Exception {
        String stack = """
                title: Shelf
                wood: yellow-poplar
                sizes: { out: %s }
                space: { wall: { solid: no } }
                pieces:
                  - { name: board, profile: board 3/4 x 8, back: wall, bottom: 0 }
                  - { name: shelf, section: [out out, up 3/4], back: wall, bottom: board.top }
                must:
                  - share of board.face in drafting <= 50 %%
                  - projection <= 6
                """;
        List<String> expected = new ArrayList<>();
        for (String out : List.of("1", "2", "3", "4", "5", "6", "7", "8", "9")) {
            String figures = Typed.of(stack.formatted(out)).known().orElseThrow().must().stream()
                    .map(must -> "\"" + must.rule() + ": "
                            + FigurePrinter.INCHES.print(
                                    Figure.of(must.quantity(), must.figure().orElseThrow()))
                            + (must.met() ? "" : " not met") + "\"")
                    .collect(Collectors.joining(", "));
            expected.add("{\"typed\": \"" + out + "\", \"figures\": [" + figures + "]}");
        }
        Path page = page("shelf", Typed.of(stack.formatted("\"between 1 and 9 by 1, now 4\"")));
        Path other = page("other", Typed.of(stack.formatted("\"between 1 and 9 by 1, now 5\"")));
        check("slider", page, Files.writeString(folder.resolve("shelf.json"), expected.toString()), other);
    }

    @Test
    void names_are_only_names() throws Exception {
        check("hostile_names", hostile());
    }

    @Test
    void an_open_page_takes_a_new_stack_and_stays_as_it_was_set() throws Exception {
        check("exchange", demo("cornice"), demo("cornice"));
    }

    @Test
    void it_prints_on_a_few_pages() throws Exception {
        check("on_paper", demo("cornice"), folder.resolve("paper.pdf"));
        OutsideTool.Run info = OutsideTool.run(folder, "pdfinfo", "paper.pdf");
        assertThat(info.output()).contains("612 x 792 pts").containsPattern("Pages: +1?\\d\\n");
    }

    private void check(String name, Path... files) throws IOException, InterruptedException {
        OutsideTool.require("chromium");
        OutsideTool.require("npm ci in src/test/browser", Files.isDirectory(CHECKS.resolve("node_modules")));
        List<Object> words = new ArrayList<>(List.of(CHECKS.resolve("check.mjs"), name));
        words.addAll(Arrays.asList(files));
        OutsideTool.Run run = OutsideTool.run(folder, "node", words.toArray());
        assertThat(run.code()).as(run.output()).isZero();
    }

    private Path demo(String name) throws IOException {
        return page(name, answerOf(name));
    }

    private static Answer answerOf(String demo) {
        return Typed.of(Ran.read(Ran.demo("reading-room-" + demo + ".yaml")));
    }

    private Path hostile() throws IOException {
        Answer answer = Typed.of(HOSTILE);
        assertThat(answer.known()).as(answer.notices().toString()).isPresent();
        return page("hostile", answer);
    }

    private Path page(String name, Answer answer) throws IOException {
        return Files.write(folder.resolve(name + ".html"), Page.of(answer).getBytes(UTF_8));
    }

    private Path withAnswers(Path page) throws IOException {
        String demo = page.getFileName().toString().replace(".html", "");
        return withAnswers(page, answerOf(demo));
    }

    private static Path withAnswers(Path page, Answer answer) throws IOException {
        Files.writeString(
                Path.of(page + ".json"), LightAnswers.of(answer.known().orElseThrow(), Files.readString(page)));
        return page;
    }
}
