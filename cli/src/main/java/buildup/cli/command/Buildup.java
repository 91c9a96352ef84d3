package buildup.cli.command;

import buildup.cli.command.files.CommandForm;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.Streams;
import buildup.cli.command.search.SearchCommand;
import buildup.cli.command.sheets.SheetsCommand;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntSupplier;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.TypeConversionException;

/** The program as a whole: its commands by name. */
public final class Buildup {
    private static final Set<String> VERSION = Set.of("--version", "-V");

    /** In the order of the help. */
    private static final List<String> COMMANDS = List.of(
            "report", "check", "draw", "sheets", "watch", "new", "cuts", "search", "profile", "quote", "trace",
            "schema", "set", "fmt");

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
        List<String> all = List.of(words);
        CommandLine line = commandLine(streams, all);
        String[] rest = isCommand(all) ? Arrays.copyOfRange(words, 1, words.length) : words;
        return run(streams, all, () -> line.execute(rest));
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
        // asked in plain words: a method reference would keep the class of the faults out of the archive of classes
        Optional<IOException> undelivered = streams.undelivered();
        if (undelivered.isPresent()) {
            code = faults.notDelivered(undelivered.get());
        }
        streams.flush();
        return code;
    }

    private static boolean isCommand(List<String> words) {
        return !words.isEmpty() && COMMANDS.contains(words.get(0));
    }

    private static CommandLine command(String name, Streams streams) {
        return switch (name) {
            case "report" -> new ReportCommand(streams).form().line();
            case "check" -> new CheckCommand(streams).form().line();
            case "draw" -> new DrawCommand(streams).form().line();
            case "sheets" -> new SheetsCommand(streams).form().line();
            case "watch" -> new WatchCommand(streams).form().line();
            case "new" -> new NewCommand(streams).form().line();
            case "cuts" -> new CutsCommand(streams).form().line();
            case "profile" -> new ProfileCommand(streams).form().line();
            case "quote" -> new QuoteCommand(streams).form().line();
            case "trace" -> new TraceCommand(streams).form().line();
            case "search" -> new SearchCommand(streams).form().line();
            case "schema" -> new SchemaCommand(streams).form().line();
            case "set" -> set(streams);
            case "fmt" -> new FmtCommand(streams).form().line();
            default -> throw new IllegalArgumentException("no command " + name);
        };
    }

    /**
     * The command line.
     *
     * @param words where the first names a command, that command alone, to be asked with the words behind it, since looking
     *     into the options of a dozen takes longer than most answers
     */
    static CommandLine commandLine(Streams streams, List<String> words) {
        CommandLine line;
        if (isCommand(words)) {
            line = command(words.get(0), streams).setCommandName("buildup " + words.get(0));
        } else {
            line = CommandForm.of(
                            "buildup", "Works out sections of built-up trim before wood is milled.", new Buildup())
                    .line();
            line.getCommandSpec().usageMessage().synopsisSubcommandLabel("COMMAND");
            for (String name : COMMANDS) {
                line.addSubcommand(command(name, streams));
            }
        }
        line.getCommandSpec().version(version());
        for (CommandLine command : line.getSubcommands().values()) {
            command.getCommandSpec().version(version());
        }
        CommandFaults faults = new CommandFaults(streams, words);
        return line.registerConverter(double.class, new NumberConverter())
                .registerConverter(Double.class, new NumberConverter())
                .setExpandAtFiles(false)
                .setOut(streams.out())
                .setErr(streams.err())
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setParameterExceptionHandler(faults)
                .setExecutionExceptionHandler(faults);
    }

    /**
     * A number that can be counted with; Java would also take the words for what is none, and for what is without end. A
     * class and no lambda: the archive of classes cannot be laid down with a lambda for an interface of that library.
     */
    private static final class NumberConverter implements CommandLine.ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            try {
                double number = Double.parseDouble(text);
                if (Double.isFinite(number)) {
                    return number;
                }
            } catch (NumberFormatException none) {
                throw new TypeConversionException("'" + text + "' is not a number");
            }
            throw new TypeConversionException("'" + text + "' is not a number to count with");
        }
    }

    /** A value may begin with a hyphen, as {@code -1/2}. */
    private static CommandLine set(Streams streams) {
        return new SetCommand(streams).form().line().setUnmatchedOptionsArePositionalParams(true);
    }

    /** The version is written once, in the build file, and reaches the program through the jar. */
    static String version() {
        return "buildup "
                + Objects.requireNonNullElse(Buildup.class.getPackage().getImplementationVersion(), "unpacked");
    }
}
