package buildup.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Where an answer goes, as every command that can print it asks. */
@Command(addMethodSubcommands = false)
final class OutputOption {
    /** The file to write; absent for standard output. */
    @Option(names = "-o", paramLabel = "FILE", description = "Where to write (default: standard output).")
    Optional<Path> file = Optional.empty();
}
