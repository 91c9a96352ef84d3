package buildup.cli.command;

import buildup.cli.command.files.Streams;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import picocli.CommandLine.Model.CommandSpec;

/** The commands as the help tells them: what tests of all of them are drawn from. */
public final class CommandTree {
    private CommandTree() {}

    /** Every command by its name. */
    public static SortedMap<String, CommandSpec> commands() {
        Streams none = Streams.of(
                InputStream.nullInputStream(), OutputStream.nullOutputStream(), OutputStream.nullOutputStream());
        SortedMap<String, CommandSpec> commands = new TreeMap<>();
        Buildup.commandLine(none, List.of())
                .getSubcommands()
                .forEach((name, line) -> commands.put(name, line.getCommandSpec()));
        return commands;
    }
}
