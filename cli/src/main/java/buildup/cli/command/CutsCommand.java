package buildup.cli.command;

import buildup.cli.command.ReportOptions.Format;
import buildup.cli.command.files.CatalogOption;
import buildup.cli.command.files.CommandAnswer;
import buildup.cli.command.files.CommandForm;
import buildup.cli.command.files.Delivery;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.SayingOption;
import buildup.cli.command.files.StackLoader;
import buildup.cli.command.files.Streams;
import buildup.cli.compare.CutsComparison;
import buildup.cli.report.CutsTelling;
import buildup.cli.table.Csv;
import buildup.cli.tell.Json;
import buildup.engine.Answer;
import buildup.engine.Cuts;
import buildup.engine.room.sticks.Limit;
import buildup.engine.solve.StickSearch;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** {@code cuts}: lengths round the corners, saw settings, sticks to buy and what they cost. */
final class CutsCommand implements Callable<Integer> {
    private final Streams streams;
    private final List<Path> inputs = new ArrayList<>();
    private String stack = "";
    private Optional<String> other = Optional.empty();
    private final ReportOptions options = new ReportOptions();
    private long steps = StickSearch.USUAL_STEPS;
    private double seconds = Double.POSITIVE_INFINITY;
    private final SayingOption saying = new SayingOption();
    private final CatalogOption catalog = new CatalogOption();

    CutsCommand(Streams streams) {
        this.streams = streams;
    }

    /** The words and options that it takes. */
    CommandForm form() {
        return CommandForm.of("cuts", "Lists lengths around corners, saw settings, sticks to buy and their cost.", this)
                .word("STACK", "The stack document; - is standard input.", asked -> stack = asked)
                .maybeWord("OTHER", "A second stack, set beside the first.", asked -> other = Optional.of(asked))
                .with(options::addTo)
                .option(
                        Long.class,
                        "--steps",
                        "COUNT",
                        "Steps of the search for each material (default: 20000000, a few seconds);"
                                + " the same number gives the same answer every time.",
                        asked -> steps = asked)
                .option(
                        Double.class,
                        "--seconds",
                        "COUNT",
                        "Stop searching after this many seconds; the answer may then differ from run to run.",
                        asked -> seconds = asked)
                .with(saying::addTo)
                .with(catalog::addTo);
    }

    @Override
    public Integer call() {
        if (!options.settle("cuts", streams, saying, InputFiles.nameOf(stack))) {
            return ExitCode.REFUSED;
        }
        ProgressBar bar = new ProgressBar(streams.waiting(), System::nanoTime, seconds);
        List<Cuts> all = steps < 1 || !(seconds >= 0) ? List.of(unlimited()) : all(bar);
        bar.end();
        boolean known = all.stream().allMatch(one -> one.known().isPresent());
        Notices failed = new Notices();
        if (known && !new Delivery(streams, options.output.file(), inputs).put(written(all), failed)) {
            all = all.stream().map(one -> one.refused(failed.sorted())).toList();
            known = false;
        }
        if (!known && options.format == Format.json) {
            streams.out().print(written(all));
        }
        if (options.format != Format.json) {
            say(all);
        }
        return all.stream().mapToInt(one -> ExitCode.of(one.notices())).max().orElse(0);
    }

    private String limit() {
        return Double.isFinite(seconds)
                ? BigDecimal.valueOf(seconds).stripTrailingZeros().toPlainString()
                : String.valueOf(seconds);
    }

    private Cuts cuts(String word, ProgressBar bar) {
        Notices notices = new Notices();
        InputFiles files = new InputFiles(streams, notices);
        Answer answer = new StackLoader(files, notices).load(word, catalog.files);
        inputs.addAll(files.read());
        Cuts cuts = Cuts.of(answer, new Limit(steps, bar));
        if (bar.cut()) {
            return cuts.saying(CommandNotices.OUT_OF_TIME.with("seconds", limit()));
        }
        return streams.waiting().interrupted() ? cuts.saying(CommandNotices.INTERRUPTED.notice()) : cuts;
    }

    private List<Cuts> all(ProgressBar bar) {
        Cuts first = cuts(stack, bar);
        return other.isEmpty()
                ? List.of(first)
                : List.of(first, stack.equals("-") && other.get().equals("-") ? twice() : cuts(other.get(), bar));
    }

    private static Cuts twice() {
        return refused(InputFiles.STANDARD_INPUT, CommandNotices.INPUT_TWICE.notice());
    }

    /** Nothing is asked of a search whose limit is none. */
    private Cuts unlimited() {
        return refused(
                InputFiles.nameOf(stack),
                steps < 1
                        ? CommandNotices.NO_STEPS.with("steps", Figure.count(steps))
                        : CommandNotices.NO_SECONDS.with("seconds", limit()));
    }

    private static Cuts refused(String name, Notice why) {
        return Cuts.unread(name, why);
    }

    private String written(List<Cuts> all) {
        List<CommandAnswer> told = all.stream()
                .map(one -> CommandAnswer.of(CutsTelling.of(one), one.answer().file(), one.notices()))
                .toList();
        boolean two = all.size() == 2;
        return switch (options.format) {
            case text ->
                two
                        ? new CutsComparison(all.get(0), all.get(1)).text()
                        : told.get(0).text(options.output.file().isPresent());
            case json -> two ? beside(all, told) : told.get(0).json();
            case csv ->
                CommandAnswer.csv(told)
                        + all.stream()
                                .map(CutsTelling::shopping)
                                .filter(list -> !list.isEmpty())
                                .map(list -> Csv.between() + list)
                                .collect(Collectors.joining());
            case html ->
                CommandAnswer.html(told, two ? new CutsComparison(all.get(0), all.get(1)).tables() : List.of());
        };
    }

    private static String beside(List<Cuts> all, List<CommandAnswer> told) {
        Json json =
                new Json().put("a", told.get(0).object()).put("b", told.get(1).object());
        return new CutsComparison(all.get(0), all.get(1)).put(json).written() + "\n";
    }

    private void say(List<Cuts> all) {
        for (int i = 0; i < all.size(); i++) {
            String which = all.size() == 1 ? "" : i == 0 ? "A  " : "B  ";
            Stream<String> lines = saying.said(
                            all.get(i).notices(),
                            all.get(i).answer().file(),
                            all.get(i).answer().unit())
                    .lines();
            lines.forEach(line -> streams.err().print(which + line + "\n"));
        }
    }
}
