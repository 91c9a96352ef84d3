package buildup.cli.command;

import buildup.cli.command.files.CatalogOption;
import buildup.cli.command.files.CommandForm;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.SayingOption;
import buildup.cli.command.files.StackLoader;
import buildup.cli.command.files.Streams;
import buildup.cli.command.files.TextOrJson;
import buildup.cli.report.JsonReport;
import buildup.cli.report.VerdictText;
import buildup.cli.table.Display;
import buildup.cli.tell.Json;
import buildup.cli.tell.SheetJson;
import buildup.engine.Answer;
import buildup.engine.judge.verdict.Ruling.Reply;
import buildup.engine.judge.verdict.Verdict;
import buildup.engine.judge.verdict.VerdictSheet;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

/** {@code check}: the verdicts alone, of any number of stacks. */
final class CheckCommand implements Callable<Integer> {
    private final Streams streams;
    private List<String> stacks = List.of();
    private TextOrJson format = TextOrJson.text;
    private final SayingOption saying = new SayingOption();
    private final CatalogOption catalog = new CatalogOption();

    CheckCommand(Streams streams) {
        this.streams = streams;
    }

    /** The words and options that it takes. */
    CommandForm form() {
        return CommandForm.of(
                        "check",
                        "Reports only the verdict: one line a stack, then what is wrong and what to look at.",
                        this)
                .words("STACK", "Stack documents; - is standard input.", asked -> stacks = asked)
                .with(form -> TextOrJson.addTo(form, asked -> format = asked))
                .with(saying::addTo)
                .with(catalog::addTo);
    }

    @Override
    public Integer call() {
        List<Answer> answers = stacks.stream().map(this::load).toList();
        if (format == TextOrJson.json) {
            streams.out()
                    .print(Json.list(answers.stream().map(CheckCommand::json).toList()) + "\n");
        } else {
            answers.forEach(this::say);
            answers.stream()
                    .filter(answer -> saying.wordy() || answer.known().isEmpty())
                    .forEach(answer -> streams.err().print(saying.said(spoken(answer), answer.file(), answer.unit())));
        }
        return answers.stream()
                .mapToInt(answer -> ExitCode.of(answer.notices()))
                .max()
                .orElse(ExitCode.CLEAN);
    }

    private Answer load(String word) {
        Notices notices = new Notices();
        return new StackLoader(new InputFiles(streams, notices, stacks), notices).load(word, catalog.files);
    }

    private void say(Answer answer) {
        if (answer.known().isEmpty()) {
            streams.out().print(Display.plain(answer.file()) + ": refused\n");
            return;
        }
        Verdict verdict = answer.known().get().verdict();
        long no = verdict.count(Reply.NO);
        streams.out()
                .print(Display.plain(answer.file())
                        + (no == 0 ? ": yes\n" : ": no, " + no + (no == 1 ? " row\n" : " rows\n")));
        if (!saying.quiet()) {
            streams.out().print(VerdictText.doubts(answer, answer.known().get()));
        }
    }

    /** Of a stack that was refused why; of any other all, where that is asked. */
    private List<Notice> spoken(Answer answer) {
        return answer.notices().stream()
                .filter(notice -> saying.wordy() || notice.level() == Level.REFUSAL)
                .toList();
    }

    private static Json json(Answer answer) {
        Json json = new Json().put("file", answer.file());
        answer.known()
                .ifPresent(known -> new SheetJson(new FigurePrinter(answer.unit()))
                        .put(json, List.of(VerdictSheet.of(known.verdict()))));
        return answer.known().isPresent()
                ? json
                : json.put("notices", JsonReport.notices(answer.notices(), Optional.of(answer.file()), answer.unit()));
    }
}
