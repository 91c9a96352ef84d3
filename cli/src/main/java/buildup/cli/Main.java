package buildup.cli;

import buildup.cli.command.Buildup;
import buildup.cli.command.files.Streams;
import buildup.cli.command.files.Waiting;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Where the program starts. */
public final class Main {
    /** What an interrupted search may take to end and to be written, seconds. */
    private static final long LONGEST_END = 20;

    private Main() {}

    /**
     * Runs one command and leaves with its {@link buildup.cli.command.files.ExitCode}. {@code System.out} would keep it to
     * itself that it cannot be written.
     */
    public static void main(String[] args) {
        // no option holds a time or a thing of a database, and to be ready to read them takes longer than the options
        System.setProperty("picocli.converters.excludes", "java\\.(time|sql)\\..*");
        Optional<Console> console = Optional.ofNullable(System.console()).filter(Main::isTerminal);
        Waiting waiting = Waiting.at(console);
        CountDownLatch told = new CountDownLatch(1);
        Runtime.getRuntime().addShutdownHook(new Thread(() -> bestSoFar(waiting, told), "best so far"));
        waiting.start();
        int code = Buildup.run(
                Streams.of(
                        System.in, new FileOutputStream(FileDescriptor.out), System.err, waiting, console.isPresent()),
                args);
        waiting.end();
        told.countDown();
        System.exit(code);
    }

    /** A search that is interrupted ends, and what it had is written, before the program does. */
    private static void bestSoFar(Waiting waiting, CountDownLatch told) {
        try {
            if (waiting.interrupt() && !told.await(LONGEST_END, TimeUnit.SECONDS)) {
                waiting.end();
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    /** From Java 22 on there is a console without a terminal too, and it says which it is; before that there is none. */
    private static boolean isTerminal(Console console) {
        try {
            return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (ReflectiveOperationException before22) {
            return true;
        }
    }
}
