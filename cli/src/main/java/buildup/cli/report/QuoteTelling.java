package buildup.cli.report;

import buildup.cli.tell.FileSchema;
import buildup.cli.tell.Schema;
import buildup.cli.tell.Telling;
import buildup.engine.mill.milling.Milled;
import buildup.engine.mill.quote.OfferSheets;
import buildup.engine.mill.quote.Quote;
import buildup.engine.mill.quote.QuoteSheets;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.NoticeSheet;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A quote, ready to be written: what is asked, what it takes, what it costs, what it rests on, where to sign. */
public final class QuoteTelling {
    /** Of what programs are told, asked for by its name. */
    public static final Schema SCHEMA = new Schema(
            "quote",
            () -> FileSchema.of(
                    "quote",
                    "Quote of an order of moldings",
                    QuoteSheets.of(Optional.empty()),
                    NoticeSheet.of(List.of(), Optional.empty())));

    /** The same of the customer's paper. */
    public static final Schema OFFER_SCHEMA = new Schema(
            "offer",
            () -> FileSchema.of(
                    "offer",
                    "What a customer is asked for an order of moldings",
                    OfferSheets.of(Optional.empty()),
                    NoticeSheet.of(List.of(), Optional.empty())));

    /** Said wherever knives and cutters are. */
    public static final String CAUTION = Milled.CAUTION;

    private static final Phrase VALID_UNTIL = Phrase.of("Valid until {day}.");
    private static final Phrase TO_WRITE = Phrase.of("{what} ______________________");

    private QuoteTelling() {}

    /** All that the shop knows. */
    public static Telling shop(Quote quote) {
        List<Phrase> before = new ArrayList<>(quote.notPriced());
        before.add(valid(quote));
        return new Telling(
                title(quote),
                quote.order().unit(),
                before,
                QuoteSheets.of(Optional.of(quote)),
                List.of(
                        Phrase.of(new FigurePrinter(quote.order().unit()).legend()),
                        Phrase.of(CAUTION),
                        Phrase.of(""),
                        toWrite(SIGN_OFF.get(0)),
                        toWrite(SIGN_OFF.get(1))),
                Optional.of(QuoteSheets.items(Optional.of(quote))));
    }

    /** What the customer reads and signs. */
    public static Telling customer(Quote quote) {
        List<Sheet> sheets = OfferSheets.of(quote);
        List<Phrase> before = new ArrayList<>(OfferSheets.notQuoted(quote));
        if (quote.order().validUntil().isEmpty()) {
            before.add(valid(quote));
        }
        return new Telling(
                title(quote),
                quote.order().unit(),
                before,
                sheets,
                List.of(
                        Phrase.of(new FigurePrinter(quote.order().unit()).legend()),
                        Phrase.of(""),
                        toWrite(SIGN_OFF.get(0)),
                        toWrite(SIGN_OFF.get(1))),
                sheets.stream().filter(sheet -> sheet.key().equals("items")).findFirst());
    }

    /** What is to be written by hand. */
    public static final List<String> SIGN_OFF = List.of("Quoted by, and date:", "Accepted by, and date:");

    /** What stands over it. */
    public static String title(Quote quote) {
        return quote.order().title().isBlank() ? "Quote" : quote.order().title();
    }

    /** Until when it is valid, or the line on which that is written. */
    public static Phrase valid(Quote quote) {
        return quote.order()
                .validUntil()
                .map(day -> VALID_UNTIL.with("day", day))
                .orElseGet(() -> toWrite("Valid until:"));
    }

    private static Phrase toWrite(String what) {
        return TO_WRITE.with("what", what);
    }
}
