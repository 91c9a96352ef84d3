package buildup.cli.command.search;

import buildup.cli.command.files.CatalogOption;
import buildup.cli.command.files.CommandAnswer;
import buildup.cli.command.files.CommandForm;
import buildup.cli.command.files.Delivery;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.OutputFile;
import buildup.cli.command.files.SayingOption;
import buildup.cli.command.files.StackLoader;
import buildup.cli.command.files.Streams;
import buildup.cli.command.files.TextOrJson;
import buildup.cli.command.files.Waiting;
import buildup.cli.report.SearchTelling;
import buildup.engine.Searched;
import buildup.engine.judge.search.SearchLimits;
import buildup.engine.judge.search.SearchPlan;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Mapping;
import buildup.shared.document.edit.Editor;
import buildup.shared.edit.Content;
import buildup.shared.edit.Edit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicLong;

/** {@code search}: solves backwards for the sizes that a document leaves free. */
public final class SearchCommand implements Callable<Integer> {
    private static final String FREE = "--free";

    private static final String MUST = "--must";

    private static final String WISH = "--wish";

    /** By a key of the document, the option that adds to it. */
    private static final Map<String, String> ADD = Map.of("must", MUST, "wish", WISH);

    /** So many stacks are judged without a word before. */
    private static final long LONG_SEARCH = 20_000;

    /** So many are judged to tell how long all will take. */
    private static final int SAMPLE = 40;

    /** What the place of a named size begins with. */
    private static final String SIZES = "sizes.";

    private final Streams streams;
    private String stack = "";
    private TextOrJson format = TextOrJson.text;
    private Optional<Path> folder = Optional.empty();
    private Optional<String> why = Optional.empty();
    private List<String> free = List.of();
    private List<String> must = List.of();
    private List<String> wish = List.of();
    private long tries = SearchLimits.USUAL_TRIES;
    private int answers = SearchLimits.USUAL_ANSWERS;
    private final SayingOption saying = new SayingOption();
    private final CatalogOption catalog = new CatalogOption();

    /** @param streams where it reads and writes */
    public SearchCommand(Streams streams) {
        this.streams = streams;
    }

    /** The words and options that it takes. */
    public CommandForm form() {
        return CommandForm.of(
                        "search",
                        "Finds the free sizes that meet every line under 'must:' and come nearest to 'wish:'.",
                        this)
                .word("STACK", "The stack document; - is standard input.", asked -> stack = asked)
                .with(form -> TextOrJson.addTo(form, asked -> format = asked))
                .option(
                        Path.class,
                        "-o",
                        "FOLDER",
                        "Folder for the answers: each as a stack, and a page that shows them.",
                        asked -> folder = Optional.of(asked))
                .option(
                        String.class,
                        "--why",
                        "RULE",
                        "Show what each free size does to one rule, as 'reveal of bead over frieze >= 1/4'.",
                        asked -> why = Optional.of(asked))
                .repeated(
                        String.class,
                        FREE,
                        "PLACE=CHOICES",
                        "Leave a size free, as 'sizes.lip=between 1/8 and 1 by 1/16'; may be repeated.",
                        asked -> free = asked)
                .repeated(
                        String.class,
                        MUST,
                        "RULE",
                        "One more line under 'must:'; may be repeated.",
                        asked -> must = asked)
                .repeated(
                        String.class,
                        WISH,
                        "WISH",
                        "One more line under 'wish:'; may be repeated.",
                        asked -> wish = asked)
                .option(
                        Long.class,
                        "--tries",
                        "COUNT",
                        "How many stacks may be tried (default: 50000).",
                        asked -> tries = asked)
                .option(
                        Integer.class,
                        "--answers",
                        "COUNT",
                        "How many answers are wanted (default: 5).",
                        asked -> answers = asked)
                .with(saying::addTo)
                .with(catalog::addTo);
    }

    @Override
    public Integer call() {
        Notices notices = new Notices();
        InputFiles files = new InputFiles(streams, notices);
        Waiting waiting = streams.waiting();
        // from here on, whoever interrupts gets the best so far
        waiting.searchBegins();
        limited(notices);
        folder.ifPresent(asked -> OutputFile.mayBeFolder(asked, notices));
        Optional<String> written = files.text(InputFiles.Kind.STACK, stack);
        Optional<Document> document = written.flatMap(text -> read(files, text));
        Optional<String> text =
                written.flatMap(known -> Editor.edit(files.name(stack), known, edits(document, notices), notices));
        long began = System.nanoTime();
        AtomicLong done = new AtomicLong();
        SearchLimits limits = new SearchLimits(
                Math.max(1, tries),
                Math.max(1, answers),
                1,
                this::plan,
                waiting::interrupted,
                judged -> waiting.searched(done.addAndGet(judged), tries));
        Optional<Document> sought = text.flatMap(
                known -> read(files, known).map(edited -> OptionMarks.of(edited, document.orElse(edited), ADD, FREE)));
        Searched searched = new StackLoader(files, notices).searched(sought, stack, catalog.files, limits, why);
        double seconds = (System.nanoTime() - began) / 1e9;
        Map<List<Integer>, String> answered = Map.of();
        if (folder.isPresent() && searched.result().isPresent()) {
            Notices failed = new Notices();
            answered = put(searched, folder.get(), text.orElse(""), files, seconds, failed);
            searched = failed.refused() ? searched.refused(failed.sorted()) : searched.saying(failed.sorted());
        }
        waiting.searchEnded();
        return told(searched, answered, seconds);
    }

    /** What is wrong with a text was said when it was first read. */
    private Optional<Document> read(InputFiles files, String text) {
        return DocumentReader.read(files.name(stack), text.getBytes(StandardCharsets.UTF_8), new Notices());
    }

    private void limited(Notices notices) {
        Map.of("--tries", tries, "--answers", (long) answers).entrySet().stream()
                .filter(limit -> limit.getValue() < 1)
                .sorted(Map.Entry.comparingByKey())
                .forEach(limit -> notices.add(FreedNotices.TOO_FEW
                        .with("option", limit.getKey())
                        .with("count", String.valueOf(limit.getValue()))
                        .at(new Mark(limit.getKey(), Mark.NO_LINE, Mark.NO_LINE))));
    }

    /** Writes the answers and their page, and says by their choices in which files they stand. */
    private Map<List<Integer>, String> put(
            Searched searched, Path into, String text, InputFiles files, double seconds, Notices failed) {
        if (!OutputFile.folder(into, failed)) {
            return Map.of();
        }
        SearchFolder answers = new SearchFolder(into, text, files.name(stack), files.catalogs(stack));
        Map<List<Integer>, String> written = answers.write(searched, files.read(), failed);
        answers.page(searched, SearchTelling.of(searched, written, seconds), written, files.read(), failed);
        if (!catalog.files.isEmpty()) {
            failed.add(FreedNotices.CATALOG_AGAIN.with("folder", into.toString()));
        }
        return written;
    }

    /** A search that takes a while is told before it begins: how many stacks, how long about, and what will be done. */
    private void plan(SearchPlan plan) {
        if (plan.most() < LONG_SEARCH) {
            return;
        }
        plan.sample().accept(SAMPLE);
        long began = System.nanoTime();
        plan.sample().accept(SAMPLE);
        double each = (System.nanoTime() - began) / 1e9 / SAMPLE;
        double seconds = each * plan.most() / Runtime.getRuntime().availableProcessors();
        String time =
                seconds < 90 ? Math.max(1, Math.round(seconds)) + " seconds" : Math.round(seconds / 60) + " minutes";
        String tried = plan.all()
                ? "all of them are tried"
                : plan.most()
                        + " of them are tried, those with the fewest changes, then from other starts downhill, then"
                        + " what is not ruled out";
        streams.err().print(plan.space() + " stacks: " + tried + ", in about " + time + ".\n");
        streams.err().flush();
    }

    /** What the command line adds to the document. */
    private List<Edit> edits(Optional<Document> document, Notices notices) {
        List<Edit> edits = new ArrayList<>();
        for (String one : free) {
            int sign = one.indexOf('=');
            String place = sign <= 0 ? "" : one.substring(0, sign).strip();
            if (sign <= 0) {
                notices.add(FreedNotices.NOT_FREED.with("words", one));
            } else if (isSize(place, document, notices)) {
                edits.add(new Edit.Set(
                        place, new Content.Text(one.substring(sign + 1).strip())));
            }
        }
        must.forEach(rule -> edits.add(new Edit.Add("must", Integer.MAX_VALUE, new Content.Text(rule))));
        wish.forEach(line -> edits.add(new Edit.Add("wish", Integer.MAX_VALUE, new Content.Text(line))));
        return edits;
    }

    /** Named sizes have any name; one that the document does not have would be a size of nothing. */
    private static boolean isSize(String place, Optional<Document> document, Notices notices) {
        if (!place.startsWith(SIZES) || document.isEmpty()) {
            return true;
        }
        String name = place.substring(SIZES.length());
        List<String> names = document.get().root().get("sizes").stream()
                .filter(Mapping.class::isInstance)
                .flatMap(sizes -> ((Mapping) sizes).entries().stream())
                .map(entry -> entry.key().text())
                .toList();
        if (!names.contains(name)) {
            notices.add(FreedNotices.NO_SUCH_SIZE
                    .with("name", name)
                    .with("nearest", Suggestion.phrase(name, names))
                    .at(new Mark(FREE, Mark.NO_LINE, Mark.NO_LINE)));
        }
        return names.contains(name);
    }

    private int told(Searched searched, Map<List<Integer>, String> written, double seconds) {
        CommandAnswer answer = CommandAnswer.of(
                SearchTelling.of(searched, written, seconds), searched.answer().file(), searched.notices());
        boolean known = searched.result().isPresent() || searched.why().isPresent();
        if (format == TextOrJson.json) {
            streams.out().print(answer.json());
        } else {
            if (known) {
                new Delivery(streams, Optional.empty(), List.of()).put(answer.text(false), new Notices());
            }
            streams.err()
                    .print(saying.said(searched.notices(), searched.answer().file(), searched.unit()));
        }
        return ExitCode.of(searched.notices());
    }
}
