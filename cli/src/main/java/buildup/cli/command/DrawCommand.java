package buildup.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code draw}: a picture of a stack. */
@Command(name = "draw", mixinStandardHelpOptions = true, description = "Draws a stack.")
final class DrawCommand implements Callable<Integer> {
    /** What the picture shows. */
    enum View {
        section,
        elevation,
        rays,
        steps,
        plan,
        sticks
    }

    /** The forms in which a picture is written. */
    enum Format {
        svg,
        png,
        pdf,
        dxf
    }

    private final Streams streams;

    @Parameters(index = "0", paramLabel = "STACK", description = "The stack document; - is standard input.")
    private String stack = "";

    @Option(names = "--view", paramLabel = "VIEW", description = "${COMPLETION-CANDIDATES} (default: section).")
    private View view = View.section;

    @Option(
            names = "--light",
            paramLabel = "ALT,AZ",
            description = "Degrees above level, and degrees from square to the wall (+ from the left).")
    private Optional<String> light = Optional.empty();

    @Option(names = "--page", paramLabel = "NAME", description = "The sheet to draw on.")
    private Optional<String> page = Optional.empty();

    @Option(
            names = "--to",
            paramLabel = "FORMAT",
            description = "${COMPLETION-CANDIDATES} (default: as the file ends).")
    private Optional<Format> format = Optional.empty();

    @Option(names = "-o", required = true, paramLabel = "FILE", description = "Where to write.")
    private Path output = Path.of("");

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    DrawCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        return NotThereYet.say(streams, "draw");
    }
}
