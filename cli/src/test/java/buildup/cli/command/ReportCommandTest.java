package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReportCommandTest {
    private static final String SOUND = """
            title: A frieze
            wood: yellow-poplar
            pieces:
              - { name: frieze, profile: board 3/4 x 5, back: wall, bottom: 0 }
            """;

    private static final String LAPPED = SOUND + "  - { name: bed, profile: board 3/4 x 2, back: 0.5, bottom: 4 }\n";

    @TempDir
    private Path folder;

    private Path stack;

    @BeforeEach
    void set_up_a_stack() throws IOException {
        stack = Files.writeString(folder.resolve("frieze.yaml"), SOUND);
    }

    @Test
    void a_sound_stack_is_reported_with_notes_apart() {
        Ran ran = Ran.of("report", stack.toString());
        assertThat(ran.code()).isEqualTo(ExitCode.CLEAN);
        assertThat(ran.out()).startsWith("A frieze: ").contains("\nWILL IT BE RIGHT?  ");
        assertThat(ran.err())
                .isEqualTo("note  frieze.yaml:4:5  frieze: lies flat on the wall: it counts as fixed there until"
                        + " fastenings are given. Give its fastenings.\n");
    }

    @Test
    void a_problem_is_reported_and_told_by_the_exit_code() {
        Ran ran = Ran.report(LAPPED);
        assertThat(ran.code()).isEqualTo(ExitCode.PROBLEM);
        assertThat(ran.out()).contains("OVERLAPS");
        assertThat(ran.err()).contains("problem  stdin:5:5  bed: cuts 1/4 into 'frieze' (0.25 sq in).");
    }

    /** Who writes centimeters reads millimeters, as on the tape: common practice, no source. */
    @Test
    void a_document_in_centimeters_is_told_in_millimeters() {
        assertThat(Ran.report(SOUND.replace("title", "units: cm\ntitle").replace("3/4 x 5", "2 x 12.5"))
                        .out())
                .contains("Sizes in millimeters", "125 mm high, 20 mm out");
    }

    /** Two boards of 3 sq in, at 29.35 lb a cubic foot 1.22 lb a foot together: of 102 lb that is 83.4 ft. */
    @Test
    void how_long_a_bench_unit_two_people_lift_is_headed_as_a_length() {
        Ran ran = Ran.report("""
                wood: yellow-poplar
                pieces:
                  - { name: a, profile: board 3/4 x 4, back: wall, bottom: 0 }
                  - { name: b, profile: board 3/4 x 4, back: a.face, bottom: 0 }
                bench: { pair: [a, b] }
                """);
        assertThat(ran.out()
                        .lines()
                        .dropWhile(line -> !line.startsWith("BENCH UNITS"))
                        .limit(8))
                .anySatisfy(line -> assertThat(line).endsWith("that two"))
                .anySatisfy(line -> assertThat(line).startsWith("pair").containsPattern("1\\.22 .*1000"));
    }

    @Test
    void nothing_is_figured_of_a_refused_stack() {
        Ran ran = Ran.report("title: Nothing\nwood: yellow-poplar\npieces: []\n");
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .isEqualTo("refusal  stdin:3:9  The stack holds no pieces: there is nothing to measure. List them under"
                        + " 'pieces:'.\n");
    }

    @Test
    void of_pieces_under_a_mistyped_key_only_the_key_is_said() {
        Ran ran = Ran.report("wood: yellow-poplar\npeices:\n  - { name: a, profile: board 1 x 4 }\n");
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).isEqualTo("refusal  stdin:2:1  No key is called 'peices' here. Did you mean pieces?\n");
    }

    @Test
    void what_names_a_piece_under_a_mistyped_key_is_not_said_to_name_nothing() {
        String rest = "fastenings:\n  - { name: n, piece: a, use: 15 ga x 2-1/2, at: { up: a.top - 1 } }\n";
        Ran list = Ran.report("wood: yellow-poplar\npeices:\n  - { name: a, profile: board 1 x 4 }\n" + rest);
        assertThat(list.err()).isEqualTo("refusal  stdin:2:1  No key is called 'peices' here. Did you mean pieces?\n");
        Ran name = Ran.report(
                "wood: yellow-poplar\npieces:\n  - { nmae: a, profile: board 1 x 4, back: wall, top: 0 }\n" + rest);
        assertThat(name.err()).contains("Did you mean name?").doesNotContain("'a'");
    }

    @Test
    void framing_alone_is_no_stack() {
        Ran ran = Ran.report("""
                wood: yellow-poplar
                pieces:
                  - { name: case, kind: framing, section: [out 14, up 90], face: wall, top: 6 }
                """);
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err())
                .isEqualTo("refusal  stdin  The stack holds framing alone: there is nothing to measure. Add pieces of"
                        + " kind trim or nailer.\n");
    }

    @Test
    void all_that_is_wrong_is_said_in_one_run_and_nothing_that_only_follows_from_it() {
        Ran ran = Ran.report("""
                title: Wrong
                wood: yellow-poplar
                pices: 3
                pieces:
                  - { name: a, profile: bord 3/4 x 5, back: wall, bottom: 0 }
                  - { name: b, profile: board 3/4 x 5, back: wall, bottom: a.top }
                  - { name: c, profile: board 3/4 x 5, back: wall, bottom: d.top }
                  - { name: d, profile: board 3/4 x 5, back: wall, bottom: c.top }
                """);
        assertThat(ran.err().lines()).hasSize(3);
        assertThat(ran.err())
                .contains("No profile is called 'bord'. Did you mean board?")
                .contains("c is placed on d, d is placed on c.")
                .contains("No key is called 'pices' here. Did you mean pieces?");
    }

    @Test
    void a_stack_that_is_not_there_is_answered_with_the_nearest() {
        assertRefused(
                Ran.of("report", folder.resolve("freize.yaml").toString()),
                "freize.yaml  There is no file " + folder.resolve("freize.yaml") + ". Did you mean frieze.yaml?");
    }

    @Test
    void a_folder_that_is_not_there_has_no_nearest() {
        Path absent = folder.resolve("none/frieze.yaml");
        assertRefused(
                Ran.of("report", absent.toString()),
                "frieze.yaml  There is no file " + absent + ". Is it the right folder?");
    }

    @Test
    void a_folder_is_not_a_stack() {
        String name = folder.getFileName().toString();
        assertRefused(
                Ran.of("report", folder.toString()),
                name + "  " + folder + " is a folder, not a file. Known here: frieze.yaml.");
    }

    @Test
    void what_cannot_be_the_name_of_a_file_is_said_to_be_none() {
        assertRefused(Ran.of("report", "a\0b"), "a b  'a b' is not the name of a file. Name a stack document.");
    }

    @Test
    void a_file_that_may_not_be_read_is_said_to_be_so() throws IOException {
        assumeThat(stack.toFile().setReadable(false)).isTrue();
        assumeThat(Files.isReadable(stack)).isFalse();
        assertRefused(
                Ran.of("report", stack.toString()),
                "frieze.yaml  " + stack + " cannot be read. Look at its permissions.");
    }

    @Test
    void a_refusal_is_an_object_when_objects_are_asked_for() {
        Ran ran = Ran.of("report", folder.resolve("x.yaml").toString(), "--format", "json");
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .startsWith("{\n  \"title\": \"x.yaml\",\n  \"units\": \"in\",\n  \"notices\": [\n")
                .contains("\"no-stack\"");
    }

    @Test
    void a_catalog_beside_the_stack_is_found_by_its_name() throws IOException {
        Files.writeString(folder.resolve("own.yaml"), "woods:\n  - { name: bog-oak, density: 60 }\n");
        Files.writeString(stack, "catalog: own.yaml\n" + SOUND.replace("yellow-poplar", "bog-oak"));
        Ran ran = Ran.of("report", stack.toString());
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
        assertThat(ran.out()).containsPattern("wood +bog-oak\\n");
    }

    @Test
    void catalogs_on_the_command_line_are_added_one_after_another() throws IOException {
        Path oak = Files.writeString(folder.resolve("oak.yaml"), "woods:\n  - { name: bog-oak, density: 60 }\n");
        Path ash = Files.writeString(folder.resolve("ash.yaml"), "woods:\n  - { name: bog-ash, density: 50 }\n");
        Files.writeString(stack, SOUND.replace("yellow-poplar", "bog-oak"));
        Ran ran = Ran.of("report", stack.toString(), "--catalog", oak.toString(), "--catalog", ash.toString());
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"../own.yaml", "/etc/passwd", "lists/../../own.yaml", "~/own.yaml", "C:/own.yaml", "..", ""})
    void a_catalog_elsewhere_is_not_opened(String name) throws IOException {
        Files.writeString(stack, "catalog: ['" + name + "']\n" + SOUND);
        assertRefused(
                Ran.of("report", stack.toString()),
                "frieze.yaml:1:11  '" + name + "' is not the name of a file beside the stack. Put it beside the stack"
                        + " and give its name alone, or use --catalog.");
    }

    @Test
    void a_catalog_that_is_not_there_is_refused() {
        Ran ran = Ran.of(
                "report",
                stack.toString(),
                "--catalog",
                folder.resolve("own.yaml").toString());
        assertRefused(
                ran, "frieze.yaml  There is no file " + folder.resolve("own.yaml") + ". Known here: frieze.yaml.");
    }

    @Test
    void the_report_goes_to_the_file_that_was_asked_for() {
        Path out = folder.resolve("report.txt");
        Ran ran = Ran.of("report", stack.toString(), "-o", out.toString());
        assertThat(ran.code()).isEqualTo(ExitCode.CLEAN);
        assertThat(ran.out()).isEmpty();
        Ran screen = Ran.of("report", stack.toString());
        assertThat(Ran.read(out)).startsWith(screen.out());
        assertThat(Ran.read(out).substring(screen.out().length()).replaceAll("\\s+", " "))
                .as("what the screen shows beside it")
                .isEqualTo(" NOTICES " + screen.err().replaceAll("\\s+", " "));
        assertThat(files()).containsExactly("frieze.yaml", "report.txt");
    }

    @Test
    void an_old_file_is_replaced_by_a_good_run_and_kept_by_a_refused_one() throws IOException {
        Path out = Files.writeString(folder.resolve("report.json"), "old");
        Path refused = Files.writeString(folder.resolve("refused.yaml"), "title: Nothing\n");
        Ran ran = Ran.of("report", refused.toString(), "--format", "json", "-o", out.toString());
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.out()).contains("\"empty-stack\"");
        assertThat(Ran.read(out)).isEqualTo("old");
        assertThat(Ran.of("report", stack.toString(), "-o", out.toString()).code())
                .isEqualTo(ExitCode.CLEAN);
        assertThat(Ran.read(out)).contains("\"verdict\"");
        assertThat(files()).containsExactly("frieze.yaml", "refused.yaml", "report.json");
    }

    @Test
    void an_output_folder_that_is_absent_is_said_to_be_so() {
        Path absent = folder.resolve("none");
        assertNotWritten(
                Ran.of("report", stack.toString(), "-o", absent.resolve("r.txt").toString()),
                "frieze.yaml  There is no folder " + absent + ". Make it first.");
    }

    @Test
    void an_output_that_cannot_be_delivered_is_an_object_when_objects_are_asked_for() {
        Path absent = folder.resolve("none/r.json");
        Ran ran = Ran.of("report", stack.toString(), "--format", "json", "-o", absent.toString());
        assertThat(ran.code()).isEqualTo(ExitCode.NOT_WRITTEN);
        assertThat(ran.out())
                .contains("\"title\": \"A frieze\"", "output-folder-absent")
                .doesNotContain("totals");
    }

    @Test
    void a_folder_is_no_place_to_write() {
        assertNotWritten(
                Ran.of("report", stack.toString(), "-o", folder.toString()),
                "frieze.yaml  " + folder + " is a folder. Name a file in it.");
    }

    @Test
    void the_stack_is_not_written_over() {
        assertNotWritten(
                Ran.of("report", stack.toString(), "-o", stack.toString()),
                "frieze.yaml  " + stack + " is what the answer comes from. Name another file.");
        assertThat(Ran.read(stack)).isEqualTo(SOUND);
    }

    @Test
    void a_file_that_may_not_be_written_stays_as_it_was() throws IOException {
        Path out = Files.writeString(folder.resolve("report.txt"), "old");
        assumeThat(out.toFile().setWritable(false)).isTrue();
        assumeThat(Files.isWritable(out)).isFalse();
        assertNotWritten(
                Ran.of("report", stack.toString(), "-o", out.toString()),
                "frieze.yaml  " + out + " cannot be written. Name a file where you may write.");
        assertThat(Ran.read(out)).isEqualTo("old");
    }

    @Test
    void a_link_keeps_pointing_where_it_points() throws IOException {
        Path real = Files.writeString(folder.resolve("real.txt"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.txt"), real);
        assertThat(Ran.of("report", stack.toString(), "-o", link.toString()).code())
                .isEqualTo(ExitCode.CLEAN);
        assertThat(link).isSymbolicLink();
        assertThat(Ran.read(real)).contains("WILL IT BE RIGHT?");
    }

    @Test
    void a_device_is_written_to_and_not_over() {
        Path device = Path.of("/dev/null");
        assumeThat(Files.exists(device)).isTrue();
        assertThat(Ran.of("report", stack.toString(), "-o", device.toString()).code())
                .isEqualTo(ExitCode.CLEAN);
        assertThat(device).exists();
        assertThat(Files.isRegularFile(device)).isFalse();
    }

    private static void assertRefused(Ran ran, String line) {
        assertSaid(ExitCode.REFUSED, ran, line);
    }

    private static void assertNotWritten(Ran ran, String line) {
        assertSaid(ExitCode.NOT_WRITTEN, ran, line);
    }

    /** Refusals are the lines of their own, without notes that came before them. */
    private static void assertSaid(int code, Ran ran, String line) {
        assertThat(ran.code()).isEqualTo(code);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().lines().filter(said -> !said.startsWith("note"))).containsExactly("refusal  " + line);
    }

    private List<String> files() {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(Path::getFileName).map(Path::toString).sorted().toList();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Of thirty strips one on another each would tell all that are below it. */
    @Test
    void a_long_way_of_a_load_is_told_by_that_of_the_piece_that_it_has_come_to() {
        StringBuilder stack =
                new StringBuilder("pieces:\n  - { name: s0, profile: board 3/4 x 2, back: wall, bottom: 0 }\n");
        for (int i = 1; i < 30; i++) {
            stack.append(
                    "  - { name: s%d, profile: board 3/4 x 2, back: wall, bottom: s%d.top }%n".formatted(i, i - 1));
        }
        String out = Ran.report(stack.toString()).out();
        String path = out.substring(out.indexOf("LOAD PATH"));
        assertThat(path)
                .containsPattern("s3 +s2, s1, s0, wall\n")
                .containsPattern("s29 +s28, s27, and on as for s27\n");
    }
}
