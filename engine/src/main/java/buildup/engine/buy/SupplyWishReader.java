package buildup.engine.buy;

import buildup.catalog.Catalog;
import buildup.catalog.entry.Sizes;
import buildup.catalog.fastener.Fastener;
import buildup.catalog.supply.Good;
import buildup.catalog.supply.GoodsReader;
import buildup.catalog.supply.Volume;
import buildup.engine.room.block.LooseBlock;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.Stack;
import buildup.shared.document.Entry;
import buildup.shared.document.Fields;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code supplies:} of a document; what cannot be read is refused and left out. */
public final class SupplyWishReader {
    private static final int MOST_SIZES = 5;
    private static final BigDecimal MOST_SPARE = BigDecimal.ONE;
    private static final Pattern WHOLE = Pattern.compile("\\d{1,6}");
    private static final Pattern MONEY = Pattern.compile("(\\d{1,7})(?:\\.(\\d{1,2}))?");

    private final Stack stack;
    private final Catalog catalog;
    private final Notices notices;
    private final GoodsReader values;

    private SupplyWishReader(Stack stack, Catalog catalog, Notices notices) {
        this.stack = stack;
        this.catalog = catalog;
        this.notices = notices;
        this.values = new GoodsReader(notices);
    }

    /** What the document asks for; nothing when it has no such block. */
    public static SupplyWishes read(Stack stack, Fields root, Catalog catalog, Notices notices) {
        boolean asked = root.has("supplies");
        Optional<Fields> fields = root.fields("supplies");
        SupplyWishReader reader = new SupplyWishReader(stack, catalog, notices);
        return fields.map(reader::wishes)
                .orElseGet(() -> new SupplyWishes(
                        asked,
                        SupplyWishes.USUAL_SPARE,
                        List.of(),
                        List.of(),
                        Optional.empty(),
                        root.mark("supplies")));
    }

    private SupplyWishes wishes(Fields fields) {
        double spare = share(fields, "spare").orElse(SupplyWishes.USUAL_SPARE);
        List<SupplyWishes.Boxes> boxes = new ArrayList<>();
        for (Fields entry : fields.list("fasteners")) {
            boxes(entry, boxes).ifPresent(boxes::add);
        }
        List<SupplyWishes.Poured> goods = new ArrayList<>();
        for (Good.Kind kind : Good.Kind.values()) {
            if (fields.has(kind.word())) {
                Optional<Fields> own = fields.fields(kind.word());
                own.flatMap(entry -> poured(entry, kind)).ifPresent(goods::add);
            }
        }
        Optional<Fastener.Cut> blocks =
                fields.scalar("blocks").flatMap(call -> catalog.fastener(call, stack.lengths(), notices));
        return new SupplyWishes(true, spare, boxes, goods, blocks, fields.mark());
    }

    private Optional<Double> share(Fields fields, String key) {
        Optional<Scalar> text = fields.has(key) ? fields.scalar(key) : Optional.empty();
        Optional<BigDecimal> share = text.flatMap(values::share);
        if (share.filter(part -> part.compareTo(MOST_SPARE) > 0).isPresent()) {
            notices.add(BuyNotices.TOO_MUCH_SPARE
                    .with("text", text.orElseThrow().text())
                    .with("most", Figure.percent(MOST_SPARE.doubleValue()))
                    .at(fields.mark(key)));
            return Optional.empty();
        }
        return share.map(BigDecimal::doubleValue);
    }

    private Optional<SupplyWishes.Boxes> boxes(Fields entry, List<SupplyWishes.Boxes> before) {
        Optional<Fastener.Cut> use = entry.needed("of", BuyNotices.FASTENER_MISSING.notice())
                .flatMap(call -> catalog.fastener(call, stack.lengths(), notices));
        List<Pack> packs = packs(entry, "box", values::box, count -> (double) count, String::valueOf);
        int onHand = entry.has("on-hand")
                ? onHand(entry, SupplyWishReader::count, BuyNotices.A_COUNT).intValue()
                : 0;
        boolean twice = use.filter(cut -> before.stream().anyMatch(one -> same(one.use(), cut)))
                .isPresent();
        if (twice) {
            notices.add(BuyNotices.FASTENER_TWICE
                    .with("fastener", use.orElseThrow().phrase())
                    .at(entry.mark()));
        }
        return use.filter(cut -> !twice).map(cut -> new SupplyWishes.Boxes(cut, packs, onHand, entry.mark()));
    }

    private static Optional<Double> count(Scalar text) {
        String plain = text.text().strip();
        return WHOLE.matcher(plain).matches() ? Optional.of(Double.valueOf(plain)) : Optional.empty();
    }

    static boolean same(Fastener.Cut a, Fastener.Cut b) {
        return a.fastener().name().equals(b.fastener().name()) && a.length().near(b.length(), Sizes.SAME);
    }

    private Optional<SupplyWishes.Poured> poured(Fields entry, Good.Kind kind) {
        Optional<Good> listed = good(entry, kind);
        Optional<Good> own = listed.map(good -> new Good(
                good.name(),
                good.about(),
                kind,
                kind.spread() ? values.coverage(entry).or(good::coverage) : Optional.empty(),
                kind == Good.Kind.ADHESIVE ? values.bead(entry).or(good::bead) : Optional.empty(),
                kind == Good.Kind.PRIMER || kind == Good.Kind.PAINT
                        ? values.coats(entry).orElse(good.coats())
                        : good.coats(),
                good.packs(),
                good.metricPacks()));
        List<Pack> packs =
                packs(entry, "packs", values::pack, pack -> pack.cubicInches().doubleValue(), Volume::words);
        double onHand = entry.has("on-hand")
                ? onHand(
                        entry,
                        text -> Volume.read(text.text())
                                .map(pack -> pack.cubicInches().doubleValue()),
                        BuyNotices.A_VOLUME)
                : 0;
        List<String> pieces = kind == Good.Kind.GLUE || kind == Good.Kind.FILLER ? List.of() : pieces(entry);
        return own.map(good -> new SupplyWishes.Poured(good, packs.isEmpty() ? listed(good) : packs, onHand, pieces));
    }

    private Optional<Good> good(Fields entry, Good.Kind kind) {
        List<Good> known =
                catalog.goods().stream().filter(good -> good.kind() == kind).toList();
        Optional<Scalar> use = entry.scalar("use").filter(text -> !text.text().isBlank());
        Optional<Good> found = known.stream()
                .filter(good -> use.filter(
                                text -> !good.name().equals(text.text().strip()))
                        .isEmpty())
                .findFirst();
        if (found.isEmpty()) {
            String name = use.map(Scalar::text).orElse("");
            notices.add(BuyNotices.UNKNOWN_GOOD
                    .with("kind", kind.word())
                    .with("name", name)
                    .at(use.map(Scalar::mark).orElse(entry.mark()))
                    .cure(Suggestion.phrase(name, known.stream().map(Good::name).toList())));
        }
        return found;
    }

    private List<Pack> listed(Good good) {
        List<Volume> packs = stack.unit().isMetric() ? good.metricPacks() : good.packs();
        return packs.stream()
                .map(pack ->
                        new Pack(Phrase.plain(pack.words()), pack.cubicInches().doubleValue(), OptionalLong.empty()))
                .toList();
    }

    /** Sizes alone, or each with its price. */
    private <T> List<Pack> packs(
            Fields entry,
            String key,
            Function<Scalar, Optional<T>> reader,
            Function<T, Double> size,
            Function<T, String> words) {
        Optional<Node> node = entry.node(key);
        List<Pack> packs = new ArrayList<>();
        if (node.isPresent() && node.get() instanceof Mapping priced) {
            for (Entry one : priced.entries()) {
                Optional<T> pack = reader.apply(one.key());
                OptionalLong price = price(one.value());
                pack.ifPresent(good -> packs.add(new Pack(Phrase.plain(words.apply(good)), size.apply(good), price)));
            }
        } else {
            entry.scalars(key)
                    .forEach(text -> reader.apply(text)
                            .ifPresent(good -> packs.add(new Pack(
                                    Phrase.plain(words.apply(good)), size.apply(good), OptionalLong.empty()))));
        }
        if (packs.size() > MOST_SIZES) {
            notices.add(BuyNotices.TOO_MANY_SIZES
                    .with("count", Figure.count(packs.size()))
                    .with("most", Figure.count(MOST_SIZES))
                    .at(entry.mark(key)));
            return List.of();
        }
        return List.copyOf(packs);
    }

    /** A price in hundredths; none, and refused, when it is no plain number. */
    private OptionalLong price(Node node) {
        String text = node instanceof Scalar scalar ? scalar.text().strip() : "";
        Matcher money = MONEY.matcher(text);
        if (!money.matches()) {
            notices.add(BuyNotices.NOT_A_PRICE.with("text", text).at(node.mark()));
            return OptionalLong.empty();
        }
        String part = money.group(2) == null ? "" : money.group(2);
        return OptionalLong.of(Long.parseLong(money.group(1) + part + "0".repeat(2 - part.length())));
    }

    private Double onHand(Fields entry, Function<Scalar, Optional<Double>> reader, Phrase example) {
        Optional<Scalar> text = entry.scalar("on-hand");
        Optional<Double> amount = text.flatMap(reader);
        if (text.isPresent() && amount.isEmpty()) {
            say(BuyNotices.NOT_ON_HAND, text.get(), example);
        }
        return amount.orElse(0.0);
    }

    private void say(Kind kind, Scalar text, Phrase example) {
        notices.add(kind.with("text", text.text()).with("example", example).at(text.mark()));
    }

    private List<String> pieces(Fields entry) {
        List<String> known = stack.pieces().stream().map(Piece::name).toList();
        List<String> blocks = Arrays.stream(LooseBlock.Kind.values())
                .filter(LooseBlock.Kind::trim)
                .map(LooseBlock.Kind::word)
                .toList();
        List<String> names = new ArrayList<>();
        for (Scalar name : entry.scalars("pieces")) {
            if (known.contains(name.text()) || blocks.contains(name.text())) {
                names.add(name.text());
            } else {
                notices.add(BuyNotices.UNKNOWN_PIECE
                        .with("word", name.text())
                        .cure(Suggestion.phrase(name.text(), known))
                        .at(name.mark()));
            }
        }
        return List.copyOf(names);
    }
}
