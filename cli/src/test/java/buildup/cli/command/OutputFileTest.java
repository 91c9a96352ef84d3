package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.OutputFile;
import buildup.shared.notice.Notices;
import java.io.File;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file is written whole or not at all, whatever happens meanwhile and whatever happened before. */
class OutputFileTest {
    private static final byte[] NEW = "new".getBytes(UTF_8);
    private static final int LARGE = 48 << 20;
    private static final FileTime YESTERDAY = FileTime.from(Instant.now().minus(Duration.ofDays(1)));

    @TempDir
    private Path folder;

    private final Notices notices = new Notices();

    @Test
    void any_number_of_parts_left_behind_is_passed_over() throws IOException {
        for (int i = 0; i < 300; i++) {
            Files.createFile(folder.resolve(".buildup-" + i + ".part"));
            Files.createFile(folder.resolve(".out.txt." + i + ".part"));
        }
        assertThat(write("out.txt")).isTrue();
        assertThat(Ran.read(folder.resolve("out.txt"))).isEqualTo("new");
    }

    /** Who writes a part holds it, and the system lets go of what a killed run held: the very next run sweeps it. */
    @Test
    void parts_that_killed_runs_left_are_swept_at_once_and_those_of_running_ones_never() throws IOException {
        for (int i = 0; i < 100; i++) {
            Files.createFile(folder.resolve(".buildup-" + Long.toHexString(0xabcdef0123L * (i + 1)) + ".part"));
        }
        Path running = Files.createFile(folder.resolve(".buildup-7.part"));
        Files.setLastModifiedTime(running, YESTERDAY);
        try (FileChannel held = FileChannel.open(running, StandardOpenOption.WRITE)) {
            held.lock();
            assertThat(write("out.txt")).isTrue();
            assertThat(names()).containsExactly(".buildup-7.part", "out.txt");
        }
        assertThat(write("out.txt")).isTrue();
        assertThat(names()).containsExactly("out.txt");
    }

    @Test
    void a_file_of_another_name_a_link_and_a_folder_are_nobodys_parts() throws IOException {
        List<String> foreign = List.of(
                ".another.part",
                ".buildup-.part",
                ".buildup-12345678901234567.part",
                ".buildup-ABC.part",
                ".buildup-notes.part",
                ".buildup-1.part.txt",
                "x.buildup-1.part");
        for (String name : foreign) {
            Files.setLastModifiedTime(Files.createFile(folder.resolve(name)), YESTERDAY);
        }
        Path linked = Files.setLastModifiedTime(Files.createFile(folder.resolve("linked")), YESTERDAY);
        Path link = Files.createSymbolicLink(folder.resolve(".buildup-2.part"), linked);
        Path inside = Files.createDirectory(folder.resolve(".buildup-3.part"));
        assertThat(write("out.txt")).isTrue();
        assertThat(names()).containsAll(foreign).contains("linked", "out.txt");
        assertThat(link).isSymbolicLink();
        assertThat(inside).isDirectory();
    }

    /** A file that runs cannot be opened to be held, as none can where a file system knows no locks: its age decides. */
    @Test
    void a_part_that_cannot_be_held_is_swept_after_an_hour() throws Exception {
        Path sleep = Path.of("/bin/sleep");
        assumeThat(sleep).exists();
        Path part = Files.copy(sleep, folder.resolve(".buildup-4.part"));
        Process running = new ProcessBuilder(part.toString(), "60").start();
        try {
            assertThat(write("out.txt")).isTrue();
            assertThat(part).exists();
            Files.setLastModifiedTime(part, YESTERDAY);
            assertThat(write("out.txt")).isTrue();
            assertThat(part).doesNotExist();
        } finally {
            running.destroyForcibly().waitFor();
        }
    }

    @Test
    @Tag("long")
    void what_another_run_is_writing_is_not_swept() throws Exception {
        Path out = folder.resolve("out.bin");
        Process process = started("whole", out.toString());
        int tried = 0;
        while (process.isAlive()) {
            tried += written(out) > 0 ? 1 : 0;
            assertThat(write("other.txt")).isTrue();
        }
        assertThat(process.waitFor()).as("exit code of the other run").isZero();
        assertThat(tried).as("sweeps while it wrote").isPositive();
        assertThat(out.toFile().length()).isEqualTo(LARGE);
    }

    @Test
    void times_that_no_clock_shows_are_in_nobodys_way() throws IOException {
        for (long seconds : new long[] {0, 4_000_000_000L}) {
            Path part = Files.createFile(folder.resolve(".buildup-" + seconds + ".part"));
            Files.setLastModifiedTime(part, FileTime.from(seconds, TimeUnit.SECONDS));
        }
        assertThat(write("out.txt")).isTrue();
    }

    @Test
    void a_link_at_whose_end_nothing_is_yet_stays_a_link() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("onward"));
        Files.createSymbolicLink(folder.resolve("onward"), folder.resolve("real.txt"));
        assertThat(write("link")).isTrue();
        assertThat(link).isSymbolicLink();
        assertThat(folder.resolve("onward")).isSymbolicLink();
        assertThat(Ran.read(folder.resolve("real.txt"))).isEqualTo("new");
    }

    @Test
    void a_link_that_leads_round_or_into_no_folder_is_told_and_stays() throws IOException {
        Path round = Files.createSymbolicLink(folder.resolve("round"), Path.of("round"));
        Path nowhere = Files.createSymbolicLink(folder.resolve("nowhere"), Path.of("none/real.txt"));
        assertThat(write("round")).isFalse();
        assertThat(write("nowhere")).isFalse();
        assertThat(round).isSymbolicLink();
        assertThat(nowhere).isSymbolicLink();
        assertThat(notices.sorted().stream().map(notice -> notice.code()))
                .contains("output-not-writable", "output-folder-absent");
    }

    @Test
    void a_name_as_long_as_names_may_be_is_written() throws IOException {
        String longest = "x".repeat(251) + ".txt";
        assertThat(write(longest)).isTrue();
        assertThat(write(longest + "y")).isFalse();
        assertThat(names()).containsExactly(longest);
    }

    @Test
    void a_file_larger_than_there_is_room_for_leaves_the_old_one() throws Exception {
        Path out = Files.writeString(folder.resolve("out.bin"), "old");
        assumeThat(Path.of("/bin/bash")).exists();
        Process process = started("/bin/bash", "-c", "ulimit -f 64; exec \"$@\"", "-", "fails", out.toString());
        assertThat(process.waitFor()).isEqualTo(ExitCode.NOT_WRITTEN);
        assertThat(Ran.read(out)).isEqualTo("old");
        assertThat(names()).containsExactly("out.bin");
    }

    @Test
    @Tag("long")
    void killed_at_any_tenth_of_a_write_it_leaves_the_old_file_or_the_new_one() throws Exception {
        Path out = Files.writeString(folder.resolve("out.bin"), "old");
        for (int tenth = 0; tenth < 10; tenth++) {
            Process process = started("kill", out.toString());
            while (process.isAlive() && written(out) < (long) LARGE * tenth / 10) {
                Thread.onSpinWait();
            }
            process.destroyForcibly().waitFor();
            byte[] left = Files.readAllBytes(out);
            boolean whole = left.length == LARGE && left[0] == 'x' && left[LARGE - 1] == 'x';
            assertThat(whole || new String(left, UTF_8).equals("old"))
                    .as("killed at tenth %d: %d bytes", tenth, left.length)
                    .isTrue();
            Files.writeString(out, "old");
        }
        assertThat(write("out.bin")).isTrue();
        assertThat(names()).containsExactly("out.bin");
    }

    /** What stands in the part that is being written; less than 0 before there is one. */
    private long written(Path out) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".part"))
                    .mapToLong(file -> file.toFile().length())
                    .max()
                    .orElse(-1);
        }
    }

    /** A process of its own that writes a large file. */
    public static final class Writer {
        private Writer() {}

        /** Writes to the file that the last word names. */
        public static void main(String[] words) {
            byte[] large = new byte[LARGE];
            Arrays.fill(large, (byte) 'x');
            Notices said = new Notices();
            OutputFile.write(Path.of(words[words.length - 1]), large, List.of(), said);
            System.exit(ExitCode.of(said));
        }
    }

    private Process started(String... words) throws IOException {
        List<String> java = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto",
                "-XX:TieredStopAtLevel=1",
                "-XX:-UsePerfData",
                "-cp",
                System.getProperty("java.class.path"),
                Writer.class.getName());
        int shell = words.length - 2;
        List<String> command = Stream.of(
                        Arrays.stream(words, 0, shell), java.stream(), Arrays.stream(words, shell, words.length))
                .flatMap(part -> part)
                .toList();
        return new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(new File("/dev/null"))
                .start();
    }

    private boolean write(String name) {
        return OutputFile.write(folder.resolve(name), NEW, List.of(), notices);
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
