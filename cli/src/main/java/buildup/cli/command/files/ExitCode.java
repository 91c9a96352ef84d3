package buildup.cli.command.files;

/** What the program tells its caller when it ends. */
public final class ExitCode {
    /** Nothing to say, or notes only. */
    public static final int CLEAN = 0;

    /** The work is done, and something in it is a problem. */
    public static final int PROBLEM = 1;

    /** Refused, because a figure would be false; or the command line was not understood. */
    public static final int REFUSED = 2;

    /** What was asked for could not be written. */
    public static final int NOT_WRITTEN = 3;

    private ExitCode() {}
}
