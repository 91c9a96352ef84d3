package buildup.cli.command.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The shop's own lists, which every command takes. */
public final class CatalogOption {
    /** Files with the shop's own lists, added to those that come with the program; a later one goes before. */
    public List<Path> files = new ArrayList<>();

    /** Asks for it. */
    public void addTo(CommandForm form) {
        form.repeated(
                Path.class,
                "--catalog",
                "FILE",
                "The shop's own lists of profiles, boards and woods; may be repeated.",
                asked -> files = asked);
    }
}
