package buildup.cli.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code profile}: what the catalog holds, or one profile of it. */
@Command(
        name = "profile",
        mixinStandardHelpOptions = true,
        description = "Tells what the catalog holds, or describes one profile.")
final class ProfileCommand implements Callable<Integer> {
    /** The forms in which profiles are written. */
    enum Format {
        text,
        json,
        svg
    }

    private final Streams streams;

    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "A profile (default: all of them).")
    private Optional<String> name = Optional.empty();

    @Option(names = "--nearest", description = "Tell which others come nearest to it.")
    private boolean nearest;

    @Option(names = "--format", paramLabel = "FORMAT", description = "${COMPLETION-CANDIDATES} (default: text).")
    private Format format = Format.text;

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    ProfileCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        return NotThereYet.say(streams, "profile");
    }
}
