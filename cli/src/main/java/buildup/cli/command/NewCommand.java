package buildup.cli.command;

import buildup.cli.command.files.CommandForm;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.OutputFile;
import buildup.cli.command.files.Streams;
import buildup.cli.report.NoticeText;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;

/** {@code new}: a stack to start from. */
final class NewCommand implements Callable<Integer> {
    private static final List<String> STARTERS = List.of("cornice", "door-head", "cap", "mantel");

    private final Streams streams;
    private String starter = STARTERS.get(0);
    private Optional<Path> output = Optional.empty();

    NewCommand(Streams streams) {
        this.streams = streams;
    }

    /** The words and options that it takes. */
    CommandForm form() {
        return CommandForm.of("new", "Writes a commented stack to start from.", this)
                .maybeWord("STARTER", "cornice, door-head, cap or mantel (default: cornice).", asked -> starter = asked)
                .option(
                        Path.class,
                        "-o",
                        "FILE",
                        "Where to write (default: standard output); never overwrites.",
                        asked -> output = Optional.of(asked));
    }

    @Override
    public Integer call() {
        Notices notices = new Notices();
        if (!STARTERS.contains(starter)) {
            notices.add(
                    CommandNotices.UNKNOWN_STARTER.with("name", starter).cure(Suggestion.phrase(starter, STARTERS)));
        } else if (OutputFile.named(output).isPresent()) {
            OutputFile.writeNew(output.get(), stack(), notices);
        } else {
            streams.out().print(new String(stack(), StandardCharsets.UTF_8));
        }
        streams.err().print(NoticeText.write(notices.sorted(), "new", LengthUnit.INCH));
        return ExitCode.of(notices);
    }

    private byte[] stack() {
        String name = "/buildup/cli/new/" + starter + ".yaml";
        try (InputStream in = Objects.requireNonNull(NewCommand.class.getResourceAsStream(name), name)) {
            return in.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
