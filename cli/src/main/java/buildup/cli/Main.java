package buildup.cli;

import buildup.cli.command.Buildup;
import buildup.cli.command.files.Streams;

/** Where the program starts. */
public final class Main {
    private Main() {}

    /** Runs one command and leaves with its {@link buildup.cli.command.files.ExitCode}. */
    public static void main(String[] args) {
        System.exit(Buildup.run(Streams.of(System.in, System.out, System.err), args));
    }
}
