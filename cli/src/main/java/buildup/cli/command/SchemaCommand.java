package buildup.cli.command;

import buildup.cli.command.files.CommandForm;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.OutputFile;
import buildup.cli.command.files.Streams;
import buildup.cli.compare.ComparisonSchema;
import buildup.cli.report.CutsTelling;
import buildup.cli.report.NoticeText;
import buildup.cli.report.ProfileTelling;
import buildup.cli.report.QuoteTelling;
import buildup.cli.report.ReportSchema;
import buildup.cli.report.SearchTelling;
import buildup.cli.report.TraceTelling;
import buildup.cli.tell.Schema;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

/** {@code schema}: what the keys mean that another command writes as JSON. */
final class SchemaCommand implements Callable<Integer> {
    /** All there are, each under the name by which it is asked for. */
    static final List<Schema> ALL = List.of(
            ReportSchema.SCHEMA,
            ComparisonSchema.SCHEMA,
            CutsTelling.SCHEMA,
            ProfileTelling.SCHEMA,
            QuoteTelling.SCHEMA,
            QuoteTelling.OFFER_SCHEMA,
            TraceTelling.SCHEMA,
            SearchTelling.SCHEMA);

    private final Streams streams;
    private String name = "";
    private final OutputOption output = new OutputOption();

    SchemaCommand(Streams streams) {
        this.streams = streams;
    }

    /** Their names, for the help. */
    private static List<String> names() {
        return ALL.stream().map(Schema::name).toList();
    }

    /** The words and options that it takes. */
    CommandForm form() {
        return CommandForm.of(
                        "schema", "Prints the JSON Schema (draft 2020-12) of what a command writes as JSON.", this)
                .oneOf(names(), "NAME", "One of: ${COMPLETION-CANDIDATES}.", asked -> name = asked)
                .with(output::addTo);
    }

    @Override
    public Integer call() {
        Notices notices = new Notices();
        Optional<Schema> schema =
                ALL.stream().filter(one -> one.name().equals(name)).findFirst();
        if (schema.isEmpty()) {
            notices.add(CommandNotices.UNKNOWN_SCHEMA.with("name", name).cure(Suggestion.phrase(name, names())));
        } else if (output.file().isEmpty()) {
            streams.out().print(schema.get().written());
        } else {
            byte[] bytes = schema.get().written().getBytes(StandardCharsets.UTF_8);
            OutputFile.write(output.file().get(), bytes, List.of(), notices);
        }
        streams.err().print(NoticeText.write(notices.sorted(), "schema", LengthUnit.INCH));
        return ExitCode.of(notices);
    }
}
