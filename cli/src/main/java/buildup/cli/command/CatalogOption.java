package buildup.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The shop's own lists, which every command takes. */
final class CatalogOption {
    /** The file with the shop's own lists; empty for the lists that come with the program. */
    @Option(
            names = "--catalog",
            paramLabel = "FILE",
            description = "The shop's own lists of profiles, boards and woods.")
    Optional<Path> file = Optional.empty();
}
