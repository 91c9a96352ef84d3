package buildup.cli.command;

import buildup.cli.command.files.CommandForm;
import buildup.cli.command.files.SayingOption;
import buildup.cli.command.files.Streams;
import buildup.cli.command.files.WrittenForm;
import java.util.List;
import java.util.Optional;

/** In what form a report of one stack or of two is written, and where. */
final class ReportOptions {
    /** The forms in which it is written. */
    enum Format {
        text,
        json,
        csv,
        html
    }

    private Optional<Format> wanted = Optional.empty();

    /** The form in which it is written, once it is settled. */
    Format format = Format.text;

    /** Where it goes. */
    final OutputOption output = new OutputOption();

    /** Asks for them. */
    void addTo(CommandForm form) {
        form.option(
                        Format.class,
                        "--format",
                        "FORMAT",
                        "${COMPLETION-CANDIDATES} (default: by the ending of the file, else text).",
                        asked -> wanted = Optional.of(asked))
                .with(output::addTo);
    }

    /**
     * Settles the form.
     *
     * @param about what messages call the matter
     * @return whether the file can be written in the form that its name says
     */
    boolean settle(String command, Streams streams, SayingOption saying, String about) {
        Optional<Format> settled = new WrittenForm<>(
                        List.of(Format.values()), Optional.of(Format.text), command, "--format")
                .settled(wanted, output.file(), streams, saying, about);
        format = settled.orElse(format);
        return settled.isPresent();
    }
}
