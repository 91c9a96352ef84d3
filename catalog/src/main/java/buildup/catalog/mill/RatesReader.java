package buildup.catalog.mill;

import buildup.catalog.entry.CatalogNotices;
import buildup.catalog.entry.SizeKeys;
import buildup.catalog.wood.BoardReader;
import buildup.shared.document.Entry;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.length.Length;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the entries under {@code mills:} and {@code rates:}; all their keys must be there. */
public final class RatesReader {
    private static final Pattern MONEY = Pattern.compile("\\d{1,7}(?:\\.\\d{1,4})?");
    private static final Pattern SHARE = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,3})?) ?%");
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** No board, allowance or saw is larger: 100 ft. */
    private static final Length LARGEST = Length.inches(1200);

    /** The least of what cannot be nothing. */
    private static final Length SOME = Length.inches(0.5);

    private final Notices notices;

    public RatesReader(Notices notices) {
        this.notices = notices;
    }

    /** A mill's machines from their keys; empty, with notices, when a key that it needs is missing or wrong. */
    public Optional<Mill> mill(Fields plain, String name) {
        Fields fields = plain.about(name);
        String about = fields.text("about").orElse("");
        SizeKeys sizes = new SizeKeys(fields, name, RatesReader::missing, CatalogNotices.NO_RATE_SIZE, notices);
        Optional<String> boards = fields.text("boards").map(String::strip);
        List<Mill.Quarter> quarters = quarters(fields, boards.isPresent());
        Optional<Length> allowance = sizes.one("allowance", atLeast(Length.inches(0)));
        List<Mill.Width> widths = fields.needs("board", missing("board"))
                ? new BoardWidths(notices).read(fields, "board", name)
                : List.of();
        Optional<Length> edge = sizes.one("edge", atLeast(Length.inches(0)));
        Optional<Length> kerf = sizes.one("kerf", atLeast(Length.inches(0)));
        Optional<Length> joint = sizes.one("joint", atLeast(Length.inches(0)));
        Optional<Length> longest = sizes.one("longest", atLeast(SOME));
        Optional<BigDecimal> sound =
                share(fields, "sound", name).filter(part -> part.signum() > 0 && part.compareTo(BigDecimal.ONE) <= 0);
        Optional<Length> setUp = sizes.one("set-up", atLeast(Length.inches(0)));
        Map<String, BigDecimal> waste = table(fields, "waste", this::share);
        Optional<Length> accuracy = sizes.one("accuracy", atLeast(Length.inches(0)));
        Optional<Mill.Drops> drops = drops(fields, sizes, name);
        Optional<Mill.RandomLengths> random = random(fields, name);
        Optional<String> moisture = fields.text("moisture");
        if (fields.has("sound") && sound.isEmpty()) {
            notices.add(
                    CatalogNotices.SOUND_SHARE.notice().at(fields.mark("sound")).of(name));
        }
        boolean whole = allowance.isPresent()
                && !widths.isEmpty()
                && edge.isPresent()
                && kerf.isPresent()
                && joint.isPresent()
                && longest.isPresent()
                && sound.isPresent()
                && setUp.isPresent()
                && accuracy.isPresent();
        if (!whole || quarters.isEmpty() || waste.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Mill(
                name,
                about,
                boards,
                quarters,
                allowance.get(),
                widths,
                edge.get(),
                kerf.get(),
                joint.get(),
                longest.get(),
                sound.get(),
                setUp.get(),
                waste,
                accuracy.get(),
                drops,
                random,
                moisture));
    }

    /** Names of a board list, or quarters and what they yield. */
    private List<Mill.Quarter> quarters(Fields fields, boolean listed) {
        List<Mill.Quarter> quarters = new ArrayList<>();
        if (listed) {
            fields.needs("quarters", missing("quarters"));
            for (Scalar label : fields.scalars("quarters")) {
                quarter(label, label.text()).ifPresent(quarters::add);
            }
        } else {
            quarters.addAll(table(fields, "quarters", this::quarter).values());
        }
        quarters.sort(Comparator.comparing(Mill.Quarter::finished));
        return quarters;
    }

    private Optional<Mill.Drops> drops(Fields fields, SizeKeys sizes, String name) {
        if (!fields.has("drop") && !fields.has("credit")) {
            return Optional.empty();
        }
        Optional<Length> least = sizes.one("drop", atLeast(SOME));
        Optional<BigDecimal> credit = share(fields, "credit", name);
        return least.isPresent() && credit.isPresent()
                ? Optional.of(new Mill.Drops(least.get(), credit.get()))
                : Optional.empty();
    }

    private Optional<Mill.RandomLengths> random(Fields fields, String name) {
        return fields.fields("random").flatMap(inside -> {
            Fields about = inside.about(name);
            SizeKeys sizes = new SizeKeys(about, name, RatesReader::missing, CatalogNotices.NO_RATE_SIZE, notices);
            Optional<Length> shortest = sizes.one("from", atLeast(SOME));
            Optional<Length> under = sizes.one("under", atLeast(SOME));
            Optional<BigDecimal> few = share(about, "few", name);
            return shortest.isPresent() && under.isPresent() && few.isPresent()
                    ? Optional.of(new Mill.RandomLengths(shortest.get(), under.get(), few.get()))
                    : Optional.empty();
        });
    }

    /** A mill's rates from their keys; empty, with notices, when a key that it needs is missing or wrong. */
    public Optional<Rates> rates(Fields plain, String name) {
        Fields fields = plain.about(name);
        String about = fields.text("about").orElse("");
        String currency = fields.text("currency").orElse("");
        Map<String, BigDecimal> wood = table(fields, "wood", this::money);
        Optional<BigDecimal> knife = money(fields, "knife", name);
        Optional<BigDecimal> setUp = money(fields, "set-up", name);
        Optional<BigDecimal> labor = money(fields, "labor", name);
        Optional<BigDecimal> machine = money(fields, "machine", name);
        Optional<BigDecimal> prepared = money(fields, "prepared", name);
        Optional<BigDecimal> glue = fields.has("glue") ? money(fields, "glue", name) : Optional.empty();
        Map<String, BigDecimal> finish = fields.has("finish") ? table(fields, "finish", this::money) : Map.of();
        Optional<BigDecimal> specified = share(fields, "specified", name);
        Optional<BigDecimal> markUp = share(fields, "mark-up", name);
        Optional<BigDecimal> minimum = money(fields, "minimum", name);
        if (prepared.filter(feet -> feet.signum() == 0).isPresent()) {
            notices.add(
                    CatalogNotices.NO_FEET.notice().at(fields.mark("prepared")).of(name));
            prepared = Optional.empty();
        }
        boolean whole = knife.isPresent()
                && setUp.isPresent()
                && labor.isPresent()
                && machine.isPresent()
                && prepared.isPresent()
                && specified.isPresent()
                && markUp.isPresent()
                && minimum.isPresent();
        if (!whole || wood.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Rates(
                name,
                about,
                currency,
                wood,
                knife.get(),
                setUp.get(),
                labor.get(),
                machine.get(),
                prepared.get(),
                glue,
                finish,
                specified.get(),
                markUp.get(),
                minimum.get()));
    }

    /** What stands under a key, by name in the order of the file; nothing when any of it was refused. */
    private <T> Map<String, T> table(Fields fields, String key, BiFunction<Scalar, String, Optional<T>> reader) {
        if (!fields.needs(key, missing(key))) {
            return Map.of();
        }
        Map<String, T> all = new LinkedHashMap<>();
        List<Entry> entries =
                fields.mapping(key).map(mapping -> mapping.entries()).orElse(List.of());
        fields.mapping(key).map(mapping -> fields.fields(mapping, key)).ifPresent(inside -> {
            for (Entry entry : entries) {
                String label = entry.key().text();
                inside.scalar(label)
                        .flatMap(value -> reader.apply(value, label))
                        .ifPresent(value -> all.put(label, value));
            }
        });
        return all.size() == entries.size() ? all : Map.of();
    }

    private Optional<Mill.Quarter> quarter(Scalar finished, String label) {
        Optional<Length> rough = BoardReader.nominal(label, LengthUnit.INCH);
        Optional<Length> most = BoardReader.nominal(finished.text(), LengthUnit.INCH);
        if (rough.isEmpty() || most.isEmpty() || most.get().compareTo(rough.get()) > 0) {
            notices.add(CatalogNotices.NO_QUARTER
                    .with("quarter", label)
                    .with("finished", finished.text())
                    .at(finished.mark()));
            return Optional.empty();
        }
        return Optional.of(new Mill.Quarter(label, rough.get(), most.get()));
    }

    private Optional<BigDecimal> money(Fields fields, String key, String name) {
        return fields.needed(key, missing(key)).flatMap(text -> money(text, name));
    }

    private Optional<BigDecimal> money(Scalar text, String name) {
        String written = text.text().strip();
        if (!MONEY.matcher(written).matches()) {
            notices.add(CatalogNotices.NO_PRICE
                    .with("text", text.text())
                    .at(text.mark())
                    .of(name));
            return Optional.empty();
        }
        return Optional.of(new BigDecimal(written));
    }

    private Optional<BigDecimal> share(Fields fields, String key, String name) {
        return fields.needed(key, missing(key)).flatMap(text -> share(text, name));
    }

    /** A share of one, written in percent; nothing when the text is none. */
    public static Optional<BigDecimal> share(String text) {
        Matcher share = SHARE.matcher(text.strip());
        return share.matches() ? Optional.of(new BigDecimal(share.group(1)).divide(HUNDRED)) : Optional.empty();
    }

    private Optional<BigDecimal> share(Scalar text, String name) {
        Optional<BigDecimal> share = share(text.text());
        if (share.isEmpty()) {
            notices.add(CatalogNotices.NO_SHARE
                    .with("text", text.text())
                    .at(text.mark())
                    .of(name));
        }
        return share;
    }

    private static Predicate<Length> atLeast(Length least) {
        return length -> length.compareTo(least) >= 0 && length.compareTo(LARGEST) <= 0;
    }

    private static Notice missing(String key) {
        return CatalogNotices.MISSING_RATE.with("key", key);
    }
}
