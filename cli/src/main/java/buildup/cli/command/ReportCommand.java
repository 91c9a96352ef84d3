package buildup.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code report}: everything known of one stack, or of two beside each other. */
@Command(
        name = "report",
        mixinStandardHelpOptions = true,
        description = "Tells everything known of one stack, or of two beside each other.")
final class ReportCommand implements Callable<Integer> {
    /** The forms in which a report is written. */
    enum Format {
        text,
        json,
        html
    }

    private final Streams streams;

    @Parameters(index = "0", paramLabel = "STACK", description = "The stack document; - is standard input.")
    private String stack = "";

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "OTHER",
            description = "A second stack, set beside the first.")
    private Optional<String> other = Optional.empty();

    @Option(names = "--format", paramLabel = "FORMAT", description = "${COMPLETION-CANDIDATES} (default: text).")
    private Format format = Format.text;

    @Option(names = "-o", paramLabel = "FILE", description = "Where to write (default: standard output).")
    private Optional<Path> output = Optional.empty();

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    ReportCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        return NotThereYet.say(streams, "report");
    }
}
