package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Main;
import buildup.cli.Ran;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same stack gives the same bytes, whatever the machine thinks of commas, clocks and letters. */
@Tag("long")
class SameBytesTest {
    private static final String STACK = """
            title: Bücherschrank – İstanbul 飾り縁
            wood: yellow-poplar
            space: { ceiling: 12, wall: { solid: no } }
            pieces:
              - { name: friesIi, profile: board 3/4 x 5-1/2, back: 0, bottom: 0 }
              - { name: 縁, profile: plain-crown 3-1/4, back: friesIi.face, bottom: friesIi.top - 1/2 }
            """;

    @TempDir
    private Path folder;

    @Test
    void another_language_clock_charset_and_folder_change_nothing() throws Exception {
        for (String format : List.of("text", "json", "html")) {
            Path first = Files.createDirectories(folder.resolve("first"));
            Path other = Files.createDirectories(folder.resolve("一 other/deeper"));
            byte[] usual = run(first, format, "-Duser.language=en", "-Duser.timezone=UTC", "-Dfile.encoding=UTF-8");
            byte[] odd = run(
                    other,
                    format,
                    "-Duser.language=ar",
                    "-Duser.country=EG",
                    "-Duser.extensions=u-nu-arab",
                    "-Duser.timezone=Asia/Kathmandu",
                    "-Dfile.encoding=US-ASCII",
                    "-Dline.separator=\r\n");
            byte[] turkish = run(other, format, "-Duser.language=tr", "-Duser.country=TR", "-Dfile.encoding=UTF-16");
            assertThat(usual).isNotEmpty().isEqualTo(odd).isEqualTo(turkish);
            assertThat(Ran.report(STACK.replace("\r", ""), "--format", format).out())
                    .contains("飾り縁");
        }
    }

    /** Standard output and error of a process of its own that starts in the folder. */
    private byte[] run(Path where, String format, String... settings) throws IOException, InterruptedException {
        Files.writeString(where.resolve("stack.yaml"), STACK);
        List<String> words = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        words.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
        // a library of the tests logs, and nobody listens; it is not in the program's own jar
        words.add("-Dslf4j.internal.verbosity=ERROR");
        words.addAll(List.of(settings));
        words.addAll(List.of("-cp", classPath(), Main.class.getName(), "report", "stack.yaml", "--format", format));
        Path said = where.resolve("said");
        Process process = new ProcessBuilder(words)
                .directory(where.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(process.waitFor()).as(() -> Ran.read(said)).isBetween(0, 1);
        return Files.readAllBytes(said);
    }

    private static String classPath() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(part -> Path.of(part).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }
}
