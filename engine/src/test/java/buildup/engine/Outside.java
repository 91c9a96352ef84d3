package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Programs of others that answer what we answer. A test that needs one is skipped where it is missing, and fails there
 * when {@code BUILDUP_REQUIRE_TOOLS} is 1.
 */
public final class Outside {
    private Outside() {}

    /**
     * An interpreter that has a module, of all on the path and not the first alone: a user's own may hide the system's.
     *
     * @param debian the package that brings the module
     */
    public static Path python(String module, String debian) throws IOException, InterruptedException {
        Optional<Path> found = Optional.empty();
        for (Path folder : path()) {
            for (String name : List.of("python3", "python3.11")) {
                Path python = folder.resolve(name);
                if (found.isEmpty() && Files.isExecutable(python) && ends(python, "-c", "import " + module)) {
                    found = Optional.of(python);
                }
            }
        }
        require("python3 with " + module + " (Debian: " + debian + ")", found.isPresent());
        return found.orElseThrow();
    }

    /** A program on the path. */
    public static Path program(String name) {
        Optional<Path> found = path().stream()
                .map(folder -> folder.resolve(name))
                .filter(Files::isExecutable)
                .findFirst();
        require(name, found.isPresent());
        return found.orElseThrow();
    }

    private static List<Path> path() {
        String entries = Optional.ofNullable(System.getenv("PATH")).orElse("");
        return Arrays.stream(entries.split(File.pathSeparator))
                .filter(entry -> !entry.isEmpty())
                .map(Path::of)
                .toList();
    }

    /** Skips or fails the test where something is missing. */
    public static void require(String what, boolean there) {
        if ("1".equals(System.getenv("BUILDUP_REQUIRE_TOOLS"))) {
            assertThat(there).as(what + " is installed").isTrue();
        }
        assumeTrue(there, what + " is not installed");
    }

    /** Whether a program ends well. */
    public static boolean ends(Object... words) throws IOException, InterruptedException {
        return new ProcessBuilder(Stream.of(words).map(Object::toString).toList())
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start()
                        .waitFor()
                == 0;
    }

    /** A file of the tests' {@code oracle} folder, copied to where others can read it. */
    public static Path oracle(String name, Path folder) throws IOException {
        Path copy = folder.resolve(name);
        try (InputStream in = Outside.class.getResourceAsStream("/oracle/" + name)) {
            assertThat(in).as(name).isNotNull();
            Files.write(copy, in.readAllBytes());
        }
        return copy;
    }
}
