package buildup.cli.command.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The shop's own lists, which every command takes. */
@Command(addMethodSubcommands = false)
public final class CatalogOption {
    /** Files with the shop's own lists, added to those that come with the program; a later one goes before. */
    @Option(
            names = "--catalog",
            paramLabel = "FILE",
            description = "The shop's own lists of profiles, boards and woods; may be repeated.")
    public List<Path> files = new ArrayList<>();
}
