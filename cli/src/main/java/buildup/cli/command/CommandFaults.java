package buildup.cli.command;

import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.Streams;
import buildup.cli.table.Display;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * What is said when a command cannot go on: the words were not understood, the answer could not be delivered, or
 * something broke inside. A named class and no lambdas, since the JVM spins a lambda's class anew at every start where
 * the library's interface is as old as here.
 *
 * @param streams where it is said
 * @param words of the command line
 */
record CommandFaults(Streams streams, List<String> words)
        implements IParameterExceptionHandler, IExecutionExceptionHandler {
    private static final String OURS = "buildup.";

    CommandFaults {
        words = List.copyOf(words);
    }

    @Override
    public int handleParseException(ParameterException wrong, String[] all) {
        String command = wrong.getCommandLine().getCommandSpec().qualifiedName();
        say(why(wrong));
        streams.err().print("See: " + command + " --help\n");
        return ExitCode.REFUSED;
    }

    @Override
    public int handleExecutionException(Exception unexpected, CommandLine at, ParseResult all) {
        return wentWrong(unexpected);
    }

    /** What should never happen, with the place, what was asked, and a file for whoever mends it. */
    int wentWrong(Throwable unexpected) {
        if (unexpected instanceof OutOfMemoryError) {
            say("Java was given too little memory for this answer. Set JAVA_TOOL_OPTIONS=-Xmx2g, or ask for less.");
            return ExitCode.REFUSED;
        }
        say("something went wrong inside: " + what(unexpected));
        say("asked was: buildup " + String.join(" ", words));
        Optional<Path> file = kept();
        say(file.map(kept -> "these two lines and " + kept
                        + " are what mends it: that file holds what was read, and the" + " version, and nothing else")
                .orElse("these two lines and the version, " + Buildup.version() + ", are what mends it"));
        return ExitCode.REFUSED;
    }

    /** The fault and its place in the program, whatever library it came out of, in one line. */
    static String what(Throwable unexpected) {
        List<StackTraceElement> trace = List.of(unexpected.getStackTrace());
        String place = trace.stream()
                .filter(call -> call.getClassName().startsWith(OURS))
                .findFirst()
                .or(() -> trace.stream().findFirst())
                .map(call -> " at " + call.getFileName() + ":" + call.getLineNumber())
                .orElse("");
        return oneLine(unexpected.toString()) + place;
    }

    /** Says that the answer did not leave through standard output, or only a part of it. */
    int notDelivered(IOException why) {
        say("the answer cannot be written to standard output: " + why.getMessage());
        return ExitCode.NOT_WRITTEN;
    }

    private void say(String line) {
        streams.err().print("buildup: " + Display.plain(oneLine(line)) + "\n");
    }

    /** In the folder for passing files, under a name of its own, for the user's eyes alone. */
    private Optional<Path> kept() {
        if (streams.given().isEmpty()) {
            return Optional.empty();
        }
        try {
            Path file = Files.createTempFile("buildup-fault-", ".txt");
            return Optional.of(Files.write(file, streams.given().written(Buildup.version())));
        } catch (IOException | RuntimeException nowhere) {
            return Optional.empty();
        }
    }

    private static String why(ParameterException wrong) {
        if (wrong instanceof UnmatchedArgumentException unmatched) {
            String said = "nothing here is called " + String.join(" ", unmatched.getUnmatched());
            List<String> near = unmatched.getSuggestions();
            return near.isEmpty() ? said : said + "; did you mean " + String.join(" or ", near) + "?";
        }
        return String.valueOf(wrong.getMessage());
    }

    private static String oneLine(String text) {
        return text.strip().replaceAll("\\s*\\R\\s*", " ");
    }
}
