package buildup.cli.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What was once found stays mended: each question that went wrong lies in a file, and is asked again. Those whose answer
 * takes seconds lie in a folder of their own.
 */
class FoundTest {
    private static final Path FOUND = Path.of("src/test/resources/found");

    @TempDir
    private Path folder;

    static List<Path> found() throws IOException {
        return files(FOUND);
    }

    static List<Path> foundSlow() throws IOException {
        return files(FOUND.resolve("slow"));
    }

    private static List<Path> files(Path from) throws IOException {
        try (Stream<Path> files = Files.list(from)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("found")
    void what_was_found_is_answered_in_words(Path file) {
        isAnswered(file);
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("foundSlow")
    void so_is_what_takes_long(Path file) {
        isAnswered(file);
    }

    private void isAnswered(Path file) {
        Asked asked = Asked.read(Ran.read(file));
        Runner runner = new Runner(folder);
        Outcome outcome = runner.run(asked);
        assertThat(Oracle.fault(asked, outcome)).as(outcome.err()).isEmpty();
        assertThat(Oracle.difference(asked, outcome, runner.run(asked))).isEmpty();
        assertThat(Arrays.stream(outcome.err().split("\n"))).hasSizeLessThan(250);
    }
}
