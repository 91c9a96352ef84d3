package buildup.cli.drawing.mill;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.sheet.Block;
import buildup.cli.drawing.sheet.DrawingNotices;
import buildup.cli.drawing.sheet.FullSize;
import buildup.cli.drawing.sheet.PageFlow;
import buildup.cli.drawing.sheet.Pages;
import buildup.cli.drawing.sheet.PaperSize;
import buildup.cli.report.QuoteTelling;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.cli.tell.SheetTables;
import buildup.cli.tell.Telling;
import buildup.engine.mill.quote.Offer;
import buildup.engine.mill.quote.OfferSheets;
import buildup.engine.mill.quote.OrderSheet;
import buildup.engine.mill.quote.Quote;
import buildup.engine.mill.quote.Quoted;
import buildup.profiles.outline.Point;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notices;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A quote on paper: who quotes to whom, every profile at full size, the prices, where to sign. Each page says which it is, and
 * one that holds a profile bears lines by which full size is checked, both ways.
 *
 * @param telling what its reader is told
 * @param forCustomer whether a customer is to read it, and not the shop
 */
public record QuotePaper(Quote quote, Telling telling, boolean forCustomer, TextMeasure measure) {
    private static final double MARGIN = 0.6;

    /** Foot of the page: its number and the level check line. */
    private static final double FOOT = 0.62;

    /** Beside the text: the upright check line. */
    private static final double SIDE = 0.4;

    private static final double GAP = 0.25;

    /**
     * All of it on one page: that which is asked for, else the smallest that holds it.
     *
     * @param page a name from {@link Pages}
     * @param notices told when there is no such page or a larger one is needed
     */
    public Optional<Scene> onOne(Optional<String> page, Notices notices) {
        return pages(page, notices, scenes -> scenes.size() == 1).map(scenes -> scenes.get(0));
    }

    /**
     * On as many pages as it takes, of the size that is asked for, else letter or A4, or larger where a profile is.
     *
     * @param page a name from {@link Pages}
     * @param notices told when there is no such page or a profile takes a larger one
     */
    public Optional<List<Scene>> onMany(Optional<String> page, Notices notices) {
        return pages(page, notices, scenes -> true);
    }

    private Optional<List<Scene>> pages(Optional<String> page, Notices notices, Predicate<List<Scene>> enough) {
        Optional<PaperSize> wanted = page.flatMap(name -> Pages.asked(name, notices));
        if (page.isPresent() && wanted.isEmpty()) {
            return Optional.empty();
        }
        List<PaperSize> usual =
                printer().metric() ? Pages.like(Pages.named("a4").orElseThrow()) : Pages.usual();
        Optional<List<Scene>> found = smallest(wanted.map(List::of).orElse(usual), enough);
        if (found.isEmpty()) {
            boolean larger =
                    smallest(wanted.map(Pages::like).orElse(usual), enough).isPresent();
            notices.add((larger ? DrawingNotices.LARGE_QUOTE : DrawingNotices.LARGEST_QUOTE)
                    .with("page", DrawingNotices.page(wanted)));
        }
        return found;
    }

    private Optional<List<Scene>> smallest(List<PaperSize> sizes, Predicate<List<Scene>> enough) {
        return sizes.stream()
                .flatMap(size -> Stream.of(size, size.turned()))
                .flatMap(size -> on(size).stream())
                .filter(enough)
                .findFirst();
    }

    private Optional<List<Scene>> on(PaperSize page) {
        double width = page.width() - 2 * MARGIN - SIDE;
        double height = page.height() - 2 * MARGIN - FOOT;
        PageFlow flow = new PageFlow(measure, width, height);
        head(flow);
        flow.blocks(profiles(width), GAP);
        flow.gap(GAP / 2);
        new SheetTables(printer()).of(tables()).forEach(table -> {
            flow.table(table);
            flow.gap(GAP);
        });
        foot(flow);
        if (!flow.fits()) {
            return Optional.empty();
        }
        int pages = flow.pages().size();
        return Optional.of(IntStream.range(0, pages)
                .mapToObj(i -> scene(page, flow.pages().get(i), i, pages))
                .toList());
    }

    private FigurePrinter printer() {
        return telling.printer();
    }

    private void head(PageFlow flow) {
        OrderSheet sheet = quote.order().sheet();
        List<String> from = sheet.mill();
        List<String> what = what(sheet);
        for (int i = 0; i < Math.max(from.size(), what.size()); i++) {
            flow.edges(i < from.size() ? from.get(i) : "", i < what.size() ? what.get(i) : "", Drafting.TEXT);
        }
        flow.gap(GAP);
        if (!sheet.customer().isEmpty()) {
            flow.lines("To", Drafting.TEXT);
            sheet.customer().forEach(line -> flow.lines(line, Drafting.TEXT));
            flow.gap(GAP);
        }
        flow.lines(telling.title() + (forCustomer ? "" : ", shop only"), Drafting.TITLE);
        said(flow, telling.before());
        flow.gap(GAP);
    }

    private List<String> what(OrderSheet sheet) {
        List<String> lines = new ArrayList<>();
        sheet.number().ifPresent(number -> lines.add("Quote " + number));
        sheet.revision().ifPresent(revision -> lines.add("Revision " + revision));
        sheet.date().ifPresent(lines::add);
        if (forCustomer) {
            quote.order().validUntil().ifPresent(day -> lines.add("Valid until " + day));
        }
        return lines;
    }

    private List<Block> profiles(double width) {
        List<Block> blocks = new ArrayList<>();
        List<Quoted> drawn = forCustomer
                ? quote.offer().items().stream().map(Offer.Line::quoted).toList()
                : quote.items();
        for (Quoted one : drawn) {
            blocks.add(Block.of(
                    new QuoteProfile(blocks.size() + 1, one, OfferSheets.details(quote, one), width, measure, printer())
                            .group()));
        }
        return blocks;
    }

    /** What stands in the head and beside the profiles is not said once more. */
    private List<Sheet> tables() {
        return telling.sheets().stream()
                .filter(sheet -> !forCustomer
                        || sheet.key().equals("items")
                        || sheet.at("sum").isPresent())
                .toList();
    }

    private void foot(PageFlow flow) {
        OrderSheet sheet = quote.order().sheet();
        if (forCustomer) {
            sheet.terms().ifPresent(terms -> flow.lines("Terms: " + terms, Drafting.TEXT));
            sheet.note().ifPresent(note -> flow.lines(note, Drafting.TEXT));
        } else {
            flow.lines(QuoteTelling.CAUTION, Drafting.TEXT);
        }
        flow.lines(printer().legend(), Drafting.TEXT);
        flow.room(1);
        QuoteTelling.SIGN_OFF.forEach(flow::toWrite);
    }

    private void said(PageFlow flow, List<Phrase> phrases) {
        phrases.forEach(phrase -> flow.lines(printer().print(phrase), Drafting.TEXT));
    }

    private static boolean atFullSize(SceneItem item) {
        return item instanceof Group group
                && (group.id().startsWith(QuoteProfile.ID)
                        || group.items().stream().anyMatch(QuotePaper::atFullSize));
    }

    private Scene scene(PaperSize page, List<SceneItem> items, int at, int pages) {
        FullSize line = FullSize.of(printer().metric());
        double right = page.width() - MARGIN;
        List<SceneItem> all = new ArrayList<>();
        items.forEach(item -> all.add(item.moved(MARGIN, page.height() - MARGIN)));
        if (items.stream().anyMatch(QuotePaper::atFullSize)) {
            all.add(new Group("check", line.level(measure, new Point(MARGIN, MARGIN + 0.1))));
            Group upright = line.upright(measure);
            all.add(upright.moved(
                    right - upright.box().face(), MARGIN + FOOT - upright.box().bottom()));
        }
        all.add(Label.of(
                measure,
                "Page " + (at + 1) + " of " + pages,
                new Point(right, MARGIN),
                Drafting.TEXT,
                Label.Anchor.END));
        return new Scene(
                telling.title(),
                "Quote with " + quote.items().size() + (quote.items().size() == 1 ? " profile" : " profiles")
                        + " at full size.",
                page.width(),
                page.height(),
                all);
    }
}
