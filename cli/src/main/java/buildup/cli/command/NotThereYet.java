package buildup.cli.command;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** Commands, views and formats that have a name and nothing behind it: each says so, whatever else it is given. */
record NotThereYet(Streams streams, String name) implements Callable<Integer> {
    private static final List<String> COMMANDS = List.of("search");

    /** Adds each such command under its name. */
    static void addTo(CommandLine line, Streams streams) {
        for (String name : COMMANDS) {
            CommandSpec spec = CommandSpec.wrapWithoutInspection(new NotThereYet(streams, name));
            spec.usageMessage().description("Not there yet.");
            spec.parser().unmatchedArgumentsAllowed(true);
            line.addSubcommand(name, spec);
        }
    }

    /** Says that what goes by the name is not there yet, and gives the exit code for it. */
    static int say(Streams streams, String name) {
        streams.err().print(name + " is not there yet\n");
        return ExitCode.REFUSED;
    }

    @Override
    public Integer call() {
        return say(streams, name);
    }
}
