package buildup.cli.command;

import buildup.catalog.Catalog;
import buildup.cli.command.files.CatalogFiles;
import buildup.cli.command.files.CatalogOption;
import buildup.cli.command.files.CommandAnswer;
import buildup.cli.command.files.CommandForm;
import buildup.cli.command.files.Delivery;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.SayingOption;
import buildup.cli.command.files.Streams;
import buildup.cli.command.files.WrittenForm;
import buildup.cli.drawing.mill.QuotePaper;
import buildup.cli.report.QuoteTelling;
import buildup.cli.tell.Telling;
import buildup.cli.write.LackingLetters;
import buildup.cli.write.PdfWriter;
import buildup.cli.write.ShippedFont;
import buildup.cli.write.SvgWriter;
import buildup.engine.mill.quote.Order;
import buildup.engine.mill.quote.Quote;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.concurrent.Callable;

/** {@code quote}: what an order of moldings takes and costs. */
final class QuoteCommand implements Callable<Integer> {
    /** The forms in which a quote is written. */
    enum Format {
        text,
        json,
        csv,
        html,
        svg,
        pdf
    }

    /** Who is to read it. */
    enum Audience {
        customer,
        shop
    }

    private final Streams streams;
    private final Claims claims = new Claims();
    private String order = "";
    private Optional<Format> wanted = Optional.empty();
    private Format format = Format.text;
    private Audience audience = Audience.shop;
    private Optional<String> page = Optional.empty();
    private final OutputOption output = new OutputOption();
    private final SayingOption saying = new SayingOption();
    private final CatalogOption catalog = new CatalogOption();

    QuoteCommand(Streams streams) {
        this.streams = streams;
    }

    /** The words and options that it takes. */
    CommandForm form() {
        return CommandForm.of("quote", "Prices an order of moldings: wood, knives, machine time.", this)
                .word("ORDER", "The order document; - is standard input.", asked -> order = asked)
                .option(
                        Format.class,
                        "--format --to",
                        "FORMAT",
                        "${COMPLETION-CANDIDATES} (default: by the ending of the file, else text); svg and pdf draw the profiles at full size, svg on one page.",
                        asked -> wanted = Optional.of(asked))
                .option(
                        Audience.class,
                        "--for",
                        "READER",
                        "${COMPLETION-CANDIDATES} (default: shop); the customer's copy shows none of the shop's own figures.",
                        asked -> audience = asked)
                .option(
                        String.class,
                        "--page",
                        "NAME",
                        "The paper to draw on (default: as it fits).",
                        asked -> page = Optional.of(asked))
                .with(output::addTo)
                .with(saying::addTo)
                .with(catalog::addTo);
    }

    @Override
    public Integer call() {
        Optional<Format> settled = new WrittenForm<>(
                        List.of(Format.values()), Optional.of(Format.text), "quote", "--format")
                .settled(wanted, output.file(), streams, saying, InputFiles.nameOf(order));
        if (settled.isEmpty()) {
            return ExitCode.REFUSED;
        }
        format = settled.get();
        Notices notices = new Notices();
        InputFiles files = new InputFiles(streams, notices);
        Optional<Document> document = files.named(InputFiles.Kind.ORDER, order);
        Catalog lists =
                new CatalogFiles(files, claims, notices).of(InputFiles.Kind.ORDER, document, order, catalog.files);
        Optional<Quote> quote = document.flatMap(found -> Order.read(found, lists, claims, notices))
                .map(wanted -> Quote.of(wanted, lists, notices));
        String file = InputFiles.nameOf(order);
        LengthUnit unit = document.map(Order::unit).orElse(LengthUnit.INCH);
        Delivery delivery = new Delivery(streams, output.file(), files.read());
        boolean delivered = quote.flatMap(one -> written(one, file, notices))
                .filter(bytes -> delivery.put(bytes, notices))
                .isPresent();
        if (!delivered && format == Format.json) {
            streams.out().print(told(Telling.refused(file, unit), file, notices).json());
        }
        if (format != Format.json || (delivered && audience == Audience.customer)) {
            streams.err().print(saying.said(notices.sorted(), file, unit));
        }
        return ExitCode.of(notices);
    }

    private static CommandAnswer told(Telling telling, String file, Notices notices) {
        return CommandAnswer.of(telling, file, notices.sorted());
    }

    /** Every key that this run asked its documents for. */
    SortedSet<String> asked() {
        return claims.asked();
    }

    private Optional<byte[]> written(Quote quote, String file, Notices notices) {
        ShippedFont font = ShippedFont.load();
        Telling telling = audience == Audience.customer ? QuoteTelling.customer(quote) : QuoteTelling.shop(quote);
        QuotePaper paper = new QuotePaper(quote, telling, audience == Audience.customer, font);
        return switch (format) {
            case svg ->
                paper.onOne(page, notices)
                        .map(scene -> SvgWriter.write(scene, quote.order().unit()));
            case pdf ->
                paper.onMany(page, notices).map(scenes -> {
                    LackingLetters.told(scenes, font, notices);
                    return PdfWriter.write(scenes, font);
                });
            default -> Optional.of(text(told(telling, file, onPaper(notices))).getBytes(StandardCharsets.UTF_8));
        };
    }

    /** What is said of an order is the shop's to read: none of it stands on the customer's paper. */
    private Notices onPaper(Notices notices) {
        return audience == Audience.customer ? new Notices() : notices;
    }

    private String text(CommandAnswer told) {
        return switch (format) {
            case json -> told.json();
            case csv -> told.csv();
            case html -> told.html();
            default -> told.text(output.file().isPresent());
        };
    }
}
