package buildup.cli.command.search;

import buildup.cli.command.files.CatalogOption;
import buildup.cli.command.files.CommandAnswer;
import buildup.cli.command.files.CommandForm;
import buildup.cli.command.files.Delivery;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.SayingOption;
import buildup.cli.command.files.StackLoader;
import buildup.cli.command.files.Streams;
import buildup.cli.command.files.Waiting;
import buildup.cli.report.SearchTelling;
import buildup.engine.Searched;
import buildup.engine.judge.search.SearchLimits;
import buildup.engine.judge.search.SearchPlan;
import buildup.shared.document.edit.Editor;
import buildup.shared.edit.Content;
import buildup.shared.edit.Edit;
import buildup.shared.notice.Notices;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicLong;

/** {@code search}: solves backwards for the sizes that a document leaves free. */
public final class SearchCommand implements Callable<Integer> {
    /** The forms in which what was found is written. */
    enum Format {
        text,
        json
    }

    /** So many stacks are judged without a word before. */
    private static final long LONG_SEARCH = 20_000;

    /** So many are judged to tell how long all will take. */
    private static final int SAMPLE = 40;

    private final Streams streams;
    private String stack = "";
    private Format format = Format.text;
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
                .option(
                        Format.class,
                        "--format",
                        "FORMAT",
                        "${COMPLETION-CANDIDATES} (default: text).",
                        asked -> format = asked)
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
                        "--free",
                        "PLACE=CHOICES",
                        "Leave a size free, as 'sizes.lip=between 1/8 and 1 by 1/16'; may be repeated.",
                        asked -> free = asked)
                .repeated(
                        String.class,
                        "--must",
                        "RULE",
                        "One more line under 'must:'; may be repeated.",
                        asked -> must = asked)
                .repeated(
                        String.class,
                        "--wish",
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
        Optional<String> text = files.text(InputFiles.Kind.STACK, stack)
                .flatMap(read -> Editor.edit(files.name(stack), read, edits(notices), notices));
        long began = System.nanoTime();
        Waiting waiting = streams.waiting();
        AtomicLong done = new AtomicLong();
        SearchLimits limits = new SearchLimits(
                Math.max(1, tries),
                Math.max(1, answers),
                1,
                this::plan,
                waiting::interrupted,
                judged -> waiting.searched(done.addAndGet(judged), tries));
        Searched searched = new StackLoader(files, notices).searched(text, stack, catalog.files, limits, why);
        waiting.searchEnded();
        double seconds = (System.nanoTime() - began) / 1e9;
        Map<List<Integer>, String> written = Map.of();
        if (folder.isPresent() && searched.result().isPresent()) {
            Notices failed = new Notices();
            SearchFolder answers = new SearchFolder(folder.get(), text.orElse(""), files.name(stack));
            written = answers.write(searched, files.read(), failed);
            answers.page(searched, SearchTelling.of(searched, written, seconds), written, files.read(), failed);
            if (failed.refused()) {
                searched = searched.refused(failed.sorted());
            }
        }
        return told(searched, written, seconds);
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
    private List<Edit> edits(Notices notices) {
        List<Edit> edits = new ArrayList<>();
        for (String one : free) {
            int sign = one.indexOf('=');
            if (sign <= 0) {
                notices.add(FreedNotices.NOT_FREED.with("words", one));
            } else {
                edits.add(new Edit.Set(
                        one.substring(0, sign).strip(),
                        new Content.Text(one.substring(sign + 1).strip())));
            }
        }
        must.forEach(rule -> edits.add(new Edit.Add("must", Integer.MAX_VALUE, new Content.Text(rule))));
        wish.forEach(line -> edits.add(new Edit.Add("wish", Integer.MAX_VALUE, new Content.Text(line))));
        return edits;
    }

    private int told(Searched searched, Map<List<Integer>, String> written, double seconds) {
        CommandAnswer answer = CommandAnswer.of(
                SearchTelling.of(searched, written, seconds), searched.answer().file(), searched.notices());
        boolean known = searched.result().isPresent() || searched.why().isPresent();
        if (format == Format.json) {
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
