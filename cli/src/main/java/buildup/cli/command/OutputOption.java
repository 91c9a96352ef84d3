package buildup.cli.command;

import buildup.cli.command.files.OutputFile;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Where an answer goes, as every command that can print it asks. */
@Command(addMethodSubcommands = false)
final class OutputOption {
    @Option(names = "-o", paramLabel = "FILE", description = "Where to write (default: standard output).")
    private Optional<Path> asked = Optional.empty();

    /** The file to write; absent for standard output, which {@code -} asks for too. */
    Optional<Path> file() {
        return OutputFile.named(asked);
    }
}
