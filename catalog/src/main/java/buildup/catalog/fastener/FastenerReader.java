package buildup.catalog.fastener;

import buildup.catalog.entry.CatalogNotices;
import buildup.catalog.entry.SizeKeys;
import buildup.catalog.supply.GoodsReader;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Phrase;
import buildup.shared.length.Angle;
import buildup.shared.length.Length;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
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

    /** A nail or a screw from its keys; empty, with notices, when a key that it needs is missing or wrong. */
    public Optional<Fastener> fastener(Fields plain, String name) {
        Fields fields = plain.about(name);
        String about = fields.text("about").orElse("");
        SizeKeys sizes = new SizeKeys(fields, name, SizeKeys::aLength, CatalogNotices.NO_FASTENER_SIZE, notices);
        Optional<Fastener.Kind> kind = kind(fields, name);
        Optional<Length> diameter = sizes.one("diameter", SizeKeys.upTo(THICKEST));
        Optional<Length> root = fields.has("root") ? sizes.one("root", SizeKeys.upTo(THICKEST)) : Optional.empty();
        Optional<Length> head = fields.has("head") ? sizes.one("head", SizeKeys.upTo(LARGEST)) : diameter;
        List<Length> lengths =
                sizes.several("lengths", "length", missing("lengths", CatalogNotices.ITS_LENGTHS), Length::isPositive);
        Optional<String> tool =
                fields.needed("tool", missing("tool", CatalogNotices.ITS_TOOL)).map(Scalar::text);
        List<Integer> boxes = new GoodsReader(notices).boxes(fields);
        if (kind.isEmpty() || diameter.isEmpty() || head.isEmpty() || lengths.isEmpty() || tool.isEmpty()) {
            return Optional.empty();
        }
        // without a figure of its own the root is three quarters of the diameter, less than that of any wood screw
        Optional<Length> foot = kind.get() == Fastener.Kind.SCREW
                ? root.or(() -> diameter.map(over -> over.times(0.75)))
                : Optional.empty();
        return Optional.of(new Fastener(
                name,
                about,
                kind.get(),
                diameter.get(),
                foot,
                head.get(),
                lengths,
                tool.get(),
                plain.bareUnit().isMetric(),
                boxes));
    }

    /** A nailer or driver from its keys; empty, with notices, when a key that it needs is missing or wrong. */
    public Optional<Tool> tool(Fields plain, String name) {
        Fields fields = plain.about(name);
        String about = fields.text("about").orElse("");
        SizeKeys sizes = new SizeKeys(fields, name, SizeKeys::aLength, CatalogNotices.NO_FASTENER_SIZE, notices);
        Optional<Length> noseLength = sizes.one("nose-length", SizeKeys.upTo(LARGEST));
        Optional<Length> noseWidth = sizes.one("nose-width", SizeKeys.upTo(LARGEST));
        Optional<Length> bodyWidth = sizes.one("body-width", SizeKeys.upTo(LARGEST));
        Optional<Length> bodyLength = sizes.one("body-length", SizeKeys.upTo(LARGEST));
        Angle lean = fields.has("lean") ? fields.angle("lean").orElse(Angle.degrees(0)) : Angle.degrees(0);
        boolean ahead = fields.yesNo("ahead").orElse(false);
        if (noseLength.isEmpty() || noseWidth.isEmpty() || bodyWidth.isEmpty() || bodyLength.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Tool(
                name, about, noseLength.get(), noseWidth.get(), bodyWidth.get(), bodyLength.get(), lean, ahead));
    }

    private Optional<Fastener.Kind> kind(Fields fields, String name) {
        Optional<Scalar> word = fields.needed("kind", missing("kind", CatalogNotices.NAIL_OR_SCREW));
        for (Fastener.Kind kind : Fastener.Kind.values()) {
            if (word.filter(text -> text.text().equals(kind.name().toLowerCase(Locale.ROOT)))
                    .isPresent()) {
                return Optional.of(kind);
            }
        }
        word.ifPresent(text -> notices.add(CatalogNotices.UNKNOWN_FASTENER_KIND
                .with("name", text.text())
                .at(text.mark())
                .of(name)));
        return Optional.empty();
    }

    private static Notice missing(String key, Phrase what) {
        return CatalogNotices.MISSING_KEY.with("key", key).with("what", what);
    }
}
