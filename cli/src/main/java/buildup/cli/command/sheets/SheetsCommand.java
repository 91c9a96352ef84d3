package buildup.cli.command.sheets;

import buildup.cli.command.files.CatalogOption;
import buildup.cli.command.files.CommandForm;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.SayingOption;
import buildup.cli.command.files.StackLoader;
import buildup.cli.command.files.Streams;
import buildup.cli.compare.ChangeWords;
import buildup.cli.compare.Comparison;
import buildup.cli.drawing.job.ShopDrawings;
import buildup.cli.drawing.job.ShopSheet;
import buildup.cli.drawing.job.Since;
import buildup.cli.drawing.sheet.Pages;
import buildup.cli.drawing.sheet.PaperSize;
import buildup.cli.write.LackingLetters;
import buildup.cli.write.ShippedFont;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.Cuts;
import buildup.engine.room.sticks.Limit;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

/** {@code sheets}: the shop drawings of a stack as one PDF. */
public final class SheetsCommand implements Callable<Integer> {
    private final Streams streams;
    private final Notices notices = new Notices();
    private String stack = "";
    private List<String> only = new ArrayList<>();
    private Optional<String> page = Optional.empty();
    private Optional<String> since = Optional.empty();
    private boolean outlineText;
    private String output = "";
    private final CatalogOption catalog = new CatalogOption();
    private final SayingOption saying = new SayingOption();

    public SheetsCommand(Streams streams) {
        this.streams = streams;
    }

    /** The words and options that it takes. */
    public CommandForm form() {
        return CommandForm.of(
                        "sheets",
                        "Makes the shop drawings of a stack: one PDF, at full size where sizes are taken from it.",
                        this)
                .word("STACK", "The stack document; - is standard input.", asked -> stack = asked)
                .list(
                        String.class,
                        "--only",
                        "NAME",
                        "Only these sheets: cover, section, pieces, sequence, lengths, sticks, light, season, room,"
                                + " proportion, clearance, tolerance, must, material, profiles, warnings (default: all that the stack has data for); and strip, story-pole, templates.",
                        asked -> only = asked)
                .option(
                        String.class,
                        "--page",
                        "NAME",
                        "The paper: letter, legal, tabloid, arch-b to arch-e, a4 to a0 (default: letter, or a4).",
                        asked -> page = Optional.of(asked))
                .option(
                        String.class,
                        "--since",
                        "OLD",
                        "An earlier version of the stack: changes are listed, and clouded on the section.",
                        asked -> since = Optional.of(asked))
                .flag(
                        "--outline-text",
                        "In HTML, draw letters as outlines, for a browser without the font; a PDF carries it.",
                        () -> outlineText = true)
                .needed(
                        String.class,
                        "-o",
                        "FILE",
                        "What to write, by its ending: .pdf; .html, one page to print; .zip, an archive to send of the stack,"
                                + " its catalogs, the PDF and the report, which opens again as a stack; folder/, one SVG for each"
                                + " sheet. - is standard output, as PDF.",
                        asked -> output = asked)
                .with(catalog::addTo)
                .with(saying::addTo);
    }

    @Override
    public Integer call() {
        Set<ShopSheet> wanted = wanted();
        Optional<PaperSize> paper = page.flatMap(name -> Pages.asked(name, notices));
        InputFiles files = new InputFiles(streams, notices);
        Answer answer = new StackLoader(files, notices).load(stack, catalog.files);
        Optional<Answer> old = since.map(word -> earlier(files, word));
        if (!notices.refused()) {
            answer.known().ifPresent(known -> {
                PaperSize on =
                        paper.orElseGet(() -> Pages.ofPrinter(answer.unit().isMetric()));
                SheetsOutput sheets = new SheetsOutput(streams, output, outlineText, files, notices);
                draw(answer, known, old, on, wanted, sheets.drawsLetters())
                        .ifPresent(drawn -> sheets.write(stack, catalog.files, answer, drawn));
            });
        }
        notices.addAll(answer.notices());
        streams.err().print(saying.said(notices.sorted(), answer.file(), answer.unit()));
        return ExitCode.of(notices);
    }

    /** What is wrong with the earlier document is said; what is doubtful in it is of yesterday. */
    private Answer earlier(InputFiles files, String word) {
        Notices own = new Notices();
        Answer old = new StackLoader(files, own).load(word, catalog.files);
        if (old.known().isEmpty()) {
            old.notices().forEach(notices::add);
        }
        return old;
    }

    private Set<ShopSheet> wanted() {
        Set<ShopSheet> wanted = EnumSet.noneOf(ShopSheet.class);
        for (String name : only) {
            Optional<ShopSheet> sheet = ShopSheet.named(name);
            sheet.ifPresent(wanted::add);
            if (sheet.isEmpty()) {
                notices.add(
                        SheetsNotices.UNKNOWN_SHEET.with("name", name).cure(Suggestion.phrase(name, ShopSheet.keys())));
            }
        }
        return only.isEmpty() ? EnumSet.copyOf(ShopSheet.usual()) : wanted;
    }

    private Optional<List<ShopDrawings.Drawn>> draw(
            Answer answer,
            Answers known,
            Optional<Answer> old,
            PaperSize paper,
            Set<ShopSheet> wanted,
            boolean lettersAreDrawn) {
        ShippedFont font = ShippedFont.load();
        Cuts cuts = Cuts.of(answer, Limit.usual());
        Since since = old.map(one -> since(one, answer, known)).orElse(Since.NOTHING);
        List<ShopDrawings.Drawn> drawn = ShopDrawings.of(answer, known, cuts, since, paper, font, wanted, notices);
        if (lettersAreDrawn && LackingLetters.told(SheetsOutput.scenes(answer, drawn), font, notices)) {
            // now the sheet of warnings says it too
            drawn = ShopDrawings.of(answer, known, cuts, since, paper, font, wanted, notices);
        }
        if (!only.isEmpty()) {
            Set<ShopSheet> there = drawn.stream().map(ShopDrawings.Drawn::sheet).collect(Collectors.toSet());
            wanted.stream()
                    .filter(sheet -> !there.contains(sheet))
                    .forEach(sheet -> notices.add(SheetsNotices.EMPTY_SHEET.with("name", sheet.key())));
        }
        if (drawn.isEmpty()) {
            notices.add(SheetsNotices.NO_SHEET.notice());
        }
        return notices.refused() ? Optional.empty() : Optional.of(drawn);
    }

    private Since since(Answer old, Answer now, Answers known) {
        List<String> changes = Comparison.of(old, now)
                .map(comparison -> ChangeWords.of(comparison, new FigurePrinter(now.unit())))
                .orElse(List.of());
        return new Since(
                old.file(),
                old.known().map(Answers::section),
                changes.isEmpty() ? List.of("Nothing.") : changes,
                known.heading().inForce().orElse("?"));
    }
}
