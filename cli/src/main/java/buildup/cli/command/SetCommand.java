package buildup.cli.command;

import buildup.cli.command.files.CatalogOption;
import buildup.cli.command.files.ChangedFile;
import buildup.cli.command.files.CommandForm;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.StackLoader;
import buildup.cli.command.files.Streams;
import buildup.cli.report.NoticeText;
import buildup.engine.Answer;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.edit.Editor;
import buildup.shared.edit.Edit;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

/** {@code set}: one change of a stack, the rest of its text untouched. */
final class SetCommand implements Callable<Integer> {
    private final Streams streams;
    private final Notices notices = new Notices();
    private String stack = "";
    private String place = "";
    private String value = "";
    private Optional<Path> output = Optional.empty();
    private final CatalogOption catalog = new CatalogOption();

    SetCommand(Streams streams) {
        this.streams = streams;
    }

    /** The words and options that it takes. */
    CommandForm form() {
        return CommandForm.of(
                        "set",
                        "Changes one value of a stack in its file and leaves the rest of the text as it is.",
                        this)
                .word("STACK", "The stack document (- for standard input).", asked -> stack = asked)
                .word("PLACE", "What to change: a piece or a block, a dot, its key.", asked -> place = asked)
                .word("VALUE", "The new value; a list in [ ] or keys in { } as in the file.", asked -> value = asked)
                .option(
                        Path.class,
                        "-o",
                        "FILE",
                        "Where to write (default: into the stack itself; for - to standard output).",
                        asked -> output = Optional.of(asked))
                .with(catalog::addTo)
                .footer(
                        "",
                        "Places: title, sizes.lip, space.ceiling, eyes.standing.height, frieze.profile, frieze.flip.",
                        "A key that is not there yet is added. A new name goes wherever the old one is mentioned.",
                        "A change that would be refused is reported, and the file stays as it was.");
    }

    @Override
    public Integer call() {
        String name = InputFiles.nameOf(stack);
        Optional<String> before = new InputFiles(streams, notices).ownText(stack);
        List<Edit> edits = List.of(new Edit.Set(place, Editor.typed(value)));
        Optional<String> after = before.flatMap(text -> Editor.edit(name, text, edits, notices));
        int written = ExitCode.CLEAN;
        LengthUnit unit = LengthUnit.INCH;
        if (after.isPresent()) {
            Answer answer = read(name, after.get());
            unit = answer.unit();
            List<Notice> known = refusals(read(name, before.get()));
            List<Notice> refused = refusals(answer);
            notices.addAll(refused);
            boolean worse = refused.stream().anyMatch(notice -> known.stream().noneMatch(old -> same(old, notice)));
            written = worse
                    ? ExitCode.CLEAN
                    : new ChangedFile(streams, stack, output, notices).put(before.get(), after.get());
        }
        streams.err().print(NoticeText.write(notices.sorted(), name, unit));
        return Math.max(written, ExitCode.of(notices));
    }

    private Answer read(String name, String text) {
        Notices found = new Notices();
        StackLoader loader = new StackLoader(new InputFiles(streams, found), found);
        return loader.answer(
                DocumentReader.read(name, text.getBytes(StandardCharsets.UTF_8), found), stack, catalog.files);
    }

    private static List<Notice> refusals(Answer answer) {
        return answer.read().stream()
                .filter(notice -> notice.level() == Level.REFUSAL)
                .toList();
    }

    /** Whether two notices say the same, wherever they stand. */
    private static boolean same(Notice one, Notice other) {
        return one.nowhere().equals(other.nowhere());
    }
}
