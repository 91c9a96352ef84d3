package buildup.cli.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** In what form a report of one stack or of two is written, and where. */
@Command(addMethodSubcommands = false)
final class ReportOptions {
    /** The forms in which it is written. */
    enum Format {
        text,
        json,
        csv,
        html
    }

    /** The form that was asked for. */
    @Option(names = "--format", paramLabel = "FORMAT", description = "${COMPLETION-CANDIDATES} (default: text).")
    Format format = Format.text;

    /** Where it goes. */
    @Mixin
    final OutputOption output = new OutputOption();
}
