package buildup.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        return started(folder, name, List.of(words));
    }

    private static Run started(Path folder, String name, List<Object> words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(name));
        words.stream().map(Object::toString).forEach(command::add);
        Path said = Files.createTempFile(folder, "said", ".txt");
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

    /**
     * Runs a Python script of the tests' {@code oracle} folder with an interpreter that has the module: of all on the path,
     * for a user's own may hide the system's.
     */
    public static Run python(Path folder, String module, String script, Object... words)
            throws IOException, InterruptedException {
        Optional<String> found = interpreter(module);
        require("python3 with " + module, found.isPresent());
        Path copy = folder.resolve(script);
        try (InputStream in = OutsideTool.class.getResourceAsStream("/oracle/" + script)) {
            assertThat(in).as(script).isNotNull();
            Files.write(copy, in.readAllBytes());
        }
        List<Object> all = new ArrayList<>(List.of(copy));
        all.addAll(List.of(words));
        return started(folder, found.orElseThrow(), all);
    }

    private static Optional<String> interpreter(String module) throws IOException, InterruptedException {
        for (String folder : path()) {
            File python = new File(folder, "python3");
            if (python.canExecute()
                    && new ProcessBuilder(python.toString(), "-c", "import " + module)
                                    .redirectErrorStream(true)
                                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                                    .start()
                                    .waitFor()
                            == 0) {
                return Optional.of(python.toString());
            }
        }
        return Optional.empty();
    }

    private static List<String> path() {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .filter(entry -> !entry.isEmpty())
                .toList();
    }

    /** Skips or fails the test where the program is missing. */
    public static void require(String name) {
        require(name, path().stream().anyMatch(folder -> new File(folder, name).canExecute()));
    }

    /** The same for what is no program on the path. */
    public static void require(String name, boolean there) {
        if ("1".equals(System.getenv("BUILDUP_REQUIRE_TOOLS"))) {
            assertThat(there).as(name + " is installed").isTrue();
        }
        assumeTrue(there, name + " is not installed");
    }
}
