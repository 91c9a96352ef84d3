package buildup.catalog;

import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the entries under {@code woods:}. */
final class WoodReader {

    private static final Pattern NUMBER = Pattern.compile("\\d+\\.?\\d*|\\.\\d+");
    private static final Pattern DENSITY =
            Pattern.compile("(" + NUMBER + ") ?(|lb/ft3|lb/ft\\u00B3|kg/m3|kg/m\\u00B3)");

    /** lb/ft³; the heaviest woods weigh some 80. */
    private static final double GREATEST_DENSITY = 100;

    private final Notices notices;

    WoodReader(Notices notices) {
        this.notices = notices;
    }

    Optional<Wood> read(Fields fields, String name) {
        String about = fields.text("about").orElse("");
        OptionalDouble radial = number(fields, "radial", 0.02);
        OptionalDouble tangential = number(fields, "tangential", 0.02);
        OptionalDouble gravity = number(fields, "specific-gravity", 1.5);
        OptionalDouble density = density(fields);
        Optional<Wood.Group> group = group(fields);
        if (gravity.isEmpty() && density.isEmpty()) {
            if (!fields.has("specific-gravity") && !fields.has("density")) {
                refuse(
                        fields,
                        "specific-gravity",
                        "missing-key",
                        "Wood " + name + " has neither density nor specific-gravity.",
                        "Add 'density: 29 lb/ft3' or 'density: 470 kg/m3'.");
            }
            return Optional.empty();
        }
        double weight = density.orElseGet(() -> Wood.density(gravity.orElseThrow()));
        return Optional.of(new Wood(
                name, about, gravity.orElseGet(() -> Wood.specificGravity(weight)), weight, radial, tangential, group));
    }

    private Optional<Wood.Group> group(Fields fields) {
        Optional<Scalar> word = fields.scalar("group");
        Optional<Wood.Group> group = word.flatMap(text -> Arrays.stream(Wood.Group.values())
                .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(text.text()))
                .findFirst());
        if (word.isPresent() && group.isEmpty()) {
            notices.add(Notice.refusal(
                            "unknown-name",
                            "No group of woods is called '" + word.get().text() + "'.")
                    .at(word.get().mark())
                    .cure("Write softwood, hardwood or panel."));
        }
        return group;
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
                    "not-a-density",
                    "'" + text.get().text() + "' is not a density.",
                    "Write it as 29 lb/ft3 or 470 kg/m3.");
        }
        double amount = Double.parseDouble(written.group(1));
        double density = written.group(2).startsWith("kg") ? amount * Wood.LB_PER_CUBIC_FOOT : amount;
        return density > 0 && density <= GREATEST_DENSITY
                ? OptionalDouble.of(density)
                : refuse(
                        fields,
                        "density",
                        "not-a-density",
                        "No wood weighs " + text.get().text()
                                + (written.group(2).isEmpty() ? " lb/ft3." : "."),
                        "Write it as 29 lb/ft3 or 470 kg/m3.");
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
                        "not-a-number",
                        "'" + written + "' is not a " + key + " figure of a wood.",
                        "Write a decimal above 0 and up to " + greatest + ".");
    }

    private OptionalDouble refuse(Fields fields, String key, String code, String message, String cure) {
        notices.add(Notice.refusal(code, message).at(fields.mark(key)).cure(cure));
        return OptionalDouble.empty();
    }
}
