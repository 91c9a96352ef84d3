package buildup.cli;

import buildup.cli.command.Buildup;
import buildup.cli.command.files.Streams;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.util.Optional;

/** Where the program starts. */
public final class Main {
    private Main() {}

    /**
     * Runs one command and leaves with its {@link buildup.cli.command.files.ExitCode}. {@code System.out} would keep it to
     * itself that it cannot be written.
     */
    public static void main(String[] args) {
        System.exit(Buildup.run(
                Streams.of(System.in, new FileOutputStream(FileDescriptor.out), System.err, atTerminal()), args));
    }

    /** Whether somebody sits at a terminal: no input or output of the run goes to a file or to another program. */
    private static boolean atTerminal() {
        return Optional.ofNullable(System.console()).filter(Main::isTerminal).isPresent();
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
