package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What a machine may refuse: to be written to, to be read from, memory. */
@Timeout(120)
@Tag("long")
class InjectedFaultsTest {
    private static final String STACK = Ran.demo("reading-room-cornice.yaml").toString();
    private static final String PLANNED = Ran.demo("reading-room-case.yaml").toString();
    private static final String ORDER = Ran.demo("reading-room-order.yaml").toString();
    private static final String TRACING =
            Ran.demo("reading-room-shelf-edge.csv").toString();

    @TempDir
    private Path folder;

    /** Every command with a file to write; {@code OUT} stands for it. */
    private static List<List<String>> writing() {
        return List.of(
                List.of("report", STACK, "-o", "OUT"),
                List.of("draw", STACK, "--to", "svg", "-o", "OUT"),
                List.of("cuts", PLANNED, "--steps", "100", "-o", "OUT"),
                List.of("profile", "1x4", "-o", "OUT"),
                List.of("quote", ORDER, "-o", "OUT"),
                List.of("trace", TRACING, "--units", "mm", "-o", "OUT"),
                List.of("new", "-o", "OUT"),
                List.of("schema", "report", "-o", "OUT"),
                List.of("fmt", STACK, "-o", "OUT"),
                List.of("set", STACK, "title", "x", "-o", "OUT"));
    }

    /** A folder that lets nobody make a file, the owner of the machine neither: that of the kernel's own objects. */
    @Test
    void a_folder_that_nobody_may_write_in_is_told() {
        Path locked = Path.of("/sys");
        assumeThat(locked).isDirectory();
        for (List<String> words : writing()) {
            Ran ran = run(words, locked.resolve("buildup-test"));
            assertThat(ran.code()).as(words + ran.err()).isEqualTo(ExitCode.NOT_WRITTEN);
            assertThat(ran.err())
                    .contains("/sys/buildup-test cannot be written")
                    .doesNotContain("went wrong");
        }
    }

    @Test
    void a_folder_or_the_inside_of_a_file_is_no_place_for_an_answer() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "x");
        for (List<String> words : writing()) {
            Ran into = run(words, folder);
            assertThat(into.code()).as(words + into.err()).isEqualTo(ExitCode.NOT_WRITTEN);
            Ran under = run(words, file.resolve("x"));
            assertThat(under.code()).as(words + under.err()).isEqualTo(ExitCode.NOT_WRITTEN);
            assertThat(into.err() + under.err()).doesNotContain("went wrong");
        }
        assertThat(Ran.read(file)).isEqualTo("x");
    }

    /** Sheets and the answers of a search go into a folder, which may be no folder, or one that nobody may make. */
    @Test
    void so_is_a_folder_of_pictures_or_of_answers() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "x");
        for (List<String> words : List.of(
                List.of("sheets", STACK, "--only", "pieces", "-o"),
                List.of("search", STACK, "--free", "sizes.lap=between 1/4 and 1 by 1/4, now 1/2", "-o"))) {
            for (String out : List.of(file.resolve("x") + "/", "/sys/buildup-test/")) {
                Ran ran = Ran.of(Stream.concat(words.stream(), Stream.of(out)).toArray(String[]::new));
                assertThat(ran.code()).as(words + ran.err()).isEqualTo(ExitCode.NOT_WRITTEN);
                assertThat(ran.err()).contains("refusal").doesNotContain("went wrong");
            }
        }
        assertThat(Ran.read(file)).isEqualTo("x");
    }

    /** A file that is there and regular, and gives an error to whoever reads it. */
    @Test
    void a_file_that_breaks_off_while_it_is_read_is_told() {
        Path broken = Path.of("/proc/self/mem");
        assumeThat(broken).isRegularFile();
        String name = broken.toString();
        for (List<String> words : List.of(
                List.of("report", name),
                List.of("report", STACK, name),
                List.of("report", STACK, "--catalog", name),
                List.of("check", name),
                List.of("draw", name, "-o", folder.resolve("x.svg").toString()),
                List.of("cuts", name),
                List.of("quote", name),
                List.of("trace", name),
                List.of("fmt", name),
                List.of("set", name, "title", "x"))) {
            Ran ran = Ran.of(words.toArray(String[]::new));
            assertThat(ran.code()).as(words + ran.err()).isEqualTo(ExitCode.REFUSED);
            assertThat(ran.err()).contains("cannot be read").doesNotContain("went wrong");
        }
    }

    private static Ran run(List<String> words, Path out) {
        return Ran.of(words.stream()
                .map(word -> word.equals("OUT") ? out.toString() : word)
                .toArray(String[]::new));
    }

    /** All commands on the demos in one process that has 256 MB. */
    @Test
    void a_machine_with_little_memory_is_enough_for_every_demo() throws Exception {
        Path said = folder.resolve("said");
        List<String> words = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        words.addAll(List.of("-Xmx256m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Djava.awt.headless=true"));
        words.addAll(List.of("-Dslf4j.internal.verbosity=ERROR", "-cp", System.getProperty("java.class.path")));
        words.addAll(List.of(Little.class.getName(), folder.toString()));
        Process process = new ProcessBuilder(words)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(process.waitFor()).as(() -> Ran.read(said)).isZero();
        assertThat(Ran.read(said).lines()).hasSize(Little.all(folder).size()).allMatch(line -> line.endsWith(" ok"));
    }

    /** Runs all of it and says of each command whether it was answered. */
    static final class Little {
        private Little() {}

        public static void main(String[] words) throws IOException {
            for (List<String> all : all(Path.of(words[0]))) {
                Ran ran = Ran.of(all.toArray(String[]::new));
                boolean answered = ran.code() <= ExitCode.PROBLEM;
                System.out.println(String.join(" ", all) + (answered ? " ok" : " " + ran.code() + " " + ran.err()));
            }
        }

        static List<List<String>> all(Path folder) throws IOException {
            List<List<String>> all = new ArrayList<>();
            for (String format : List.of("text", "json", "csv", "html")) {
                all.add(List.of("report", PLANNED, "--format", format));
            }
            for (String view : List.of("section", "elevation", "rays", "holds")) {
                all.add(List.of(
                        "draw",
                        STACK,
                        "--view",
                        view,
                        "-o",
                        folder.resolve("x.png").toString()));
            }
            for (String to : List.of("svg", "pdf", "dxf")) {
                all.add(List.of("draw", STACK, "-o", folder.resolve("x." + to).toString()));
            }
            for (String view : List.of("plan", "sticks")) {
                all.add(List.of(
                        "draw",
                        PLANNED,
                        "--view",
                        view,
                        "-o",
                        folder.resolve("x.png").toString()));
            }
            Path copy = Files.copy(Path.of(STACK), folder.resolve("copy-" + System.nanoTime() + ".yaml"));
            all.addAll(Arrays.asList(
                    List.of("report", STACK, PLANNED),
                    List.of("check", STACK, PLANNED),
                    List.of("cuts", PLANNED),
                    List.of("profile"),
                    List.of("profile", "plain-crown 3-1/4", "--nearest"),
                    List.of(
                            "quote",
                            ORDER,
                            "--to",
                            "pdf",
                            "-o",
                            folder.resolve("q.pdf").toString()),
                    List.of("trace", TRACING, "--units", "mm"),
                    List.of("schema", "report"),
                    List.of("fmt", copy.toString()),
                    List.of("set", copy.toString(), "title", "x"),
                    List.of("new")));
            return all;
        }
    }
}
