package buildup.engine.mill.quote;

import static java.nio.charset.StandardCharsets.UTF_8;

import buildup.catalog.Catalog;
import buildup.shared.document.Claims;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** An order of a test, read and quoted; {@code own} lists stand before those of the program. */
record Ordered(Optional<Quote> quote, List<Notice> notices) {
    /** Worked example H; the oak of no particular sort is the white one. */
    static final String NOSING = """
            rates: example
            items:
              - name: nosing
                wood: white-oak
                section: [out 1, drip 1/4 x 1/4, out to 4-1/2, up 3/8, ovolo in 1, in to 1/2, cove in down 1/2]
                feet: 260
                waste: many-miters
            """;

    static Ordered of(String order) {
        return of(order, "");
    }

    static Ordered of(String order, String own) {
        Notices notices = new Notices();
        Catalog catalog = own.isEmpty()
                ? Catalog.builtIn()
                : Catalog.builtIn()
                        .with(
                                DocumentReader.read("own.yaml", own.getBytes(UTF_8), notices)
                                        .orElseThrow(),
                                new Claims(),
                                notices);
        Optional<Quote> quote = DocumentReader.read("order.yaml", order.getBytes(UTF_8), notices)
                .flatMap(document -> Order.read(document, catalog, new Claims(), notices))
                .map(wanted -> Quote.of(wanted, catalog, notices));
        return new Ordered(quote, notices.sorted());
    }

    Quoted first() {
        return quote.orElseThrow(() -> new AssertionError(notices)).items().get(0);
    }

    /** Each notice as a user sees it, with its line. */
    List<String> said() {
        return notices.stream()
                .map(notice -> Stream.of(
                                notice.level().name().toLowerCase(Locale.ROOT),
                                notice.code(),
                                notice.mark()
                                        .map(mark -> Integer.toString(mark.line()))
                                        .orElse(""),
                                NoticeWords.INCHES.message(notice),
                                NoticeWords.INCHES.cure(notice))
                        .filter(part -> !part.isEmpty())
                        .reduce((a, b) -> a + " " + b)
                        .orElse(""))
                .toList();
    }
}
