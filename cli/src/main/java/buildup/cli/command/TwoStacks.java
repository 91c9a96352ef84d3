package buildup.cli.command;

import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.OutputFile;
import buildup.cli.command.files.SayingOption;
import buildup.cli.command.files.StackLoader;
import buildup.cli.command.files.Streams;
import buildup.cli.compare.Comparison;
import buildup.cli.compare.ComparisonCsv;
import buildup.cli.compare.ComparisonHtml;
import buildup.cli.compare.ComparisonJson;
import buildup.cli.compare.ComparisonText;
import buildup.cli.page.Page;
import buildup.cli.page.PageParts;
import buildup.cli.report.TextReport;
import buildup.cli.write.ShippedFont;
import buildup.engine.Answer;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** {@code report} of two stacks beside each other. */
record TwoStacks(Streams streams, ReportOptions options, SayingOption saying, List<Path> catalogs) {
    /** One of the two, with what was said of it and where it came from. */
    private record Loaded(Answer answer, List<Path> files) {}

    /** Reports both; the worst notice of either decides the exit code. */
    int report(String stack, String other) {
        Loaded a = load(stack);
        Loaded b = stack.equals("-") && other.equals("-") ? twice() : load(other);
        if (a.answer().known().isEmpty() || b.answer().known().isEmpty()) {
            return refuse(a.answer(), b.answer());
        }
        String report = written(a.answer(), b.answer());
        if (options.output.file().isEmpty()) {
            streams.out().print(report);
        } else {
            Notices notices = new Notices();
            List<Path> inputs =
                    Stream.of(a, b).flatMap(one -> one.files().stream()).toList();
            String kept = options.format == ReportOptions.Format.text
                    ? report + TextReport.notices(kept("A  ", a.answer()) + kept("B  ", b.answer()))
                    : report;
            if (!OutputFile.write(
                    options.output.file().get(), kept.getBytes(StandardCharsets.UTF_8), inputs, notices)) {
                return refuse(a.answer().refused(notices.sorted()), b.answer());
            }
        }
        if (options.format != ReportOptions.Format.json) {
            say(a.answer(), b.answer());
        }
        return exitCode(a.answer(), b.answer());
    }

    private Loaded load(String word) {
        Notices notices = new Notices();
        InputFiles files = new InputFiles(streams, notices);
        return new Loaded(new StackLoader(files, notices).whole(word, catalogs), files.read());
    }

    private static Loaded twice() {
        String name = InputFiles.STANDARD_INPUT;
        Answer answer = Answer.unread(name, List.of(CommandNotices.INPUT_TWICE.notice()));
        return new Loaded(answer, List.of());
    }

    private String written(Answer a, Answer b) {
        return switch (options.format) {
            case text -> Comparison.of(a, b).map(ComparisonText::write).orElse("");
            case json -> ComparisonJson.write(a, b);
            case csv -> Comparison.of(a, b).map(ComparisonCsv::write).orElse("");
            case html -> page(a, b);
        };
    }

    private static String page(Answer a, Answer b) {
        ShippedFont font = ShippedFont.load();
        String differences = Comparison.of(a, b).map(ComparisonHtml::beside).orElse("");
        return Page.of(
                List.of(PageParts.of(a, "a", font), PageParts.of(b, "b", font)),
                new Page.Above(differences, List.of()),
                Optional.empty());
    }

    private int refuse(Answer a, Answer b) {
        if (options.format == ReportOptions.Format.json) {
            streams.out().print(ComparisonJson.write(a, b));
        } else {
            say(a, b);
        }
        return exitCode(a, b);
    }

    /** Their files may have the same name: each line says which of the two it is about. */
    private void say(Answer a, Answer b) {
        streams.err().print(said("A  ", a) + said("B  ", b));
    }

    private String said(String which, Answer answer) {
        return marked(which, saying.said(answer.notices(), answer.file(), answer.unit()));
    }

    private String kept(String which, Answer answer) {
        return marked(which, saying.kept(answer.notices(), answer.file(), answer.unit()));
    }

    private static String marked(String which, String lines) {
        return lines.lines().map(line -> which + line + "\n").collect(Collectors.joining());
    }

    private static int exitCode(Answer a, Answer b) {
        return Math.max(ExitCode.of(a.notices()), ExitCode.of(b.notices()));
    }
}
