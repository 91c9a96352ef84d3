package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DrawCommandTest {
    private static final String STACK = Ran.demo("reading-room-cornice.yaml").toString();

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"a.svg, <?xml", "a.SVG, <?xml", "a.png, \u0089PNG", "a.pdf, %PDF-"})
    void a_picture_is_of_the_kind_that_its_file_says(String name, String start) throws IOException {
        assertThat(drawn(name)).startsWith(start);
    }

    @Test
    void the_kind_may_be_given_apart() throws IOException {
        assertThat(drawn("picture", "--to", "svg")).startsWith("<?xml").contains("Reading-room bookcase cornice");
    }

    @Test
    void an_ending_that_says_nothing_is_refused() {
        Path out = folder.resolve("a.foo");
        Ran ran = Ran.of("draw", STACK, "-o", out.toString());
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err())
                .startsWith("refusal  reading-room-cornice.yaml  The ending of " + out
                        + " names nothing that draw writes. Let it end in .svg, .png, .pdf or .dxf, or give --to.\n");
        assertThat(out).doesNotExist();
    }

    @Test
    void a_drawing_is_written_as_dxf_by_its_ending_or_by_name() throws IOException {
        assertThat(drawn("a.dxf"))
                .contains("POLYLINE", "TRIM", "Reading-room bookcase cornice")
                .endsWith("EOF\r\n");
        assertThat(drawn("a.out", "--to", "dxf")).isEqualTo(drawn("b.dxf"));
    }

    @Test
    void an_unknown_page_is_answered_with_the_nearest() {
        Ran ran = Ran.of(
                "draw", STACK, "--page", "lettre", "-o", folder.resolve("a.svg").toString());
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains("No page is called 'lettre'. Did you mean letter?");
    }

    @Test
    void a_refused_stack_leaves_the_old_picture() throws IOException {
        Path out = Files.writeString(folder.resolve("a.svg"), "old");
        Ran ran = Ran.with("title: Nothing\n".getBytes(StandardCharsets.UTF_8), "draw", "-", "-o", out.toString());
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).startsWith("refusal  stdin:1:1  The stack holds no pieces");
        assertThat(Ran.read(out)).isEqualTo("old");
    }

    @Test
    void a_plan_is_drawn_where_the_stack_holds_one() throws IOException {
        Path out = folder.resolve("plan.svg");
        String plan = "plan: [{ name: case, left: die, right: return, stretches: [{ name: front, length: 96 }] }]\n";
        Ran ran = Ran.with(
                (Ran.read(Path.of(STACK)) + plan).getBytes(StandardCharsets.UTF_8),
                "draw",
                "-",
                "--view",
                "plan",
                "-o",
                out.toString());
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
        assertThat(Ran.read(out)).contains("front 96").contains("right end: returned to the wall");
    }

    @Test
    void a_plan_that_is_not_there_is_asked_for() {
        Path out = folder.resolve("plan.svg");
        Ran ran = Ran.of("draw", STACK, "--view", "plan", "-o", out.toString());
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err())
                .contains("The stack holds no plan: there is no corner to draw. Add one, as 'plan: [{ left: return,");
        assertThat(out).doesNotExist();
    }

    @Test
    void sticks_without_stock_are_refused_and_the_stock_is_asked_for_once() {
        Path out = folder.resolve("sticks.svg");
        String plan = "plan: [{ name: case, left: die, right: return, stretches: [{ name: front, length: 96 }] }]\n";
        Ran ran = Ran.with(
                (Ran.read(Path.of(STACK)) + plan).getBytes(StandardCharsets.UTF_8),
                "draw",
                "-",
                "--view",
                "sticks",
                "-o",
                out.toString());
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err())
                .containsOnlyOnce("No stock is given")
                .contains("there are no sticks to draw. Add it, as 'stock: { sticks:");
        assertThat(out).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(strings = {"section", "elevation", "rays", "holds", "steps", "season", "plan", "sticks"})
    void every_view_obeys_the_page(String view) throws IOException {
        Path out = folder.resolve("a.pdf");
        String demo = Ran.demo("reading-room-case.yaml").toString();
        Ran ran = Ran.of("draw", demo, "--view", view, "--page", "letter", "-o", out.toString());
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
        try (PDDocument document = Loader.loadPDF(out.toFile())) {
            document.getPages()
                    .forEach(page -> assertThat(List.of(
                                    page.getMediaBox().getWidth(),
                                    page.getMediaBox().getHeight()))
                            .containsExactlyInAnyOrder(612f, 792f));
        }
    }

    @Test
    void a_format_of_one_picture_holds_the_pages_one_below_the_other() throws IOException {
        assertThat(drawn("a.svg", "--page", "letter")).contains("height=\"56in\"", "part 4 of 4", "part 1 joins here");
    }

    @Test
    void a_picture_goes_to_standard_output_where_its_kind_is_given() {
        Ran ran = Ran.of("draw", STACK, "--to", "svg", "-o", "-");
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
        assertThat(ran.out()).startsWith("<?xml").contains("Reading-room bookcase cornice");
        assertThat(Ran.of("draw", STACK, "-o", "-").out()).isEqualTo(ran.out());
        assertThat(Ran.of("draw", STACK, "-o", "picture").err()).contains("or give --to");
    }

    private String drawn(String name, String... options) throws IOException {
        Path out = folder.resolve(name);
        String[] words = new String[options.length + 4];
        System.arraycopy(new String[] {"draw", STACK, "-o", out.toString()}, 0, words, 0, 4);
        System.arraycopy(options, 0, words, 4, options.length);
        Ran ran = Ran.of(words);
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
        return Files.readString(out, StandardCharsets.ISO_8859_1);
    }

    /** What a cure gives to be pasted means what it means in inches, and is round. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "mm | walls | ceiling: [[0, 305 mm], [1525 mm, 300 mm]]",
                "in | walls | ceiling: [[0, 12], [60, 11-3/4]]",
                "mm | clearance | firebox: { top: -100 mm, left: 305 mm, right: 1220 mm }",
                "in | clearance | firebox: { top: -4, left: 12, right: 48 }"
            })
    void an_example_in_a_cure_is_in_the_unit_of_the_stack(String unit, String view, String example) {
        String stack =
                "units: " + unit + "\npieces: [{ name: a, profile: board 20 mm x 90 mm, back: wall, bottom: 0 }]";
        Ran ran = Ran.with(stack.getBytes(UTF_8), "draw", "-", "--view", view, "-o", "-");
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains(example);
    }
}
