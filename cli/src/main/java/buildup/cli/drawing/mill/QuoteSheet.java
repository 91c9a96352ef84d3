package buildup.cli.drawing.mill;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Words;
import buildup.cli.drawing.sheet.Block;
import buildup.cli.drawing.sheet.DrawingNotices;
import buildup.cli.drawing.sheet.FullSize;
import buildup.cli.drawing.sheet.Pages;
import buildup.cli.drawing.sheet.PaperSize;
import buildup.cli.drawing.sheet.SheetTable;
import buildup.cli.report.QuoteTelling;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.cli.table.Table;
import buildup.cli.tell.SheetTables;
import buildup.engine.mill.quote.Quote;
import buildup.engine.mill.quote.QuoteSheets;
import buildup.engine.mill.quote.Quoted;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A quote on one sheet: every profile at full size, what is asked, what is assumed, where to sign. */
public final class QuoteSheet {
    private static final double MARGIN = 0.6;
    private static final double GAP = 0.28;

    /** Between two profiles beside each other. */
    private static final double BESIDE = 0.5;

    private static final double LINE = 1.45 * Drafting.TEXT;
    private static final double SMALL = 0.11;
    private static final double SIGN = 3.2;
    private static final int MOST_LINES = 20;

    private final Quote quote;
    private final TextMeasure measure;
    private final double width;
    private final FigurePrinter printer;
    private final List<SceneItem> items = new ArrayList<>();
    private double y;

    private QuoteSheet(Quote quote, TextMeasure measure, double width) {
        this.quote = quote;
        this.measure = measure;
        this.width = width;
        this.printer = new FigurePrinter(quote.order().unit());
    }

    /**
     * The sheet on the page asked for, else on the smallest that holds it.
     *
     * @param page a name from {@link Pages}
     * @param notices told when there is no such page or the sheet takes a larger one
     */
    public static Optional<Scene> of(Quote quote, TextMeasure measure, Optional<String> page, Notices notices) {
        Optional<PaperSize> wanted = page.flatMap(Pages::named);
        if (page.isPresent() && wanted.isEmpty()) {
            notices.add(DrawingNotices.UNKNOWN_PAGE
                    .with("name", page.get())
                    .cure(Suggestion.phrase(page.get(), Pages.names())));
            return Optional.empty();
        }
        List<PaperSize> pages = wanted.map(List::of).orElse(Pages.usual());
        Optional<Scene> scene = smallest(quote, measure, pages);
        if (scene.isEmpty()) {
            Optional<Scene> larger = smallest(quote, measure, Pages.like(pages.get(0)));
            notices.add((larger.isPresent() ? DrawingNotices.LARGE_QUOTE : DrawingNotices.LARGEST_QUOTE)
                    .with("page", DrawingNotices.page(wanted)));
        }
        return scene;
    }

    private static Optional<Scene> smallest(Quote quote, TextMeasure measure, List<PaperSize> pages) {
        return pages.stream()
                .flatMap(page -> Stream.of(page, page.turned()))
                .flatMap(page -> new QuoteSheet(quote, measure, page.width() - 2 * MARGIN).on(page).stream())
                .findFirst();
    }

    private Optional<Scene> on(PaperSize page) {
        List<Block> profiles = IntStream.range(0, quote.items().size())
                .mapToObj(i -> Block.of(new QuoteProfile(i + 1, quote.items().get(i), measure, printer).group()))
                .toList();
        if (profiles.stream().anyMatch(block -> block.width() > width)) {
            return Optional.empty();
        }
        head();
        flow(profiles);
        items.addAll(FullSize.of(printer.metric()).level(measure, new Point(0.02, y)));
        y -= GAP;
        new SheetTables(printer).of(QuoteSheets.prices(quote)).forEach(this::table);
        assumed();
        signOff();
        if (-y > page.height() - 2 * MARGIN) {
            return Optional.empty();
        }
        return Optional.of(new Scene(
                QuoteTelling.title(quote),
                "Quote with " + quote.items().size() + (quote.items().size() == 1 ? " profile" : " profiles")
                        + " at full size.",
                page.width(),
                page.height(),
                items.stream()
                        .map(item -> item.moved(MARGIN, page.height() - MARGIN))
                        .toList()));
    }

    private void head() {
        lines(QuoteTelling.title(quote), Drafting.TITLE, 3);
        lines(printer.print(QuoteTelling.valid(quote)), Drafting.TEXT, 2);
        y -= GAP;
    }

    private void lines(String text, double size, int most) {
        for (String line : Words.lines(measure, text, size, width, most)) {
            y -= 1.45 * size;
            items.add(Label.of(measure, line, new Point(0, y), size, Label.Anchor.START));
        }
    }

    /** From left to right, in as many rows as it takes. */
    private void flow(List<Block> blocks) {
        double left = 0;
        double lowest = y;
        for (Block block : blocks) {
            if (left > 0 && left + block.width() > width) {
                left = 0;
                y = lowest - GAP;
            }
            items.add(block.at(left, y));
            left += block.width() + BESIDE;
            lowest = Math.min(lowest, y - block.height());
        }
        y = lowest - 2 * GAP;
    }

    private void table(Table table) {
        Block block = Block.of(new Group("table-" + items.size(), SheetTable.items(table, measure, width)));
        items.add(block.at(0, y));
        y -= block.height() + GAP;
    }

    private void assumed() {
        lines("Assumptions", Drafting.TEXT, 1);
        for (Quoted one : quote.items()) {
            lines(one.item().name() + ": " + printed(one.assumed()), SMALL, MOST_LINES);
        }
        lines(printed(quote.assumed()), SMALL, MOST_LINES);
        lines(QuoteTelling.CAUTION, SMALL, MOST_LINES);
        y -= GAP;
    }

    private String printed(List<Phrase> said) {
        return said.stream().map(printer::print).collect(Collectors.joining(" "));
    }

    private void signOff() {
        for (String what : QuoteTelling.SIGN_OFF) {
            y -= 2 * LINE;
            Label label = Label.of(measure, what, new Point(0, y), Drafting.TEXT, Label.Anchor.START);
            items.add(label);
            double from = 1.9;
            items.add(new Path(
                    List.of(new Line(new Point(from, y - 0.03), new Point(from + SIGN, y - 0.03))),
                    false,
                    LineStyle.RULE));
        }
        y -= LINE;
    }
}
