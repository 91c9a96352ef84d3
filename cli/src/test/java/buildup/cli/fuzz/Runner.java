package buildup.cli.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import buildup.cli.command.Buildup;
import buildup.cli.command.files.Streams;
import buildup.cli.watch.Saves;
import com.sun.management.ThreadMXBean;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Runs questions in this JVM, in a folder that holds their files and nothing else. */
final class Runner {
    /** In place of a command: a stack is followed while it is saved anew. */
    static final String SAVES = "saves";

    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private final Path folder;

    Runner(Path folder) {
        this.folder = folder;
    }

    /** Something that answers questions: the program, or what stands for it in a test. */
    interface Program {
        int run(Streams streams, String... words);
    }

    /** What a thread has had of the processor. */
    static long nanos(Thread thread) {
        return THREADS.getThreadCpuTime(thread.getId());
    }

    /** Asks the program itself. */
    Outcome run(Asked asked) {
        return run(asked, Buildup::run);
    }

    Outcome run(Asked asked, Program program) {
        try {
            clear();
            for (Map.Entry<String, byte[]> file : asked.files().entrySet()) {
                Files.write(folder.resolve(file.getKey()), file.getValue());
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            String[] words = asked.words().stream()
                    .map(word -> word.startsWith(Asked.FOLDER)
                            ? folder.resolve(word.substring(Asked.FOLDER.length()))
                                    .toString()
                            : word)
                    .toArray(String[]::new);
            long thread = Thread.currentThread().getId();
            long before = THREADS.getThreadCpuTime(thread);
            long allocated = THREADS.getThreadAllocatedBytes(thread);
            int code = words.length > 0 && words[0].equals(SAVES)
                    ? saves(asked, out, err)
                    : program.run(Streams.of(new ByteArrayInputStream(asked.input()), out, err), words);
            return new Outcome(
                    code,
                    out.toByteArray(),
                    // the folder is another each time
                    err.toString(UTF_8).replace(folder.toString(), "@"),
                    files(),
                    THREADS.getThreadCpuTime(thread) - before,
                    THREADS.getThreadAllocatedBytes(thread) - allocated);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The page that follows a stack, after each of its saves. */
    private static int saves(Asked asked, ByteArrayOutputStream out, ByteArrayOutputStream err) {
        List<String> texts = Stream.concat(Stream.of(asked.input()), asked.files().values().stream())
                .map(bytes -> new String(bytes, UTF_8))
                .toList();
        try {
            out.writeBytes(Saves.shown(texts).getBytes(UTF_8));
            return 0;
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            StringWriter trace = new StringWriter();
            fault.printStackTrace(new PrintWriter(trace));
            err.writeBytes(trace.toString().getBytes(UTF_8));
            return 1;
        }
    }

    /** What lies in the folder, and in folders that were written into it, by its path. */
    private Map<String, byte[]> files() throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(file).toString(), Files.readAllBytes(file));
            }
        }
        return files;
    }

    private void clear() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
                if (!file.equals(folder)) {
                    Files.delete(file);
                }
            }
        }
    }
}
