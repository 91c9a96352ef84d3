package buildup.catalog.mill;

import buildup.catalog.entry.CatalogNotices;
import buildup.catalog.entry.Sizes;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Text;
import buildup.shared.figure.Value;
import buildup.shared.length.Angle;
import buildup.shared.length.Length;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/** Reads the entries under {@code cutters:} and {@code heads:}. */
public final class CutterReader {
    /** No cutter of a molding shop is larger, in any direction: a larger figure is a slip of the point or the unit. */
    private static final Length LARGEST = Length.inches(30);

    /** In a minute: no stick goes faster. */
    private static final Length FASTEST = Length.inches(12 * 2000);

    private static final Angle SQUARE = Angle.degrees(45);
    private static final Pattern NUMBER = Pattern.compile("\\d{1,9}");

    private final Notices notices;

    public CutterReader(Notices notices) {
        this.notices = notices;
    }

    public Optional<Cutter> cutter(Fields plain, String name) {
        Fields fields = plain.about(name);
        String about = fields.text("about").orElse("");
        Optional<Cutter.Kind> kind = kind(fields, name);
        List<Length> sizes = sizes(fields, "sizes", name);
        Optional<Length> depth = size(fields, "depth", name);
        Optional<Length> pilot = fields.has("pilot") ? size(fields, "pilot", name) : Optional.empty();
        Angle angle = fields.has("angle") ? angle(fields, "angle", 1, 89).orElse(SQUARE) : SQUARE;
        if (kind.isEmpty() || sizes.isEmpty() || depth.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Cutter(name, about, kind.get(), sizes, depth.get(), pilot, angle));
    }

    public Optional<Head> head(Fields plain, String name) {
        Fields fields = plain.about(name);
        String about = fields.text("about").orElse("");
        Optional<Length> circle = size(fields, "circle", name);
        Optional<Angle> hook = angle(fields, "hook", 0, 45);
        OptionalInt speed = number(fields, "speed", name, 60_000);
        OptionalInt knives = number(fields, "knives", name, 24);
        Optional<Length> feed = size(fields, "feed", name, FASTEST);
        Optional<Length> widest = size(fields, "widest", name);
        Optional<Length> deepest = size(fields, "deepest", name);
        Optional<Length> corner = size(fields, "corner", name);
        List<Length> stock = sizes(fields, "stock", name);
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
        Optional<Scalar> word = fields.scalar("kind");
        List<String> words =
                Arrays.stream(Cutter.Kind.values()).map(Cutter.Kind::word).toList();
        Optional<Cutter.Kind> kind = Arrays.stream(Cutter.Kind.values())
                .filter(one -> word.filter(text -> text.text().strip().equals(one.word()))
                        .isPresent())
                .findFirst();
        if (word.isEmpty()) {
            missing(
                    fields,
                    "kind",
                    name,
                    CatalogNotices.ONE_OF.with(
                            "words",
                            Listing.commas(words.stream().map(Text::new).toList())));
        } else if (kind.isEmpty()) {
            String asked = word.get().text();
            notices.add(CatalogNotices.UNKNOWN_CUTTER_KIND
                    .with("name", asked)
                    .at(word.get().mark())
                    .of(name)
                    .cure(Suggestion.phrase(asked, words)));
        }
        return kind;
    }

    private Optional<Length> size(Fields fields, String key, String name) {
        return size(fields, key, name, LARGEST);
    }

    private Optional<Length> size(Fields fields, String key, String name, Length most) {
        if (!fields.has(key)) {
            missing(fields, key, name, CatalogNotices.A_LENGTH);
            return Optional.empty();
        }
        Optional<Length> size = fields.length(key);
        Optional<Length> sound = size.filter(length -> sound(length, most));
        if (size.isPresent() && sound.isEmpty()) {
            notMade(fields, key, name, Sizes.figure(size.get()));
        }
        return sound;
    }

    private static boolean sound(Length length, Length most) {
        return length.isPositive() && length.compareTo(most) <= 0;
    }

    private List<Length> sizes(Fields fields, String key, String name) {
        List<Length> sizes = new ArrayList<>();
        for (Scalar text : fields.scalars(key)) {
            Optional<Length> size = fields.readLength(text);
            size.filter(length -> sound(length, LARGEST)).ifPresent(sizes::add);
            if (size.isPresent() && !sound(size.get(), LARGEST)) {
                notMade(fields, key, name, new Text(text.text()));
            }
        }
        if (!fields.has(key)) {
            missing(fields, key, name, CatalogNotices.ITS_SIZES);
        }
        sizes.sort(Comparator.naturalOrder());
        return sizes;
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
        Optional<Scalar> text = fields.scalar(key);
        if (text.isEmpty()) {
            missing(fields, key, name, CatalogNotices.A_NUMBER);
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

    private void notMade(Fields fields, String key, String name, Value size) {
        notices.add(CatalogNotices.NO_CUTTER_SIZE
                .with("key", key.equals("sizes") ? "size" : key)
                .with("size", size)
                .at(fields.mark(key))
                .of(name));
    }

    private void missing(Fields fields, String key, String name, Phrase what) {
        notices.add(CatalogNotices.MISSING_KEY
                .with("key", key)
                .with("what", what)
                .at(fields.mark())
                .of(name));
    }
}
