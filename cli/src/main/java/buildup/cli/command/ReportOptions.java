package buildup.cli.command;

import buildup.cli.command.files.CommandForm;

/** In what form a report of one stack or of two is written, and where. */
final class ReportOptions {
    /** The forms in which it is written. */
    enum Format {
        text,
        json,
        csv,
        html
    }

    /** The form that was asked for. */
    Format format = Format.text;

    /** Where it goes. */
    final OutputOption output = new OutputOption();

    /** Asks for them. */
    void addTo(CommandForm form) {
        form.option(
                        Format.class,
                        "--format",
                        "FORMAT",
                        "${COMPLETION-CANDIDATES} (default: text).",
                        asked -> format = asked)
                .with(output::addTo);
    }
}
