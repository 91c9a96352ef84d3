package buildup.catalog.fastener;

import buildup.catalog.entry.CatalogNotices;
import buildup.catalog.entry.Sizes;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Text;
import buildup.shared.figure.Value;
import buildup.shared.length.Angle;
import buildup.shared.length.Length;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads the entries under {@code fasteners:} and {@code tools:}. */
public final class FastenerReader {
    /** Thicker than any screw in trim: a larger figure is a slip of the point or of the unit. */
    private static final Length THICKEST = Length.inches(0.5);

    /** No tool that a hand holds is larger. */
    private static final Length LARGEST = Length.inches(60);

    private final Notices notices;

    public FastenerReader(Notices notices) {
        this.notices = notices;
    }

    public Optional<Fastener> fastener(Fields plain, String name) {
        Fields fields = plain.about(name);
        String about = fields.text("about").orElse("");
        Optional<Fastener.Kind> kind = kind(fields, name);
        Optional<Length> diameter = size(fields, "diameter", name, THICKEST);
        Optional<Length> root = fields.has("root") ? size(fields, "root", name, THICKEST) : Optional.empty();
        Optional<Length> head = fields.has("head") ? size(fields, "head", name, LARGEST) : diameter;
        List<Length> lengths = lengths(fields, name);
        Optional<String> tool = fields.text("tool");
        if (tool.isEmpty()) {
            missing(fields, "tool", name, CatalogNotices.ITS_TOOL);
        }
        if (kind.isEmpty() || diameter.isEmpty() || head.isEmpty() || lengths.isEmpty() || tool.isEmpty()) {
            return Optional.empty();
        }
        // without a figure of its own the root is three quarters of the diameter, less than that of any wood screw
        Optional<Length> foot = kind.get() == Fastener.Kind.SCREW
                ? root.or(() -> diameter.map(over -> over.times(0.75)))
                : Optional.empty();
        return Optional.of(
                new Fastener(name, about, kind.get(), diameter.get(), foot, head.get(), lengths, tool.get()));
    }

    public Optional<Tool> tool(Fields plain, String name) {
        Fields fields = plain.about(name);
        String about = fields.text("about").orElse("");
        Optional<Length> noseLength = size(fields, "nose-length", name, LARGEST);
        Optional<Length> noseWidth = size(fields, "nose-width", name, LARGEST);
        Optional<Length> bodyWidth = size(fields, "body-width", name, LARGEST);
        Optional<Length> bodyLength = size(fields, "body-length", name, LARGEST);
        Angle lean = fields.has("lean") ? fields.angle("lean").orElse(Angle.degrees(0)) : Angle.degrees(0);
        boolean ahead = fields.yesNo("ahead").orElse(false);
        if (noseLength.isEmpty() || noseWidth.isEmpty() || bodyWidth.isEmpty() || bodyLength.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Tool(
                name, about, noseLength.get(), noseWidth.get(), bodyWidth.get(), bodyLength.get(), lean, ahead));
    }

    private Optional<Fastener.Kind> kind(Fields fields, String name) {
        Optional<Scalar> word = fields.scalar("kind");
        for (Fastener.Kind kind : Fastener.Kind.values()) {
            if (word.filter(text -> text.text().equals(kind.name().toLowerCase(Locale.ROOT)))
                    .isPresent()) {
                return Optional.of(kind);
            }
        }
        if (word.isEmpty()) {
            missing(fields, "kind", name, CatalogNotices.NAIL_OR_SCREW);
        } else {
            notices.add(CatalogNotices.UNKNOWN_FASTENER_KIND
                    .with("name", word.get().text())
                    .at(word.get().mark())
                    .of(name));
        }
        return Optional.empty();
    }

    private Optional<Length> size(Fields fields, String key, String name, Length most) {
        if (!fields.has(key)) {
            missing(fields, key, name, CatalogNotices.A_LENGTH);
            return Optional.empty();
        }
        Optional<Length> size = fields.length(key);
        Optional<Length> sound = size.filter(length -> length.isPositive() && length.compareTo(most) <= 0);
        if (size.isPresent() && sound.isEmpty()) {
            notSold(fields, key, name, Sizes.figure(size.get()));
        }
        return sound;
    }

    private List<Length> lengths(Fields fields, String name) {
        List<Length> lengths = new ArrayList<>();
        for (Scalar text : fields.scalars("lengths")) {
            Optional<Length> length = fields.readLength(text);
            length.filter(Length::isPositive).ifPresent(lengths::add);
            if (length.isPresent() && !length.get().isPositive()) {
                notSold(fields, "lengths", name, new Text(text.text()));
            }
        }
        if (!fields.has("lengths")) {
            missing(fields, "lengths", name, CatalogNotices.ITS_LENGTHS);
        }
        lengths.sort(Comparator.naturalOrder());
        return lengths;
    }

    private void notSold(Fields fields, String key, String name, Value size) {
        notices.add(CatalogNotices.NO_FASTENER_SIZE
                .with("key", key.equals("lengths") ? "length" : key)
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
