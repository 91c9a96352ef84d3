package buildup.catalog.wood;

import buildup.catalog.entry.CatalogNotices;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the entries under {@code woods:}. */
public final class WoodReader {

    private static final Pattern NUMBER = Pattern.compile("\\d+\\.?\\d*|\\.\\d+");
    private static final Pattern DENSITY =
            Pattern.compile("(" + NUMBER + ") ?(|lb/ft3|lb/ft\\u00B3|kg/m3|kg/m\\u00B3)");

    /** lb/ft³; the heaviest woods weigh some 80. */
    private static final double GREATEST_DENSITY = 100;

    private final Notices notices;

    public WoodReader(Notices notices) {
        this.notices = notices;
    }

    /** A wood from its keys; empty, with notices, when a key that it needs is missing or wrong. */
    public Optional<Wood> read(Fields fields, String name) {
        String about = fields.text("about").orElse("");
        OptionalDouble radial = number(fields, "radial", 0.02);
        OptionalDouble tangential = number(fields, "tangential", 0.02);
        OptionalDouble gravity = number(fields, "specific-gravity", 1.5);
        OptionalDouble density = density(fields);
        Optional<Wood.Group> group = group(fields);
        if (gravity.isEmpty() && density.isEmpty()) {
            if (!fields.has("specific-gravity") && !fields.has("density")) {
                refuse(fields, "specific-gravity", CatalogNotices.NO_DENSITY.with("wood", name));
            }
            return Optional.empty();
        }
        double weight = density.orElseGet(() -> Wood.density(gravity.orElseThrow()));
        return Optional.of(new Wood(
                name,
                about,
                gravity.orElseGet(() -> Wood.specificGravity(weight)),
                weight,
                radial,
                tangential,
                group,
                sawn(fields)));
    }

    private Optional<Wood.Group> group(Fields fields) {
        Optional<Scalar> word = fields.scalar("group");
        Optional<Wood.Group> group = word.flatMap(text -> Arrays.stream(Wood.Group.values())
                .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(text.text()))
                .findFirst());
        if (word.isPresent() && group.isEmpty()) {
            notices.add(CatalogNotices.UNKNOWN_GROUP
                    .with("name", word.get().text())
                    .at(word.get().mark()));
        }
        return group;
    }

    private Optional<Sawn> sawn(Fields fields) {
        Optional<Scalar> word = fields.scalar("cut");
        Optional<Sawn> sawn = word.flatMap(text -> Sawn.named(text.text()));
        if (word.isPresent() && sawn.isEmpty()) {
            notices.add(CatalogNotices.UNKNOWN_CUT
                    .with("name", word.get().text())
                    .at(word.get().mark()));
        }
        return sawn;
    }

    private OptionalDouble density(Fields fields) {
        Optional<Scalar> text = fields.scalar("density");
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        Matcher written = DENSITY.matcher(text.get().text().strip());
        if (!written.matches()) {
            return refuse(
                    fields,
                    "density",
                    CatalogNotices.DENSITY.with("text", text.get().text()));
        }
        double amount = Double.parseDouble(written.group(1));
        double density = written.group(2).startsWith("kg") ? amount * Wood.LB_PER_CUBIC_FOOT : amount;
        return density > 0 && density <= GREATEST_DENSITY
                ? OptionalDouble.of(density)
                : refuse(
                        fields,
                        "density",
                        CatalogNotices.NO_SUCH_WEIGHT.with(
                                "text", text.get().text() + (written.group(2).isEmpty() ? " lb/ft3" : "")));
    }

    private OptionalDouble number(Fields fields, String key, double greatest) {
        Optional<Scalar> text = fields.scalar(key);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        String written = text.get().text().strip();
        double value = NUMBER.matcher(written).matches() ? Double.parseDouble(written) : 0;
        return value > 0 && value <= greatest
                ? OptionalDouble.of(value)
                : refuse(
                        fields,
                        key,
                        CatalogNotices.NO_WOOD_NUMBER
                                .with("text", written)
                                .with("key", key)
                                .with(
                                        "most",
                                        Figure.of(Quantity.COUNT, greatest)
                                                .rounded(Rounding.decimals(greatest < 1 ? 2 : 1))));
    }

    private OptionalDouble refuse(Fields fields, String key, Notice notice) {
        notices.add(notice.at(fields.mark(key)));
        return OptionalDouble.empty();
    }
}
