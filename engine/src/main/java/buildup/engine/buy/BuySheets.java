package buildup.engine.buy;

import buildup.engine.buy.Basket.Taken;
import buildup.engine.room.run.Job;
import buildup.engine.room.sticks.CutList;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Stick;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** What is counted, what is bought and what it costs, as sheets. */
public final class BuySheets {
    /** The key of the sheet that {@link #total} gives. */
    public static final String TOTAL = "costInAll";

    private static final double HUNDREDTHS = 100;
    private static final double SQUARE_FOOT = 144;
    private static final double FOOT = 12;

    private static final Phrase BOX = Phrase.of("box of {pack}");
    private static final Phrase NAMED = Phrase.of("{name}");
    private static final Phrase LONG = Phrase.of("{name} x {length}");
    private static final Phrase FOR_WASTE = Phrase.of("{share} of waste on {lengths}; the plan has {sticks}");
    private static final Phrase FOR_LENGTHS = Phrase.of("the lengths of the plan");
    private static final Phrase TO_FIND = Phrase.of("missing, for the lengths of the plan");

    /** A line of what is bought: one size of pack. */
    private record Line(Bought bought, Optional<Taken> taken) {}

    /** A line of the list for the shop. */
    private record Item(Phrase what, Phrase use, Phrase pack, int count, OptionalLong each) {}

    private BuySheets() {}

    /** What is counted for a stack and what is bought for it besides sticks. */
    public static List<Sheet> of(Purchases purchases) {
        return List.of(rows(purchases), faces(purchases), glued(purchases), supplies(purchases)).stream()
                .map(sheet -> sheet.askedIf(purchases.asked()))
                .toList();
    }

    /** All that is bought, sticks included, and what it costs. */
    public static List<Sheet> of(Optional<Shopping> shopping) {
        return List.of(waste(shopping), shopping(shopping), cost(shopping));
    }

    private static Sheet rows(Purchases purchases) {
        return Sheet.of("fasteners", "ROWS COUNTED: nails and screws along the plan", purchases.rows())
                .name("row", "row", row -> row.fixed().fastening().name())
                .name("piece", "piece", row -> row.fixed().fastening().piece())
                .saying("use", "use", row -> row.fixed().fastening().use().phrase())
                .both()
                .measure(
                        "spacing",
                        "spacing",
                        Quantity.LENGTH,
                        row -> row.fixed().fastening().spacing())
                .count("sticks", "sticks", RowCount::sticks)
                .count("count", "counted", RowCount::count)
                .count("shown", "to fill", RowCount::shown)
                .sheet();
    }

    private static Sheet faces(Purchases purchases) {
        return Sheet.of("finishFaces", "FACES TO FINISH: what shows, returns included", purchases.faces())
                .name("run", "run", face -> runName(purchases, face))
                .name("piece", "piece", face -> face.name(purchases.section()))
                .measure("faces", "faces", Quantity.SURFACE, face -> face.faces() / SQUARE_FOOT)
                .measure("ends", "ends cut square", Quantity.SURFACE, face -> face.ends() / SQUARE_FOOT)
                .measure("area", "total", Quantity.SURFACE, face -> face.area() / SQUARE_FOOT)
                .sheet();
    }

    private static String runName(Purchases purchases, FaceArea face) {
        return purchases
                .job()
                .map(Job::plan)
                .map(plan -> plan.runs().get(face.run()).name())
                .orElse("");
    }

    private static Sheet glued(Purchases purchases) {
        return Sheet.of("gluedFaces", "GLUED FACES", purchases.glued())
                .name("joint", "joint", GluedFaces::joint)
                .count("count", "joints", one -> Math.rint(one.count()))
                .measure("area", "glued", Quantity.AREA, GluedFaces::area)
                .sheet();
    }

    private static Sheet supplies(Purchases purchases) {
        List<Line> lines = new ArrayList<>();
        for (Bought bought : purchases.bought()) {
            bought.basket().taken().forEach(taken -> lines.add(new Line(bought, Optional.of(taken))));
            if (bought.basket().taken().isEmpty()) {
                lines.add(new Line(bought, Optional.empty()));
            }
        }
        return Sheet.of("supplies", "SUPPLIES TO BUY: in whole packs", lines)
                .name("what", "what", line -> line.bought().name())
                .measureIf(
                        "length",
                        "length",
                        Quantity.LENGTH,
                        Rounding.LISTED,
                        line -> line.bought().length())
                .saying("for", "for", line -> line.bought().use())
                .both()
                .measureIf("counted", "needed", Quantity.COUNT, Rounding.NEAREST, line -> of(line, Quantity.COUNT))
                .json()
                .measureIf("volume", "needed", Quantity.VOLUME, Rounding.NEAREST, line -> of(line, Quantity.VOLUME))
                .json()
                .figureIf("needed", "needed", line -> Optional.of(line.bought().needed()))
                .text()
                .figureIf(
                        "onHand",
                        "on hand",
                        line -> Optional.of(line.bought().onHand()).filter(amount -> amount.amount() > 0))
                .text()
                .sayingIf(
                        "pack",
                        "pack",
                        line -> line.taken().map(taken -> taken.pack().words()))
                .both()
                .count("count", "packs", line -> line.taken().map(Taken::count).orElse(0))
                .measureIf(
                        "each",
                        "each",
                        Quantity.MONEY,
                        Rounding.NEAREST,
                        line -> price(
                                line.taken().map(taken -> taken.pack().price()).orElse(OptionalLong.empty()), 1))
                .measureIf(
                        "price",
                        "total",
                        Quantity.MONEY,
                        Rounding.NEAREST,
                        line -> line.taken()
                                .map(taken -> price(taken.pack().price(), taken.count()))
                                .orElse(OptionalDouble.empty()))
                .sheet();
    }

    private static OptionalDouble of(Line line, Quantity quantity) {
        Figure needed = line.bought().needed();
        return needed.quantity() == quantity ? OptionalDouble.of(needed.amount()) : OptionalDouble.empty();
    }

    private static OptionalDouble price(OptionalLong each, int count) {
        return each.isPresent() ? OptionalDouble.of(each.getAsLong() * count / HUNDREDTHS) : OptionalDouble.empty();
    }

    private static Sheet waste(Optional<Shopping> shopping) {
        return Sheet.of(
                        "wasteSticks",
                        "WASTE: what the sticks of the plan leave over for it, and what is bought besides",
                        shopping.map(Shopping::waste).orElse(List.of()))
                .name("of", "stick", one -> one.supply().name())
                .name("wood", "wood", one -> one.supply().wood())
                .measure("waste", "wanted", Quantity.SHARE, WasteSticks::waste)
                .measure("lengths", "lengths", Quantity.RUN, one -> one.lengths() / FOOT)
                .measure("sticks", "in the plan", Quantity.RUN, one -> one.sticks() / FOOT)
                .measure(
                        "bought",
                        "bought besides",
                        Quantity.RUN,
                        one -> one.basket().size() / FOOT)
                .measure("left", "over the lengths", Quantity.SHARE, one -> one.left() / one.lengths())
                .measureIf(
                        "price",
                        "price",
                        Quantity.MONEY,
                        Rounding.NEAREST,
                        one -> one.basket().priced() && !one.basket().taken().isEmpty()
                                ? OptionalDouble.of(one.basket().price() / HUNDREDTHS)
                                : OptionalDouble.empty())
                .sheet()
                .askedIf(shopping.filter(all -> !all.waste().isEmpty()).isPresent());
    }

    /** The list for the shop alone; written where more than sticks are asked for. */
    public static Sheet shopping(Optional<Shopping> shopping) {
        return Sheet.of(
                        "shopping",
                        "SHOPPING LIST",
                        shopping.map(BuySheets::itemsOf).orElse(List.of()))
                .saying("what", "what", Item::what)
                .both()
                .saying("pack", "size", Item::pack)
                .both()
                .saying("for", "for", Item::use)
                .both()
                .count("count", "count", Item::count)
                .measureIf("each", "each", Quantity.MONEY, Rounding.NEAREST, item -> price(item.each(), 1))
                .measureIf("price", "total", Quantity.MONEY, Rounding.NEAREST, item -> price(item.each(), item.count()))
                .sheet()
                .askedIf(shopping.filter(Shopping::asked).isPresent());
    }

    private static List<Item> itemsOf(Shopping shopping) {
        List<Item> items = new ArrayList<>();
        shopping.list().ifPresent(list -> items.addAll(sticks(list)));
        for (WasteSticks waste : shopping.waste()) {
            Phrase use = FOR_WASTE
                    .with("share", Figure.percent(waste.waste()))
                    .with("lengths", Figure.of(Quantity.RUN, waste.lengths() / FOOT))
                    .with("sticks", Figure.of(Quantity.RUN, waste.sticks() / FOOT));
            waste.basket()
                    .taken()
                    .forEach(taken -> items.add(
                            item(named(waste.supply().name(), waste.supply().wood()), use, taken)));
        }
        shopping.purchases()
                .bought()
                .forEach(bought -> bought.basket().taken().forEach(taken -> items.add(boughtItem(bought, taken))));
        return List.copyOf(items);
    }

    private static String named(String stick, String wood) {
        return stick + ", " + wood;
    }

    private static Item boughtItem(Bought bought, Taken taken) {
        Item item = item(bought.name(), bought.use(), taken);
        if (bought.needed().quantity() != Quantity.COUNT) {
            return item;
        }
        Phrase what = bought.length().isEmpty()
                ? item.what()
                : LONG.with("name", bought.name())
                        .with(
                                "length",
                                Figure.length(bought.length().getAsDouble()).rounded(Rounding.LISTED));
        return new Item(what, item.use(), BOX.with("pack", item.pack()), item.count(), item.each());
    }

    private static Item item(String what, Phrase use, Taken taken) {
        return new Item(
                NAMED.with("name", what),
                use,
                taken.pack().words(),
                taken.count(),
                taken.pack().price());
    }

    /** The sticks that are bought or missing, alike ones together. */
    private static List<Item> sticks(CutList list) {
        record Alike(String name, String wood, Stick.Origin origin, int length, long price) {}
        Map<Alike, Integer> counts = new LinkedHashMap<>();
        list.sticks().stream()
                .filter(stick -> stick.origin() != Stick.Origin.ON_HAND)
                .forEach(stick -> counts.merge(
                        new Alike(
                                stick.supply().name(),
                                stick.supply().wood(),
                                stick.origin(),
                                stick.length(),
                                stick.price()),
                        1,
                        Integer::sum));
        List<Item> items = new ArrayList<>();
        counts.forEach((stick, count) -> items.add(new Item(
                NAMED.with("name", named(stick.name(), stick.wood())),
                stick.origin() == Stick.Origin.BOUGHT ? FOR_LENGTHS : TO_FIND,
                Phrase.of("{length}")
                        .with(
                                "length",
                                Figure.length(LengthSteps.inches(stick.length()))
                                        .rounded(Rounding.STICK)),
                count,
                stick.price() == 0 ? OptionalLong.empty() : OptionalLong.of(stick.price()))));
        return items;
    }

    /**
     * What all of it costs, as a figure that a line may ask for.
     *
     * @param shopping absent where it was not asked or cannot be had
     */
    public static Sheet total(Optional<Shopping> shopping) {
        return Sheet.single(TOTAL, "COST of all that 'cuts' buys, and of the joints", shopping)
                .measureIf(
                        "cost",
                        "cost",
                        Quantity.MONEY,
                        Rounding.NEAREST,
                        all -> all.priced() ? OptionalDouble.of(total(all)) : OptionalDouble.empty())
                .sheet()
                .askedIf(shopping.isPresent());
    }

    private static double total(Shopping all) {
        return (all.woodPrice() + all.wastePrice() + all.purchases().price() + all.labor()) / HUNDREDTHS;
    }

    private static Sheet cost(Optional<Shopping> shopping) {
        boolean more = shopping.filter(Shopping::asked).isPresent();
        String[] told = more
                ? new String[] {"wood", "waste", "supplies", "labor", "total", "complete"}
                : new String[] {"wood", "labor", "total", "complete"};
        return Sheet.single("cost", "COST", shopping)
                .measure("wood", "wood", Quantity.MONEY, all -> all.woodPrice() / HUNDREDTHS)
                .flag("complete", more ? "all of it has a price" : "all of the wood has a price", Shopping::priced)
                .measure("waste", "wood for waste", Quantity.MONEY, all -> all.wastePrice() / HUNDREDTHS)
                .measure(
                        "supplies",
                        "supplies",
                        Quantity.MONEY,
                        all -> all.purchases().price() / HUNDREDTHS)
                .measure("labor", "joints", Quantity.MONEY, all -> all.labor() / HUNDREDTHS)
                .measure("total", "total", Quantity.MONEY, BuySheets::total)
                .table("COST", told)
                .sheet()
                .askedIf(shopping.filter(all -> all.list().isPresent() || all.asked())
                        .isPresent());
    }
}
