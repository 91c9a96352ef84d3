package buildup.catalog.book;

import buildup.catalog.entry.CatalogNotices;
import buildup.catalog.entry.Fractions;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Text;
import buildup.shared.notice.Notices;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Reads the entries under {@code orders:} and {@code proportions:}. */
public final class BookReader {
    private final Notices notices;

    /** @param notices told what is wrong */
    public BookReader(Notices notices) {
        this.notices = notices;
    }

    /** An order; nothing, with notices, when a key that it needs is missing or a number cannot be read. */
    public Optional<BookOrder> order(Fields plain, String name) {
        Fields fields = plain.about(name);
        String book = book(fields);
        String place = fields.text("place").orElse("");
        String memory = fields.text("memory").orElse("");
        String assumed = fields.text("assumed").orElse("");
        Map<EntablaturePart, BigDecimal> parts = new EnumMap<>(EntablaturePart.class);
        fields.needs("parts", BookNotices.NO_PARTS.notice());
        fields.fields("parts")
                .ifPresent(heights -> Arrays.stream(EntablaturePart.values())
                        .forEach(part ->
                                number(heights, part.word(), name, true).ifPresent(height -> parts.put(part, height))));
        Optional<BigDecimal> projection = number(fields, "projection", name, false);
        List<BookMember> members = new ArrayList<>();
        List<Fields> written = fields.list("members");
        written.forEach(member -> member(member, name).ifPresent(members::add));
        return book.isEmpty() || parts.size() < EntablaturePart.values().length || members.size() < written.size()
                ? Optional.empty()
                : Optional.of(new BookOrder(name, book, place, memory, assumed, parts, projection, members));
    }

    private Optional<BookMember> member(Fields fields, String order) {
        String name = fields.text("name").orElse("member");
        Optional<BookMember.Zone> zone =
                word(fields, "zone", order, BookMember.Zone.values(), BookMember.Zone::word, true);
        Optional<BigDecimal> height = number(fields, "height", order, true);
        Optional<BigDecimal> out = number(fields, "out", order, true);
        Optional<BookMember.Shape> shape =
                word(fields, "shape", order, BookMember.Shape.values(), BookMember.Shape::word, true);
        return zone.isPresent() && height.isPresent() && out.isPresent() && shape.isPresent()
                ? Optional.of(new BookMember(name, zone.get(), height.get(), out.get(), shape.get()))
                : Optional.empty();
    }

    /** A rule; nothing, with notices, when a key that it needs is missing or a number cannot be read. */
    public Optional<BookRule> rule(Fields plain, String name) {
        Fields fields = plain.about(name);
        String book = book(fields);
        String place = fields.text("place").orElse("");
        boolean memory = fields.yesNo("memory").orElse(false);
        Optional<BookRule.Measured> measures =
                word(fields, "measures", name, BookRule.Measured.values(), BookRule.Measured::word, false);
        Optional<BookRule.Whole> of = word(fields, "of", name, BookRule.Whole.values(), BookRule.Whole::word, true);
        Optional<BigDecimal> least = number(fields, "least", name, false);
        Optional<BigDecimal> most = number(fields, "most", name, false);
        if (least.isEmpty() && most.isEmpty() && !fields.has("least") && !fields.has("most")) {
            notices.add(BookNotices.NO_SHARE.notice().at(fields.mark()).of(name));
        }
        boolean sound = !book.isEmpty()
                && of.isPresent()
                && (least.isPresent() || most.isPresent())
                && least.isPresent() == fields.has("least")
                && most.isPresent() == fields.has("most")
                && measures.isPresent() == fields.has("measures");
        return sound
                ? Optional.of(new BookRule(name, book, place, memory, measures, of.get(), least, most))
                : Optional.empty();
    }

    private static String book(Fields fields) {
        return fields.needed(
                        "book", CatalogNotices.MISSING_KEY.with("key", "book").with("what", BookNotices.A_BOOK))
                .map(Scalar::text)
                .map(String::strip)
                .orElse("");
    }

    private Optional<BigDecimal> number(Fields fields, String key, String name, boolean needed) {
        if (!fields.has(key)) {
            if (needed) {
                notices.add(CatalogNotices.MISSING_KEY
                        .with("key", key)
                        .with("what", CatalogNotices.A_NUMBER)
                        .at(fields.mark())
                        .of(name));
            }
            return Optional.empty();
        }
        Optional<Scalar> text = fields.scalar(key);
        Optional<BigDecimal> number = text.flatMap(found -> Fractions.read(found.text()));
        boolean nothing = number.filter(found -> found.signum() == 0).isPresent() && !key.equals("out");
        if (text.isPresent() && (number.isEmpty() || nothing)) {
            notices.add(BookNotices.NO_NUMBER
                    .with("text", text.get().text())
                    .with("key", key)
                    .at(text.get().mark())
                    .of(name));
            return Optional.empty();
        }
        return number;
    }

    private <T> Optional<T> word(
            Fields fields, String key, String name, T[] words, Function<T, String> word, boolean needed) {
        List<Text> all =
                Arrays.stream(words).map(one -> new Text(word.apply(one))).toList();
        if (!fields.has(key)) {
            if (needed) {
                notices.add(CatalogNotices.MISSING_KEY
                        .with("key", key)
                        .with("what", CatalogNotices.ONE_OF.with("words", Listing.commas(all)))
                        .at(fields.mark())
                        .of(name));
            }
            return Optional.empty();
        }
        Optional<Scalar> text = fields.scalar(key);
        Optional<T> found = text.flatMap(asked -> Arrays.stream(words)
                .filter(one -> word.apply(one).equals(asked.text().strip()))
                .findFirst());
        if (text.isPresent() && found.isEmpty()) {
            notices.add(BookNotices.NO_WORD
                    .with("text", text.get().text())
                    .with("key", key)
                    .with("words", Listing.commas(all))
                    .at(text.get().mark())
                    .of(name));
        }
        return found;
    }
}
