package buildup.cli.command;

import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.Streams;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
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
    private static final Set<String> VERSION = Set.of("--version", "-V");

    private Buildup() {}

    /**
     * Runs the command that the words name. Whatever goes wrong ends in a line on {@code streams.err} and an exit code,
     * never in an exception.
     *
     * @return one of {@link ExitCode}
     */
    public static int run(Streams streams, String... words) {
        if (words.length == 1 && VERSION.contains(words[0])) {
            // the whole command line takes three times as long to build as the program to start
            return run(streams, List.of(words), () -> {
                streams.out().print(version() + "\n");
                return ExitCode.CLEAN;
            });
        }
        return run(commandLine(streams, List.of(words)), streams, words);
    }

    static int run(CommandLine line, Streams streams, String... words) {
        return run(streams, List.of(words), () -> line.execute(words));
    }

    private static int run(Streams streams, List<String> words, IntSupplier work) {
        CommandFaults faults = new CommandFaults(streams, words);
        int code;
        try {
            code = work.getAsInt();
        } catch (Throwable unexpected) {
            // Errors too: a stack that overflows deep inside must not end in a stack trace.
            code = faults.wentWrong(unexpected);
        }
        code = streams.undelivered().map(faults::notDelivered).orElse(code);
        streams.flush();
        return code;
    }

    /** All commands, in the order of the help. */
    private static Map<String, Supplier<Object>> commands(Streams streams) {
        Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
        commands.put("report", () -> new ReportCommand(streams));
        commands.put("check", () -> new CheckCommand(streams));
        commands.put("draw", () -> new DrawCommand(streams));
        commands.put("watch", () -> new WatchCommand(streams));
        commands.put("new", () -> new NewCommand(streams));
        commands.put("cuts", () -> new CutsCommand(streams));
        commands.put("profile", () -> new ProfileCommand(streams));
        commands.put("quote", () -> new QuoteCommand(streams));
        commands.put("trace", () -> new TraceCommand(streams));
        commands.put("schema", () -> new SchemaCommand(streams));
        commands.put("set", () -> set(streams));
        commands.put("fmt", () -> new FmtCommand(streams));
        return commands;
    }

    /**
     * The command line.
     *
     * @param words where the first names a command, only that is built, since looking into the options of a dozen takes
     *     longer than most answers
     */
    static CommandLine commandLine(Streams streams, List<String> words) {
        Optional<String> only = words.stream().findFirst();
        CommandLine line = new CommandLine(new Buildup());
        Map<String, Supplier<Object>> commands = commands(streams);
        commands.forEach((name, command) -> {
            if (only.filter(word -> commands.containsKey(word) || VERSION.contains(word))
                    .map(name::equals)
                    .orElse(true)) {
                line.addSubcommand(command.get());
            }
        });
        line.getCommandSpec().version(version());
        for (CommandLine command : line.getSubcommands().values()) {
            command.getCommandSpec().version(version());
        }
        CommandFaults faults = new CommandFaults(streams, words);
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
    static String version() {
        return "buildup "
                + Objects.requireNonNullElse(Buildup.class.getPackage().getImplementationVersion(), "unpacked");
    }
}
