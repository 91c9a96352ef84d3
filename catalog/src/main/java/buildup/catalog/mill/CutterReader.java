package buildup.catalog.mill;

import buildup.catalog.entry.CatalogNotices;
import buildup.catalog.entry.SizeKeys;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Text;
import buildup.shared.length.Angle;
import buildup.shared.length.Length;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** Reads the entries under {@code cutters:} and {@code heads:}. */
public final class CutterReader {
    /** No cutter of a molding shop is larger, in any direction: a larger figure is a slip of the point or the unit. */
    private static final Length LARGEST = Length.inches(30);

    /** In a minute: no stick goes faster. */
    private static final Length FASTEST = Length.inches(12 * 2000);

    private static final Predicate<Length> SOUND = SizeKeys.upTo(LARGEST);

    private static final Angle SQUARE = Angle.degrees(45);
    private static final Pattern NUMBER = Pattern.compile("\\d{1,9}");

    private final Notices notices;

    public CutterReader(Notices notices) {
        this.notices = notices;
    }

    /** A cutter from its keys; empty, with notices, when a key that it needs is missing or wrong. */
    public Optional<Cutter> cutter(Fields plain, String name) {
        Fields fields = plain.about(name);
        String about = fields.text("about").orElse("");
        SizeKeys sizes = new SizeKeys(fields, name, SizeKeys::aLength, CatalogNotices.NO_CUTTER_SIZE, notices);
        Optional<Cutter.Kind> kind = kind(fields, name);
        List<Length> made = several(sizes, "sizes", "size");
        Optional<Length> depth = sizes.one("depth", SOUND);
        Optional<Length> pilot = fields.has("pilot") ? sizes.one("pilot", SOUND) : Optional.empty();
        Angle angle = fields.has("angle") ? angle(fields, "angle", 1, 89).orElse(SQUARE) : SQUARE;
        if (kind.isEmpty() || made.isEmpty() || depth.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Cutter(name, about, kind.get(), made, depth.get(), pilot, angle));
    }

    /** A molder's head from its keys; empty, with notices, when a key that it needs is missing or wrong. */
    public Optional<Head> head(Fields plain, String name) {
        Fields fields = plain.about(name);
        String about = fields.text("about").orElse("");
        SizeKeys sizes = new SizeKeys(fields, name, SizeKeys::aLength, CatalogNotices.NO_CUTTER_SIZE, notices);
        Optional<Length> circle = sizes.one("circle", SOUND);
        Optional<Angle> hook = angle(fields, "hook", 0, 45);
        OptionalInt speed = number(fields, "speed", name, 60_000);
        OptionalInt knives = number(fields, "knives", name, 24);
        Optional<Length> feed = sizes.one("feed", SizeKeys.upTo(FASTEST));
        Optional<Length> widest = sizes.one("widest", SOUND);
        Optional<Length> deepest = sizes.one("deepest", SOUND);
        Optional<Length> corner = sizes.one("corner", SOUND);
        List<Length> stock = several(sizes, "stock", "stock");
        boolean whole = circle.isPresent()
                && hook.isPresent()
                && speed.isPresent()
                && knives.isPresent()
                && feed.isPresent()
                && widest.isPresent()
                && deepest.isPresent()
                && corner.isPresent()
                && !stock.isEmpty();
        if (!whole) {
            return Optional.empty();
        }
        return Optional.of(new Head(
                name,
                about,
                circle.get(),
                hook.get(),
                speed.getAsInt(),
                knives.getAsInt(),
                feed.get(),
                widest.get(),
                deepest.get(),
                corner.get(),
                stock));
    }

    private Optional<Cutter.Kind> kind(Fields fields, String name) {
        List<String> words =
                Arrays.stream(Cutter.Kind.values()).map(Cutter.Kind::word).toList();
        Optional<Scalar> word = fields.needed(
                "kind",
                missing(
                        "kind",
                        CatalogNotices.ONE_OF.with(
                                "words",
                                Listing.commas(words.stream().map(Text::new).toList()))));
        Optional<Cutter.Kind> kind = Arrays.stream(Cutter.Kind.values())
                .filter(one -> word.filter(text -> text.text().strip().equals(one.word()))
                        .isPresent())
                .findFirst();
        if (word.isPresent() && kind.isEmpty()) {
            String asked = word.get().text();
            notices.add(CatalogNotices.UNKNOWN_CUTTER_KIND
                    .with("name", asked)
                    .at(word.get().mark())
                    .of(name)
                    .cure(Suggestion.phrase(asked, words)));
        }
        return kind;
    }

    private Optional<Angle> angle(Fields fields, String key, double least, double most) {
        if (!fields.has(key)) {
            return Optional.of(Angle.degrees(0));
        }
        Optional<Angle> angle = fields.angle(key);
        Optional<Angle> sound = angle.filter(degrees -> degrees.toDegrees() >= least && degrees.toDegrees() <= most);
        if (angle.isPresent() && sound.isEmpty()) {
            notices.add((key.equals("hook") ? CatalogNotices.NO_CUTTER_HOOK : CatalogNotices.NO_CUTTER_ANGLE)
                    .with("text", fields.text(key).orElse(""))
                    .with("least", Figure.count(Math.round(least)))
                    .with("most", Figure.count(Math.round(most)))
                    .at(fields.mark(key)));
        }
        return sound;
    }

    private OptionalInt number(Fields fields, String key, String name, int most) {
        Optional<Scalar> text = fields.needed(key, missing(key, CatalogNotices.A_NUMBER));
        if (text.isEmpty()) {
            return OptionalInt.empty();
        }
        String written = text.get().text().strip();
        int value = NUMBER.matcher(written).matches() ? Integer.parseInt(written) : 0;
        if (value >= 1 && value <= most) {
            return OptionalInt.of(value);
        }
        notices.add(CatalogNotices.NO_HEAD_NUMBER
                .with("text", written)
                .with("key", key)
                .with("most", Figure.count(most))
                .at(text.get().mark())
                .of(name));
        return OptionalInt.empty();
    }

    private static List<Length> several(SizeKeys sizes, String key, String single) {
        return sizes.several(key, single, missing(key, CatalogNotices.ITS_SIZES), SOUND);
    }

    private static Notice missing(String key, Phrase what) {
        return CatalogNotices.MISSING_KEY.with("key", key).with("what", what);
    }
}
