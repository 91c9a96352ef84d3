package buildup.catalog.family;

import buildup.catalog.entry.CatalogNotices;
import buildup.catalog.entry.Sizes;
import buildup.catalog.family.Shape.Derived;
import buildup.catalog.words.SizeText;
import buildup.shared.document.Entry;
import buildup.shared.document.Fields;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.length.Angle;
import buildup.shared.length.Length;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the entries under {@code profiles:}; their words stay unread. */
public final class FamilyReader {

    private static final List<String> STICK = List.of("thickness", "width");
    private static final Length USUAL_EDGE = Length.inches(0.25);

    private final LengthUnit unit;
    private final boolean builtIn;
    private final Notices notices;

    public FamilyReader(LengthUnit unit, boolean builtIn, Notices notices) {
        this.unit = unit;
        this.builtIn = builtIn;
        this.notices = notices;
    }

    /** A family of profiles from its keys; empty, with notices, when it cannot be drawn. */
    public Optional<Shape> read(Fields plain, String name) {
        Fields fields = plain.about(name);
        String kind = fields.text("kind").orElse("trim");
        String about = fields.text("about").orElse("");
        Optional<Fields> sprung = fields.fields("sprung");
        Optional<Family.Spring> spring = sprung.flatMap(inside -> spring(inside, name));
        Optional<Node> face = sprung.flatMap(inside -> inside.node("face"));
        Optional<Node> words = fields.node("words");
        List<Derived> derived = derived(fields);
        List<String> named = fields.scalars("sizes").stream().map(Scalar::text).toList();
        List<String> sizes = named.isEmpty() ? STICK : named;
        List<List<Length>> usual = usual(fields, sizes);
        if (sprung.isPresent() == words.isPresent()) {
            refuse(name, words.isPresent() ? CatalogNotices.WORDS_AND_SPRUNG : CatalogNotices.NO_WORDS, fields.mark());
            return Optional.empty();
        }
        if (sprung.isEmpty()) {
            return Optional.of(new Shape(
                    new Family(name, kind, about, sizes, usual, Optional.empty()), derived, words, unit, builtIn));
        }
        if (!sizes.equals(STICK)) {
            refuse(name, CatalogNotices.SPRUNG_SIZES, fields.mark("sizes"));
            return Optional.empty();
        }
        return spring.map(held -> new Shape(
                new Family(name, kind, about, sizes, usual, Optional.of(held)), derived, face, unit, builtIn));
    }

    private Optional<Family.Spring> spring(Fields sprung, String name) {
        Optional<Angle> angle = sprung.angle("spring");
        if (!sprung.has("spring")) {
            notices.add(CatalogNotices.NO_SPRING.notice().at(sprung.mark()).of(name));
        }
        Optional<Angle> upright = angle.filter(a -> a.toDegrees() > 0 && a.toDegrees() < 90);
        if (angle.isPresent() && upright.isEmpty()) {
            notices.add(CatalogNotices.NO_SPRING_ANGLE
                    .notice()
                    .at(sprung.mark("spring"))
                    .of(name));
        }
        Length wall = sprung.has("wall-edge") ? sprung.length("wall-edge").orElse(USUAL_EDGE) : USUAL_EDGE;
        Length ceiling =
                sprung.has("ceiling-edge") ? sprung.length("ceiling-edge").orElse(USUAL_EDGE) : USUAL_EDGE;
        return upright.map(a -> new Family.Spring(a, wall, ceiling));
    }

    private static List<Derived> derived(Fields fields) {
        List<Derived> all = new ArrayList<>();
        fields.mapping("let").ifPresent(mapping -> {
            Fields let = fields.fields(mapping, "let");
            for (Entry entry : mapping.entries()) {
                String name = entry.key().text();
                let.scalar(name).ifPresent(text -> all.add(new Derived(name, text)));
            }
        });
        return List.copyOf(all);
    }

    private List<List<Length>> usual(Fields fields, List<String> sizes) {
        List<List<Length>> all = new ArrayList<>();
        for (Scalar text : fields.scalars("usual")) {
            List<Length> read = new ArrayList<>();
            SizeText.split(text.text())
                    .forEach(size ->
                            fields.readLength(new Scalar(size, text.mark())).ifPresent(read::add));
            if (read.size() == sizes.size()) {
                all.add(read);
            } else {
                notices.add(CatalogNotices.USUAL
                        .with("text", text.text())
                        .with("sizes", Sizes.names(sizes))
                        .at(text.mark())
                        .of(fields.text("name").orElse("")));
            }
        }
        return all;
    }

    private void refuse(String name, Kind kind, Mark mark) {
        notices.add(kind.notice().at(mark).of(name));
    }
}
