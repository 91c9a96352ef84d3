package buildup.engine.mill.quote;

import buildup.catalog.Catalog;
import buildup.catalog.mill.Head;
import buildup.catalog.mill.Mill;
import buildup.catalog.mill.Rates;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads an order, all its faults in one run. */
final class OrderReader {
    static final String USUAL_MILL = "usual";

    private static final Pattern RUN =
            Pattern.compile("(?<number>\\d{1,6}(?:\\.\\d{1,4})?)(?: ?(?<unit>ft|feet|m|meters))?");
    private static final BigDecimal METERS_PER_FOOT = new BigDecimal("0.3048");
    private static final int MOST_ITEMS = 100;
    private static final int MOST_BREAKS = 12;

    private final Catalog catalog;
    private final Claims claims;
    private final Notices notices;

    OrderReader(Catalog catalog, Claims claims, Notices notices) {
        this.catalog = catalog;
        this.claims = claims;
        this.notices = notices;
    }

    Optional<Order> read(Document document) {
        Fields plain = Fields.of(document, claims, notices, new LengthReader(LengthUnit.INCH, Map.of()));
        LengthUnit unit = unit(plain);
        LengthReader lengths = new LengthReader(unit, Map.of());
        Fields fields = plain.withReader(lengths);
        String title = fields.text("title").orElse("");
        // the catalog's files are read by whoever may open files
        fields.scalars("catalog");
        Optional<String> validUntil = fields.text("valid-until");
        Optional<Mill> mill =
                catalog.mill(named(fields, "mill").orElse(new Scalar(USUAL_MILL, fields.mark())), notices);
        Optional<Scalar> called = fields.needed("rates", QuoteNotices.NO_RATES.notice());
        Optional<Rates> rates = called.flatMap(name -> catalog.rates(name, notices));
        Optional<Head> head = catalog.head(named(fields, "head"), notices);
        OrderSheet sheet = OrderSheet.read(fields);
        List<BigDecimal> breaks = breaks(fields, unit);
        Optional<Scalar> wood = named(fields, "wood");
        String boards = fields.text("boards").orElse(Catalog.USUAL_BOARDS);
        List<Fields> entries = fields.list("items");
        if (entries.isEmpty()) {
            boolean stack = fields.mapping().get("pieces").isPresent();
            say((stack ? QuoteNotices.A_STACK : QuoteNotices.NO_ITEMS).notice(), fields.mark("items"));
        } else if (entries.size() > MOST_ITEMS) {
            say(
                    QuoteNotices.MANY_ITEMS
                            .with("items", Figure.count(entries.size()))
                            .with("most", Figure.count(MOST_ITEMS)),
                    fields.mark("items"));
            return Optional.empty();
        }
        List<OrderItem> items = new ArrayList<>();
        Set<String> names = new HashSet<>();
        ItemReader reader = new ItemReader(catalog, boards, lengths, notices);
        for (Fields entry : entries) {
            reader.read(entry, wood, mill, rates).ifPresent(item -> {
                if (!names.add(item.name())) {
                    say(QuoteNotices.ITEM_TWICE.with("item", item.name()), entry.mark("name"));
                }
                items.add(item);
            });
        }
        notices.addAll(claims.unclaimed(document));
        return notices.refused()
                ? Optional.empty()
                : Optional.of(new Order(
                        title,
                        unit,
                        validUntil,
                        mill.orElseThrow(),
                        rates.orElseThrow(),
                        head.orElseThrow(),
                        sheet,
                        items,
                        breaks));
    }

    private LengthUnit unit(Fields fields) {
        Optional<String> asked = fields.text("units");
        Optional<LengthUnit> unit = asked.flatMap(LengthUnit::named);
        if (asked.isPresent() && unit.isEmpty()) {
            say(QuoteNotices.UNKNOWN_UNIT.with("word", asked.get()), fields.mark("units"));
        }
        return unit.orElse(LengthUnit.INCH);
    }

    private List<BigDecimal> breaks(Fields fields, LengthUnit unit) {
        List<Scalar> asked = fields.renamed("breaks", "quantities").scalars("quantities");
        if (asked.size() > MOST_BREAKS) {
            say(
                    QuoteNotices.MANY_QUANTITIES
                            .with("quantities", Figure.count(asked.size()))
                            .with("most", Figure.count(MOST_BREAKS)),
                    fields.mark("quantities"));
            return List.of();
        }
        List<BigDecimal> breaks = new ArrayList<>();
        Optional<String> usual = unit.isMetric() ? Optional.empty() : Optional.of("ft");
        asked.forEach(text -> feet(text, usual, notices).ifPresent(breaks::add));
        return breaks.stream().distinct().sorted().toList();
    }

    /** What is wanted of an item: so many feet, or so many meters. */
    static Optional<BigDecimal> wanted(Fields item, String name, Notices notices) {
        Optional<Scalar> meters = named(item, "meters");
        if (meters.isEmpty()) {
            return item.needed("feet", QuoteNotices.NO_FEET.notice())
                    .flatMap(text -> feet(text, Optional.of("ft"), notices));
        }
        if (named(item, "feet").isPresent()) {
            notices.add(QuoteNotices.FEET_AND_METERS
                    .notice()
                    .at(meters.get().mark())
                    .of(name));
        }
        return feet(meters.get(), Optional.of("m"), notices);
    }

    /**
     * Feet of a run, one at least, in whichever unit they are written.
     *
     * @param usual the unit of a bare number; a bare number is asked about where there is none
     */
    private static Optional<BigDecimal> feet(Scalar text, Optional<String> usual, Notices notices) {
        Matcher run = RUN.matcher(text.text().strip());
        if (!run.matches()) {
            notices.add(QuoteNotices.NOT_FEET.with("word", text.text()).at(text.mark()));
            return Optional.empty();
        }
        Optional<String> unit = Optional.ofNullable(run.group("unit")).or(() -> usual);
        if (unit.isEmpty()) {
            notices.add(QuoteNotices.FEET_OR_METERS
                    .with("word", run.group("number"))
                    .at(text.mark()));
            return Optional.empty();
        }
        BigDecimal number = new BigDecimal(run.group("number"));
        BigDecimal feet = unit.get().startsWith("m") ? number.divide(METERS_PER_FOOT, MathContext.DECIMAL128) : number;
        if (feet.compareTo(BigDecimal.ONE) < 0) {
            notices.add(QuoteNotices.NOT_FEET.with("word", text.text()).at(text.mark()));
            return Optional.empty();
        }
        return Optional.of(feet);
    }

    static Optional<Scalar> named(Fields fields, String key) {
        return fields.scalar(key).filter(text -> !text.text().isBlank());
    }

    private void say(Notice notice, Mark mark) {
        notices.add(notice.at(mark));
    }
}
