package buildup.cli.command;

import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;

/** The program as a whole: its commands by name. */
@Command(
        name = "buildup",
        mixinStandardHelpOptions = true,
        description = "Works out sections of built-up trim before wood is milled.",
        synopsisSubcommandLabel = "COMMAND")
public final class Buildup {
    private Buildup() {}

    /**
     * Runs the command that the words name. Whatever goes wrong ends in a line on {@code streams.err} and an exit code,
     * never in an exception.
     *
     * @return one of {@link ExitCode}
     */
    public static int run(Streams streams, String... words) {
        return run(commandLine(streams), streams, words);
    }

    static int run(CommandLine line, Streams streams, String... words) {
        try {
            return line.execute(words);
        } catch (Throwable unexpected) {
            // Errors too: a stack that overflows deep inside must not end in a stack trace.
            return new Faults(streams).wentWrong(unexpected);
        } finally {
            streams.flush();
        }
    }

    static CommandLine commandLine(Streams streams) {
        CommandLine line = new CommandLine(new Buildup())
                .addSubcommand(new ReportCommand(streams))
                .addSubcommand(new CheckCommand(streams))
                .addSubcommand(new DrawCommand(streams))
                .addSubcommand(new WatchCommand(streams))
                .addSubcommand(new NewCommand(streams))
                .addSubcommand(new CutsCommand(streams))
                .addSubcommand(new ProfileCommand(streams))
                .addSubcommand(new QuoteCommand(streams))
                .addSubcommand(new TraceCommand(streams))
                .addSubcommand(new SchemaCommand(streams))
                .addSubcommand(set(streams))
                .addSubcommand(new FmtCommand(streams));
        line.getCommandSpec().version(version());
        for (CommandLine command : line.getSubcommands().values()) {
            command.getCommandSpec().version(version());
        }
        Faults faults = new Faults(streams);
        return line.setExpandAtFiles(false)
                .setOut(streams.out())
                .setErr(streams.err())
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setParameterExceptionHandler(faults)
                .setExecutionExceptionHandler(faults);
    }

    /** A value may begin with a hyphen, as {@code -1/2}. */
    private static CommandLine set(Streams streams) {
        return new CommandLine(new SetCommand(streams)).setUnmatchedOptionsArePositionalParams(true);
    }

    /** The version is written once, in the build file, and reaches the program through the jar. */
    private static String version() {
        return "buildup "
                + Objects.requireNonNullElse(Buildup.class.getPackage().getImplementationVersion(), "unpacked");
    }
}
