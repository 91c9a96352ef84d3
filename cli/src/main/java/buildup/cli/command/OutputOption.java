package buildup.cli.command;

import buildup.cli.command.files.CommandForm;
import buildup.cli.command.files.OutputFile;
import java.nio.file.Path;
import java.util.Optional;

/** Where an answer goes, as every command that can print it asks. */
final class OutputOption {
    private Optional<Path> asked = Optional.empty();

    /** Asks for it. */
    void addTo(CommandForm form) {
        form.option(
                Path.class,
                "-o",
                "FILE",
                "Where to write (default: standard output).",
                asked -> this.asked = Optional.of(asked));
    }

    /** The file to write; absent for standard output, which {@code -} asks for too. */
    Optional<Path> file() {
        return OutputFile.named(asked);
    }
}
