package buildup.cli;

import buildup.cli.command.Buildup;
import buildup.cli.command.files.Streams;
import java.io.FileDescriptor;
import java.io.FileOutputStream;

/** Where the program starts. */
public final class Main {
    private Main() {}

    /**
     * Runs one command and leaves with its {@link buildup.cli.command.files.ExitCode}. {@code System.out} would keep it to
     * itself that it cannot be written.
     */
    public static void main(String[] args) {
        System.exit(Buildup.run(
                Streams.of(System.in, new FileOutputStream(FileDescriptor.out), System.err, System.console() != null),
                args));
    }
}
