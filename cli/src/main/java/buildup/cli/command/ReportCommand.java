package buildup.cli.command;

import buildup.cli.command.ReportOptions.Format;
import buildup.cli.command.files.CatalogOption;
import buildup.cli.command.files.CommandForm;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.OutputFile;
import buildup.cli.command.files.SayingOption;
import buildup.cli.command.files.StackLoader;
import buildup.cli.command.files.Streams;
import buildup.cli.page.Page;
import buildup.cli.report.CsvReport;
import buildup.cli.report.JsonReport;
import buildup.cli.report.TextReport;
import buildup.engine.Answer;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

/** {@code report}: everything known of one stack, or of two beside each other. */
final class ReportCommand implements Callable<Integer> {
    private final Streams streams;
    private String stack = "";
    private Optional<String> other = Optional.empty();
    private final ReportOptions options = new ReportOptions();
    private final SayingOption saying = new SayingOption();
    private final CatalogOption catalog = new CatalogOption();

    ReportCommand(Streams streams) {
        this.streams = streams;
    }

    /** The words and options that it takes. */
    CommandForm form() {
        return CommandForm.of("report", "Reports everything known of one stack, or of two beside each other.", this)
                .word("STACK", "The stack document; - is standard input.", asked -> stack = asked)
                .maybeWord("OTHER", "A second stack, set beside the first.", asked -> other = Optional.of(asked))
                .with(options::addTo)
                .with(saying::addTo)
                .with(catalog::addTo);
    }

    @Override
    public Integer call() {
        if (!options.settle("report", streams, saying, InputFiles.nameOf(stack))) {
            return ExitCode.REFUSED;
        }
        if (other.isPresent()) {
            return new TwoStacks(streams, options, saying, catalog.files).report(stack, other.get());
        }
        Notices notices = new Notices();
        InputFiles files = new InputFiles(streams, notices);
        Answer answer = new StackLoader(files, notices).whole(stack, catalog.files);
        if (answer.known().isPresent() && written(answer, files.read(), notices)) {
            return say(answer);
        }
        return refuse(answer.refused(notices.sorted()));
    }

    /** Writes to the file that was asked for; without one all is well so far. */
    private boolean written(Answer answer, List<Path> inputs, Notices notices) {
        return options.output.file().isEmpty()
                || OutputFile.write(
                        options.output.file().get(), kept(answer).getBytes(StandardCharsets.UTF_8), inputs, notices);
    }

    /** What is said beside a text on the screen would be lost with the window: in a file it stands behind it. */
    private String kept(Answer answer) {
        return report(answer)
                + (options.format == Format.text
                        ? TextReport.notices(saying.kept(answer.notices(), answer.file(), answer.unit()))
                        : "");
    }

    private String said(Answer answer) {
        return saying.said(answer.notices(), answer.file(), answer.unit());
    }

    private int say(Answer answer) {
        if (options.output.file().isEmpty()) {
            streams.out().print(streams.outIsScreen() ? report(answer) : kept(answer));
        }
        if (options.format != Format.json) {
            streams.err().print(said(answer));
        }
        return ExitCode.of(answer.notices());
    }

    /** What was refused is said where it is sure to be seen; a file from before stays as it was. */
    private int refuse(Answer answer) {
        if (options.format == Format.json) {
            streams.out().print(report(answer));
        } else {
            streams.err().print(said(answer));
        }
        return ExitCode.of(answer.notices());
    }

    private String report(Answer answer) {
        return switch (options.format) {
            case text -> TextReport.write(answer);
            case json -> JsonReport.write(answer);
            case csv -> CsvReport.write(answer);
            case html -> Page.of(answer);
        };
    }
}
