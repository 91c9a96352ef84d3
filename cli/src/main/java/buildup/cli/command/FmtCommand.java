package buildup.cli.command;

import buildup.cli.command.files.ChangedFile;
import buildup.cli.command.files.CommandForm;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.Streams;
import buildup.cli.report.NoticeText;
import buildup.shared.document.edit.Tidying;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notices;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;

/** {@code fmt}: a document laid out as its neighbors are. */
final class FmtCommand implements Callable<Integer> {
    private final Streams streams;
    private String file = "";
    private Optional<Path> output = Optional.empty();

    FmtCommand(Streams streams) {
        this.streams = streams;
    }

    /** The words and options that it takes. */
    CommandForm form() {
        return CommandForm.of(
                        "fmt",
                        "Tidies the layout of a stack, an order or a catalog file: blanks, indentation, blank lines. Values"
                                + " and comments stay.",
                        this)
                .word("FILE", "The document (- for standard input).", asked -> file = asked)
                .option(
                        Path.class,
                        "-o",
                        "FILE",
                        "Where to write (default: into the file itself; for - to standard output).",
                        asked -> output = Optional.of(asked));
    }

    @Override
    public Integer call() {
        Notices notices = new Notices();
        String name = InputFiles.nameOf(file);
        Optional<String> before = new InputFiles(streams, notices).ownText(file);
        Optional<String> after = before.flatMap(text -> Tidying.layOut(name, text, notices));
        int written = after.isPresent()
                ? new ChangedFile(streams, file, output, notices).put(before.get(), after.get())
                : ExitCode.CLEAN;
        streams.err().print(NoticeText.write(notices.sorted(), name, LengthUnit.INCH));
        return Math.max(written, ExitCode.of(notices));
    }
}
