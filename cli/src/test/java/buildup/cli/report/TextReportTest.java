package buildup.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TextReportTest {
    private static final int SEEDS = 150;

    @Test
    void the_report_of_a_small_stack_reads_as_it_should() throws IOException {
        Ran ran = Ran.of("report", Ran.stack("wainscot-cap.yaml").toString());
        Files.createDirectories(Path.of("target/golden"));
        Files.writeString(Path.of("target/golden/wainscot-cap.txt"), ran.out());
        assertThat(ran.out())
                .as("also in target/golden/wainscot-cap.txt")
                .isEqualTo(Ran.read(Path.of("src/test/resources/golden/wainscot-cap.txt")));
        assertThat(ran.code()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"reading-room-cornice.yaml", "reading-room-door-head.yaml"})
    void the_demo_stacks_have_no_problem_and_fit_the_page(String demo) {
        Ran ran = Ran.of("report", Ran.demo(demo).toString());
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("\nWILL IT BE RIGHT?  ");
        fits(demo, ran.out());
    }

    /** One heading, one table: who looks for a figure by its heading finds one place. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "report reading-room-cornice.yaml",
                "report reading-room-door-head.yaml",
                "report reading-room-mantel.yaml",
                "cuts reading-room-case.yaml"
            })
    void no_heading_stands_over_two_tables(String line) {
        String[] words = line.split(" ");
        assertThat(headings(Ran.of(words[0], Ran.demo(words[1]).toString()), "[:;].*"))
                .hasSizeGreaterThan(5)
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "reading-room-cornice.yaml",
                "reading-room-door-head.yaml",
                "reading-room-mantel.yaml",
                "reading-room-wainscot-cap.yaml"
            })
    void every_heading_of_a_report_is_explained_in_the_guide(String demo) throws IOException {
        List<String> explained = Ran.read(Path.of("guide/figures.md"))
                .lines()
                .filter(line -> line.startsWith("| "))
                .map(line -> line.substring(2, line.indexOf(" |", 2)))
                .toList();
        assertThat(headings(Ran.of("report", Ran.demo(demo).toString()), "[:;,].*"))
                .hasSizeGreaterThan(15)
                .allSatisfy(heading -> assertThat(explained).anyMatch(heading::startsWith));
    }

    /** The headings of what was printed, each as far as such an end. */
    private static List<String> headings(Ran ran, String end) {
        return ran.out()
                .lines()
                .filter(text -> text.matches("[A-Z]['A-Z]+(?: ['A-Z]+)+(?:[ ,:;?].*)?|[A-Z]{5,}(?:[,:;].*)?"))
                .map(text -> text.replaceAll(end, ""))
                .toList();
    }

    @Test
    @Tag("long")
    void any_stack_fits_a_page_of_80_columns_and_its_verdict_25_lines() {
        int reports = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            Ran ran = Ran.report(RandomStacks.of(seed));
            assertThat(ran.code()).as("seed %d: %s", seed, ran.err()).isBetween(0, 1);
            fits("seed " + seed, ran.out());
            reports++;
        }
        assertThat(reports).isEqualTo(SEEDS);
    }

    /** Twelve questions of which half are answered with a sentence and a cure: what is wrong is said whole. */
    @Test
    void a_verdict_too_long_for_a_screen_is_shorter_where_all_is_well_and_whole_where_it_is_not() {
        String stack = """
                wood: yellow-poplar
                space: { floor: -80, ceiling: 10, projection: 4, wall: { covering: 1/2 } }
                eyes: [ { name: seated, distance: 40, height: floor + 40 } ]
                lights: [ { name: window, altitude: 30, azimuth: 20 }, { name: noon, altitude: 60, azimuth: 10 } ]
                must: [ "projection <= 3", "height <= 8" ]
                tolerance: {}
                proportion: {}
                seasons: [ { name: built, moisture: 7 % }, { name: damp, moisture: 13 % } ]
                pieces:
                  - { name: frieze, profile: board 3/4 x 9, cut: flat, back: wall, bottom: datum }
                  - { name: block, kind: nailer, profile: board 1-1/2 x 4, lay: flat, back: wall, bottom: frieze.top + 1/4 }
                  - { name: fascia, profile: board 3/4 x 2-1/2, back: block.face, bottom: block.bottom - 3/4 }
                  - { name: cap, profile: board 3/4 x 6, lay: flat, back: wall, bottom: fascia.top - 1/4 }
                fastenings:
                  - { name: a, piece: frieze, use: 18 ga x 1, at: { up: 1 } }
                """;
        String report = Ran.report(stack).out();
        String block = report.substring(report.indexOf("WILL IT BE RIGHT?"), report.indexOf("\n\nSizes in"));
        String inOneLine = block.replaceAll("\\s+", " ");
        fits("too long", report);
        // each as check says it, which has room for all
        String doubts = Ran.with(stack.getBytes(StandardCharsets.UTF_8), "check", "-")
                .out()
                .replaceAll("\\s+", " ");
        for (String row : doubts.split(" (?=NO |look |trust )")) {
            if (row.startsWith("NO ")) {
                assertThat(inOneLine).contains(row.strip());
            }
        }
        assertThat(doubts).contains("NO held", "NO fits", "NO wood", "NO seen", "NO must");
        assertThat(block).contains("(more below)");
    }

    @Test
    void what_is_wrong_stands_first() {
        Ran ran = Ran.report("""
                title: Two in one place
                wood: yellow-poplar
                space: { ceiling: 5, projection: 1/2 }
                pieces:
                  - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: 0 }
                  - { name: bed, profile: board 3/4 x 2, back: 1/2, bottom: 4 }
                """);
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).startsWith("""
                Two in one place: 6 high, 1-1/4 out, 1.15 lb a foot, yellow-poplar

                WILL IT BE RIGHT?  NO,""");
    }

    @Test
    void a_stack_in_millimeters_is_answered_in_millimeters() {
        Ran ran = Ran.report("""
                title: Metric
                units: mm
                wood: yellow-poplar
                pieces:
                  - { name: frieze, profile: board 19 x 140, back: wall, bottom: 0 }
                """);
        assertThat(ran.out())
                .contains("\nheight                  140\n", "\nprojection              19\n", "Sizes in millimeters;");
    }

    @Test
    void the_report_defers_to_code_label_and_license() {
        assertThat(Ran.of("report", Ran.stack("wainscot-cap.yaml").toString()).out())
                .endsWith("""

                        A bench check for trim, not engineering: where strength, fire or work overhead
                        is touched, local code, makers' labels and a licensed person decide.
                        """);
    }

    private static void fits(String which, String report) {
        List<String> lines = report.lines().toList();
        assertThat(lines)
                .as(which)
                .allSatisfy(line -> assertThat(columns(line)).as(line).isLessThanOrEqualTo(80));
        int verdict = lines.indexOf(lines.stream()
                .filter(line -> line.startsWith("WILL IT BE RIGHT?"))
                .findFirst()
                .orElseThrow());
        int end = lines.subList(verdict, lines.size()).indexOf("") + verdict;
        assertThat(end).as(which).isLessThanOrEqualTo(25);
        assertThat(lines.subList(verdict, end)).as(which).noneMatch(line -> line.endsWith("..."));
    }

    /** Counted otherwise than by the program: by script. */
    private static int columns(String line) {
        return line.codePoints()
                .map(letter -> switch (Character.UnicodeScript.of(letter)) {
                    case HAN, HIRAGANA, KATAKANA, HANGUL -> 2;
                    case INHERITED -> 0;
                    default -> letter > 0xFFFF ? 2 : 1;
                })
                .sum();
    }
}
