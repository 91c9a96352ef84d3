package buildup.cli.command;

import buildup.cli.command.files.CatalogOption;
import buildup.cli.command.files.CommandForm;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.StackLoader;
import buildup.cli.command.files.Streams;
import buildup.cli.report.NoticeText;
import buildup.cli.watch.Follower;
import buildup.cli.watch.PageServer;
import buildup.cli.watch.Watch;
import buildup.cli.watch.WatchNotices;
import buildup.cli.write.ShippedFont;
import buildup.engine.Answer;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notices;
import java.io.IOException;
import java.net.BindException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;

/** {@code watch}: a page in the browser that follows a stack's file. */
final class WatchCommand implements Callable<Integer> {
    private static final int LAST_PORT = 65535;

    private final Streams streams;
    private String stack = "";
    private Optional<String> beside = Optional.empty();
    private int port;
    private final CatalogOption catalog = new CatalogOption();

    WatchCommand(Streams streams) {
        this.streams = streams;
    }

    /** The words and options that it takes. */
    CommandForm form() {
        return CommandForm.of(
                        "watch",
                        "Shows a stack, or two beside each other, in the browser, and shows it again after every save.",
                        this)
                .word("STACK", "The stack document.", asked -> stack = asked)
                .option(
                        String.class,
                        "--beside",
                        "OTHER",
                        "A second stack, set beside the first.",
                        asked -> beside = Optional.of(asked))
                .option(
                        Integer.class,
                        "--port",
                        "PORT",
                        "The port of the page on this machine (default: any free one).",
                        asked -> port = asked)
                .with(catalog::addTo);
    }

    @Override
    public Integer call() throws IOException {
        Notices notices = new Notices();
        List<String> words = Stream.concat(Stream.of(stack), beside.stream()).toList();
        List<Path> files = words.stream().flatMap(word -> file(word, notices)).toList();
        if (port < 0 || port > LAST_PORT) {
            notices.add(CommandNotices.NO_PORT
                    .with("port", Integer.toString(port))
                    .with("last", Integer.toString(LAST_PORT)));
        }
        if (!notices.refused()) {
            follow(words, files, notices);
        }
        streams.err().print(NoticeText.write(notices.sorted(), InputFiles.nameOf(stack), LengthUnit.INCH));
        return ExitCode.of(notices);
    }

    /** The file to follow; it must be there at first. */
    private Stream<Path> file(String word, Notices notices) {
        if (word.equals("-")) {
            notices.add(CommandNotices.INPUT_FOLLOWED.notice());
            return Stream.empty();
        }
        try {
            Path path = Path.of(word);
            if (!Files.isRegularFile(path)) {
                // says why, and what else is there
                new InputFiles(streams, notices).file(InputFiles.Kind.STACK, path);
            }
            return Stream.of(path);
        } catch (InvalidPathException wrong) {
            new InputFiles(streams, notices).stack(word);
            return Stream.empty();
        }
    }

    private void follow(List<String> words, List<Path> files, Notices notices) throws IOException {
        Follower<List<Answer>> follower = new Follower<>(() -> read(words), files);
        Watch watch = new Watch(follower.first(), ShippedFont.load());
        try (PageServer server = PageServer.open(watch.latest(), port)) {
            Thread ending = new Thread(() -> end(server));
            Runtime.getRuntime().addShutdownHook(ending);
            try {
                streams.out().print("The page: " + server.address() + "\nIt follows every save. Ctrl-C ends it.\n");
                // whoever does not learn where the page is has no use for it
                if (streams.undelivered().isEmpty()) {
                    follower.run(watch::take);
                }
            } finally {
                Runtime.getRuntime().removeShutdownHook(ending);
            }
        } catch (BindException taken) {
            notices.add(CommandNotices.TAKEN.with("port", Integer.toString(port)));
        }
    }

    /** Ctrl-C is how this command is meant to end, so it ends well; left alone, Java would call it a failure. */
    private void end(PageServer server) {
        server.close();
        streams.flush();
        Runtime.getRuntime().halt(ExitCode.CLEAN);
    }

    private Follower.Reading<List<Answer>> read(List<String> words) {
        List<Answer> answers = new ArrayList<>();
        List<Path> files = new ArrayList<>();
        for (String word : words) {
            Notices notices = new Notices();
            InputFiles input = new InputFiles(streams, notices);
            answers.add(answer(word, input, notices));
            files.addAll(input.asked());
        }
        return new Follower.Reading<>(
                answers, answers.stream().allMatch(one -> one.known().isPresent()), files);
    }

    /** A fault inside is told on the page, and the next save is another try. */
    private Answer answer(String word, InputFiles input, Notices notices) {
        try {
            Answer answer = new StackLoader(input, notices).load(word, catalog.files);
            answer.notices();
            return answer;
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            notices.add(WatchNotices.fault(fault));
            return Answer.unread(InputFiles.nameOf(word), notices.sorted());
        }
    }
}
