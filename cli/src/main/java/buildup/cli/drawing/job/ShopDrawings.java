package buildup.cli.drawing.job;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.hold.HoldsDrawing;
import buildup.cli.drawing.hold.SeasonDrawing;
import buildup.cli.drawing.hold.StepsDrawing;
import buildup.cli.drawing.look.ElevationDrawing;
import buildup.cli.drawing.look.RaysDrawing;
import buildup.cli.drawing.look.SightDrawing;
import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.Paper;
import buildup.cli.drawing.paper.PaperPage;
import buildup.cli.drawing.room.PlanDrawing;
import buildup.cli.drawing.room.SticksDrawing;
import buildup.cli.drawing.section.SectionDrawing;
import buildup.cli.drawing.sheet.PageFlow;
import buildup.cli.drawing.sheet.PaperSize;
import buildup.cli.report.NoticeText;
import buildup.cli.report.TextReport;
import buildup.cli.report.VerdictText;
import buildup.cli.scene.TextMeasure;
import buildup.cli.table.Table;
import buildup.cli.table.TableCell;
import buildup.cli.tell.SheetTables;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.Cuts;
import buildup.engine.buy.BuySheets;
import buildup.engine.hold.fixing.FixingSheets;
import buildup.engine.hold.order.OrderSheets;
import buildup.engine.hold.season.SeasonSheets;
import buildup.engine.hold.support.SupportSheets;
import buildup.engine.judge.verdict.Ruling;
import buildup.engine.judge.verdict.Verdict;
import buildup.engine.look.light.LightSheets;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.sight.SightSheets;
import buildup.engine.look.sight.Sighting;
import buildup.engine.room.run.CutSheets;
import buildup.engine.room.sticks.CutList;
import buildup.engine.room.sticks.StickSheets;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.SectionSheets;
import buildup.engine.section.heading.JobSheet;
import buildup.engine.section.heading.Revision;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notices;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** Draws the shop drawings of a stack, sheet by sheet; a sheet for which it has no data has no pages. */
public final class ShopDrawings {
    private static final double GAP = 0.2;

    /** A column names so many pieces; more are counted. */
    private static final int MOST_NAMED = 6;

    private final Answer answer;
    private final Answers known;
    private final Optional<Cuts.Known> cuts;
    private final Since since;
    private final PageFrame frame;
    private final FigurePrinter printer;
    private final Notices notices;

    private ShopDrawings(Answer answer, Answers known, Cuts cuts, Since since, PageFrame frame, Notices notices) {
        this.answer = answer;
        this.known = known;
        this.cuts = cuts.known();
        this.since = since;
        this.frame = frame;
        this.printer = new FigurePrinter(answer.unit());
        this.notices = notices;
    }

    /**
     * One sheet with its pages.
     *
     * @param pages none when the stack has no data for it
     */
    public record Drawn(ShopSheet sheet, List<PaperPage> pages) {
        /** Copies the list. */
        public Drawn {
            pages = List.copyOf(pages);
        }
    }

    /**
     * The sheets that are wanted, in their order, without those that hold nothing.
     *
     * @param known of the answer
     * @param since what changed since an earlier document
     * @param notices told what takes too many pages
     */
    public static List<Drawn> of(
            Answer answer,
            Answers known,
            Cuts cuts,
            Since since,
            PaperSize paper,
            TextMeasure measure,
            Set<ShopSheet> wanted,
            Notices notices) {
        JobSheet job = known.heading();
        PageFrame frame = new PageFrame(
                paper,
                new JobStrip(answer.title(), job).strip(),
                measure,
                answer.unit().isMetric());
        ShopDrawings drawings = new ShopDrawings(answer, known, cuts, since, frame, notices);
        List<Drawn> drawn = new ArrayList<>();
        for (ShopSheet sheet : ShopSheet.values()) {
            if (wanted.contains(sheet) && sheet != ShopSheet.COVER) {
                List<PaperPage> pages = drawings.pages(sheet);
                if (!pages.isEmpty()) {
                    drawn.add(new Drawn(sheet, pages));
                }
            }
        }
        if (wanted.contains(ShopSheet.COVER)) {
            drawn.add(0, new Drawn(ShopSheet.COVER, drawings.cover(drawn)));
        }
        return drawn;
    }

    private List<PaperPage> pages(ShopSheet sheet) {
        return switch (sheet) {
            case COVER -> List.of();
            case SECTION ->
                SectionDrawing.pages(
                        section(), frame, texts -> since.marks(section(), texts, frame.measure()), notices);
            case PIECES ->
                flowing(sheet, flow -> tables(flow, new PieceHeights(section(), known.fixed(), printer).tables()));
            case SEQUENCE -> sequence(sheet);
            case LENGTHS -> lengths(sheet);
            case STICKS -> sticks();
            case LIGHT -> light(sheet);
            case SEASON -> season(sheet);
            case ROOM, PROPORTION, CLEARANCE, TOLERANCE, MUST ->
                new JudgedPages(known, printer, notices).pages(sheet, frame);
            case MATERIAL -> material(sheet);
            case PROFILES -> new ProfilePages(known, printer, notices).pages(frame);
            case WARNINGS -> warnings(sheet);
            case STRIP -> new TapeStrip(section(), frame.measure(), printer).pages(known.lights(), frame, notices);
            case STORY_POLE -> new StoryPole(section(), frame.measure(), printer).pages(frame, notices);
            case TEMPLATES -> new TemplatePages(known, cuts.map(Cuts.Known::job), printer, notices).pages(frame);
        };
    }

    private Section section() {
        return known.section();
    }

    private List<PaperPage> flowing(ShopSheet sheet, Consumer<PageFlow> written) {
        return flowing(sheet, List.of(), written);
    }

    /** Pages with a title, what is said of them all, and what is written below that. */
    private List<PaperPage> flowing(ShopSheet sheet, List<String> said, Consumer<PageFlow> written) {
        return Paper.flowing(frame, sheet.title(), "none", flow -> {
            flow.lines(sheet.title(), Drafting.TITLE);
            // at the head, since at the foot they would often stand alone on a page
            flow.lines(printer.legend(), Drafting.TEXT);
            said.forEach(line -> flow.lines(line, Drafting.TEXT));
            flow.gap(GAP);
            written.accept(flow);
        });
    }

    private void tables(PageFlow flow, List<Table> tables) {
        tables.forEach(table -> {
            flow.table(table);
            flow.gap(GAP);
        });
    }

    private List<Table> told(List<Sheet> sheets) {
        return new SheetTables(printer).of(sheets);
    }

    private List<PaperPage> sequence(ShopSheet sheet) {
        List<PaperPage> pages = new ArrayList<>();
        if (!known.order().steps().isEmpty()) {
            pages.addAll(StepsDrawing.pages(section(), known.order(), frame));
        }
        pages.add(Paper.scaled(
                frame,
                "What holds it",
                smaller -> HoldsDrawing.forScale(
                        section(), known.support(), known.fixed(), known.proposals(), smaller, frame.measure())));
        List<Table> tables = new ArrayList<>(told(OrderSheets.of(section(), known.order(), known.job())));
        tables.addAll(told(FixingSheets.of(section(), known.fixed(), known.proposals())));
        tables.addAll(told(SupportSheets.of(section(), known.support(), known.pulls())));
        if (!tables.isEmpty()) {
            pages.addAll(flowing(sheet, List.of(TextReport.CAUTION), flow -> tables(flow, tables)));
        }
        return pages;
    }

    private List<PaperPage> lengths(ShopSheet sheet) {
        if (cuts.isEmpty()) {
            return List.of();
        }
        List<Phrase> cautions = CutSheets.cautions(cuts.get().covings());
        List<PaperPage> pages = new ArrayList<>(PlanDrawing.pages(cuts.get().job(), frame));
        pages.addAll(flowing(
                sheet,
                cautions.stream().map(printer::print).toList(),
                flow -> tables(
                        flow,
                        told(CutSheets.of(cuts.map(Cuts.Known::job), cuts.get().covings())))));
        return pages;
    }

    private Optional<CutList> list() {
        return cuts.flatMap(Cuts.Known::list);
    }

    private List<PaperPage> sticks() {
        return list().filter(list -> !list.pieces().isEmpty())
                .map(list -> SticksDrawing.pages(cuts.orElseThrow().job(), list, frame))
                .orElse(List.of());
    }

    private List<PaperPage> light(ShopSheet sheet) {
        List<PaperPage> pages = new ArrayList<>();
        for (Lighting light : known.lights()) {
            String name = "Front in " + light.light().name();
            pages.add(Paper.scaled(
                    frame, name, smaller -> ElevationDrawing.forScale(section(), light, smaller, frame.measure())));
        }
        for (Lighting light : known.lights()) {
            pages.add(Paper.scaled(
                    frame,
                    "In " + light.light().name(),
                    smaller -> RaysDrawing.forScale(section(), light, smaller, frame.measure())));
        }
        for (Sighting sight : known.sights()) {
            pages.add(Paper.scaled(
                    frame,
                    "Seen by " + sight.eye().name(),
                    smaller -> SightDrawing.forScale(section(), sight, smaller, frame.measure())));
        }
        List<Table> tables = new ArrayList<>(told(LightSheets.of(section(), known.lights())));
        tables.addAll(told(SightSheets.of(section(), known.sights(), known.approaches())));
        if (!tables.isEmpty()) {
            pages.addAll(flowing(sheet, flow -> tables(flow, tables)));
        }
        return pages;
    }

    private List<PaperPage> season(ShopSheet sheet) {
        if (!known.year().asked()) {
            return List.of();
        }
        List<PaperPage> pages = new ArrayList<>();
        pages.add(Paper.scaled(
                frame,
                sheet.title(),
                smaller -> SeasonDrawing.forScale(section(), known.year(), SEASON_TIMES, smaller, frame.measure())));
        pages.addAll(flowing(sheet, flow -> tables(flow, told(SeasonSheets.of(section(), known.year())))));
        return pages;
    }

    /** Movement is drawn so many times as large: true to scale it is a hair. */
    private static final int SEASON_TIMES = 10;

    private List<PaperPage> material(ShopSheet sheet) {
        List<Table> tables = new ArrayList<>(told(List.of(SectionSheets.totals(section()))));
        list().ifPresent(list -> tables.addAll(told(StickSheets.of(Optional.of(list)))));
        tables.addAll(told(BuySheets.of(known.purchases())));
        cuts.ifPresent(cut -> tables.addAll(told(BuySheets.of(Optional.of(cut.shopping())))));
        return flowing(sheet, flow -> tables(flow, tables));
    }

    private List<PaperPage> warnings(ShopSheet sheet) {
        Notices all = new Notices();
        all.addAll(answer.notices());
        all.addAll(notices.sorted());
        List<NoticeText.Said> said = NoticeText.said(all.sorted(), answer.file(), answer.unit());
        List<String> first = new ArrayList<>(notChecked().stream().toList());
        first.add(TextReport.CAUTION);
        return flowing(sheet, first, flow -> {
            if (said.isEmpty()) {
                flow.lines("No warnings.", Drafting.TEXT);
            } else {
                flow.table(new Table(
                        "Worst first, each with what would cure it",
                        Table.columns("", "about", "what, and what to do"),
                        said.stream()
                                .map(one -> List.of(
                                        TableCell.of(one.level().name().toLowerCase(Locale.ROOT)),
                                        TableCell.of(one.pieces().isEmpty() ? "the whole" : one.about(MOST_NAMED)),
                                        TableCell.of(one.sentence())))
                                .toList()));
            }
        });
    }

    private Optional<String> notChecked() {
        List<Verdict.NotAsked> left = known.verdict().notAsked();
        return left.isEmpty()
                ? Optional.empty()
                : Optional.of("Not checked, since the stack does not ask for it: "
                        + left.stream().map(Verdict.NotAsked::words).collect(Collectors.joining(", ")) + ".");
    }

    /** The cover says on which sheets the others stand: it is laid out again until it takes as many as it said. */
    private List<PaperPage> cover(List<Drawn> others) {
        List<PaperPage> cover = cover(others, 1);
        return cover(others, cover.size());
    }

    private List<PaperPage> cover(List<Drawn> others, int before) {
        return Paper.flowing(frame, ShopSheet.COVER.title(), "none", flow -> {
            JobSheet job = known.heading();
            flow.lines(answer.title(), 1.6 * Drafting.TITLE);
            for (Optional<String> words : List.of(job.name(), job.client(), job.address())) {
                words.ifPresent(line -> flow.lines(line, Drafting.LETTER));
            }
            flow.gap(GAP);
            flow.lines("Will it be right? " + VerdictText.answer(known.verdict()), Drafting.TITLE);
            flow.table(verdict());
            known.verdict()
                    .trusted()
                    .forEach(trusted -> flow.lines("On trust: " + printer.print(trusted) + ".", Drafting.TEXT));
            notChecked().ifPresent(words -> flow.lines(words, Drafting.TEXT));
            flow.lines(TextReport.CAUTION, Drafting.TEXT);
            flow.gap(GAP);
            changes(flow, job);
            flow.table(contents(others, before));
        });
    }

    private Table verdict() {
        List<List<TableCell>> rows = new ArrayList<>();
        for (Ruling ruling : known.verdict().rulings()) {
            String cure = ruling.cure().map(found -> " " + printer.print(found)).orElse("");
            rows.add(List.of(
                    TableCell.of(ruling.answer().name().toLowerCase(Locale.ROOT)),
                    TableCell.of(ruling.topic().word()),
                    TableCell.of(printer.print(ruling.because()) + cure)));
        }
        return new Table("The decision first, with the figure that decides", Table.columns("", "", ""), rows);
    }

    private void changes(PageFlow flow, JobSheet job) {
        if (!job.revisions().isEmpty()) {
            List<List<TableCell>> rows = new ArrayList<>();
            for (Revision revision : job.revisions()) {
                rows.add(List.of(
                        TableCell.of(revision.letter()),
                        TableCell.of(revision.date().orElse("")),
                        TableCell.of(revision.change().orElse(""))));
            }
            flow.table(new Table("Revisions", Table.columns("", "date", "what changed"), rows));
            flow.gap(GAP);
        }
        if (since.asked()) {
            flow.table(new Table(
                    "What differs from " + since.name() + ", by comparison",
                    Table.columns(""),
                    since.changes().stream()
                            .map(line -> List.of(TableCell.of(line)))
                            .toList()));
            flow.gap(GAP);
        }
    }

    private static Table contents(List<Drawn> others, int before) {
        List<List<TableCell>> rows = new ArrayList<>();
        int at = before;
        for (Drawn drawn : others) {
            int first = at + 1;
            at += drawn.pages().size();
            rows.add(List.of(
                    TableCell.of(drawn.sheet().title()),
                    TableCell.of(first == at ? String.valueOf(first) : first + " to " + at)));
        }
        return new Table("Sheets", Table.columns("", ">sheet"), rows);
    }
}
