package buildup.cli.command;

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
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code new}: a stack to start from. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        description = "Writes a commented stack to start from.")
final class NewCommand implements Callable<Integer> {
    private static final List<String> STARTERS = List.of("cornice", "door-head", "cap", "mantel");

    private final Streams streams;

    @Parameters(
            index = "0",
            arity = "0..1",
            defaultValue = "cornice",
            paramLabel = "STARTER",
            description = "cornice, door-head, cap or mantel (default: cornice).")
    private String starter = "";

    @Option(
            names = "-o",
            paramLabel = "FILE",
            description = "Where to write (default: standard output); never overwrites.")
    private Optional<Path> output = Optional.empty();

    NewCommand(Streams streams) {
        this.streams = streams;
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
