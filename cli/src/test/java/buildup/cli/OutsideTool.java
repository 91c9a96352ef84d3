package buildup.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A program of someone else's that reads our files. A test that needs one is skipped where it is missing, and fails
 * there when {@code BUILDUP_REQUIRE_TOOLS} is 1.
 */
public final class OutsideTool {
    private static final long PATIENCE_SECONDS = 120;

    private OutsideTool() {}

    /** What a run left behind; output and errors together. */
    public record Run(int code, String output) {}

    /** Runs it in a folder. */
    public static Run run(Path folder, String name, Object... words) throws IOException, InterruptedException {
        require(name);
        List<String> command = new ArrayList<>(List.of(name));
        Stream.of(words).map(Object::toString).forEach(command::add);
        Path said = Files.createTempFile(folder, name, ".txt");
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS))
                .as(name + " ends")
                .isTrue();
        return new Run(process.exitValue(), Files.readString(said, StandardCharsets.UTF_8));
    }

    /** Skips or fails the test where the program is missing. */
    public static void require(String name) {
        require(
                name,
                Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                        .anyMatch(folder -> new File(folder, name).canExecute()));
    }

    /** The same for what is no program on the path. */
    public static void require(String name, boolean there) {
        if ("1".equals(System.getenv("BUILDUP_REQUIRE_TOOLS"))) {
            assertThat(there).as(name + " is installed").isTrue();
        }
        assumeTrue(there, name + " is not installed");
    }
}
