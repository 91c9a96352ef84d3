package buildup.cli.command;

import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.Streams;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * What is said when a command cannot go on: the words were not understood, or something broke inside. A named class and
 * no lambdas, since the JVM spins a lambda's class anew at every start where the library's interface is as old as here.
 *
 * @param streams where it is said
 */
record Faults(Streams streams) implements IParameterExceptionHandler, IExecutionExceptionHandler {
    @Override
    public int handleParseException(ParameterException wrong, String[] words) {
        String command = wrong.getCommandLine().getCommandSpec().qualifiedName();
        streams.err().print("buildup: " + oneLine(why(wrong)) + "\nSee: " + command + " --help\n");
        return ExitCode.REFUSED;
    }

    @Override
    public int handleExecutionException(Exception unexpected, CommandLine at, ParseResult words) {
        return wentWrong(unexpected);
    }

    /** One line for what should never happen, with the place for whoever mends it. */
    int wentWrong(Throwable unexpected) {
        StackTraceElement[] trace = unexpected.getStackTrace();
        String place = trace.length == 0 ? "" : " at " + trace[0].getFileName() + ":" + trace[0].getLineNumber();
        String what = oneLine(unexpected.toString()) + place;
        streams.err().print("buildup: something went wrong inside: " + what + "; please report\n");
        return ExitCode.REFUSED;
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
