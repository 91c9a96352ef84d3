package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.Streams;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever a command answers, an answer that does not arrive whole is told, and the run ends with its own code. */
class UndeliveredTest {
    private static final String WHY = "No space left on device";
    private static final String LAP = "sizes.lap=between 1/4 and 1-1/4 by 1/4, now 1/2";

    @TempDir
    private Path folder;

    static List<List<String>> commands() {
        String stack = Ran.demo("reading-room-cornice.yaml").toString();
        String planned = Ran.demo("reading-room-case.yaml").toString();
        String order = Ran.demo("reading-room-order.yaml").toString();
        String tracing = Ran.demo("reading-room-shelf-edge.csv").toString();
        return List.of(
                List.of("--help"),
                List.of("--version"),
                List.of("report", "--help"),
                List.of("report", stack),
                List.of("report", stack, "--format", "json"),
                List.of("report", stack, "--format", "html"),
                List.of("report", stack, stack),
                List.of("report", "no-such.yaml", "--format", "json"),
                List.of("check", stack),
                List.of("check", stack, "--format", "json"),
                List.of("draw", stack, "-o", "-"),
                List.of("draw", stack, "--to", "png", "-o", "-"),
                List.of("sheets", stack, "--only", "pieces", "-o", "-"),
                List.of("cuts", planned, "--steps", "1000"),
                List.of("cuts", planned, "--steps", "1000", "--format", "csv"),
                List.of("search", stack, "--free", LAP, "--tries", "20"),
                List.of("search", stack, "--free", LAP, "--tries", "20", "--format", "json"),
                List.of("profile"),
                List.of("profile", "plain-crown 3-1/4", "--format", "svg"),
                List.of("quote", order),
                List.of("quote", order, "--format", "pdf"),
                List.of("trace", tracing, "--units", "in"),
                List.of("new"),
                List.of("schema", "report"),
                List.of("fmt", "-"),
                List.of("set", "-", "title", "x"),
                List.of("watch", stack));
    }

    @Test
    void every_command_there_is_is_asked() {
        assertThat(commands())
                .extracting(words -> words.get(0))
                .containsAll(CommandTree.commands().keySet());
    }

    @ParameterizedTest
    @MethodSource("commands")
    @Tag("long")
    void a_disk_that_is_full_at_the_first_a_middle_or_the_last_byte_is_told(List<String> words) throws IOException {
        byte[] input = Files.readAllBytes(Ran.demo("reading-room-cornice.yaml"));
        boolean endless = words.get(0).equals("watch");
        int whole = endless ? 0 : room(Integer.MAX_VALUE, input, words).taken();
        for (int room : endless ? new int[] {0} : new int[] {0, whole / 2, whole - 1}) {
            Full full = room(room, input, words);
            assertThat(full.code()).as(words + " with room for " + room).isEqualTo(ExitCode.NOT_WRITTEN);
            assertThat(full.said())
                    .endsWith("buildup: the answer cannot be written to standard output: " + WHY + "\n")
                    .doesNotContain("went wrong inside");
        }
    }

    @Test
    void a_device_without_room_is_told_as_a_file_is() {
        Path full = Path.of("/dev/full");
        assumeThat(full).exists();
        Ran ran = Ran.of("report", Ran.demo("reading-room-cornice.yaml").toString(), "-o", "/dev/full");
        assertThat(ran.code()).isEqualTo(ExitCode.NOT_WRITTEN);
        assertThat(ran.err()).contains("refusal").contains("/dev/full cannot be written: ");
    }

    @Test
    void every_command_with_a_file_to_write_ends_with_the_same_code() {
        String nowhere = folder.resolve("none/x").toString();
        String stack = Ran.demo("reading-room-cornice.yaml").toString();
        List<List<String>> all = List.of(
                List.of("report", stack),
                List.of("report", stack, stack),
                List.of("report", stack, "--format", "json"),
                List.of("draw", stack, "--to", "pdf"),
                List.of("sheets", stack, "--only", "pieces"),
                List.of("cuts", Ran.demo("reading-room-case.yaml").toString(), "--steps", "1000"),
                List.of("profile", "1x4"),
                List.of("quote", Ran.demo("reading-room-order.yaml").toString()),
                List.of("trace", Ran.demo("reading-room-shelf-edge.csv").toString(), "--units", "in"),
                List.of("new"),
                List.of("schema", "report"),
                List.of("fmt", stack),
                List.of("set", stack, "title", "x"));
        for (List<String> words : all) {
            String[] typed = Stream.concat(
                            words.stream(), Stream.of("-o", nowhere + (words.contains("sheets") ? ".pdf" : "")))
                    .toArray(String[]::new);
            assertThat(Ran.of(typed).code()).as(words.toString()).isEqualTo(ExitCode.NOT_WRITTEN);
        }
    }

    /** What a run said into a place with room for so many bytes. */
    private record Full(int code, String said, int taken) {}

    private static Full room(int room, byte[] input, List<String> words) {
        Narrow out = new Narrow(room);
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Buildup.run(Streams.of(new ByteArrayInputStream(input), out, err), words.toArray(String[]::new));
        return new Full(code, err.toString(UTF_8), out.taken);
    }

    /** Takes so many bytes and then no more. */
    private static final class Narrow extends OutputStream {
        private final int room;
        private int taken;

        Narrow(int room) {
            this.room = room;
        }

        @Override
        public void write(int one) throws IOException {
            if (taken == room) {
                throw new IOException(WHY);
            }
            taken++;
        }
    }
}
