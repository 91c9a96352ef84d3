package buildup.engine.room.sticks;

import buildup.engine.room.stock.EndJoint;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Stick;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Sticks to buy, what each is cut into and how good the plan is, as sheets. */
public final class StickSheets {
    private static final double HUNDREDTHS = 100;
    private static final Rounding TENTHS = Rounding.decimals(1);

    /** A stick with its number. */
    private record Numbered(CutList list, int number, Stick stick) {}

    /** A strip of a stick. */
    private record Ripped(CutList list, Stick.Strip strip) {
        OptionalDouble offcut(boolean kept) {
            return list.keeps(strip) == kept
                    ? OptionalDouble.of(LengthSteps.inches(strip.rest()))
                    : OptionalDouble.empty();
        }
    }

    /** Sticks that are alike. */
    private record Alike(String name, String wood, Stick.Origin origin, int length, long price) {
        static Alike of(Stick stick) {
            return new Alike(
                    stick.supply().name(), stick.supply().wood(), stick.origin(), stick.length(), stick.price());
        }
    }

    /** So many joints of a kind. */
    private record Joints(EndJoint joint, int count, Optional<Long> each) {}

    private StickSheets() {}

    /**
     * What is known of the sticks, in the order of a report.
     *
     * @param list absent when the stack names no stock; the columns are known all the same
     */
    public static List<Sheet> of(Optional<CutList> list) {
        return List.of(
                        totals(list),
                        buy(list),
                        sticks(list),
                        LengthSheets.lengths(list),
                        PlanSheets.splices(list),
                        wood(list),
                        PlanSheets.lots(list),
                        PlanSheets.rips(list),
                        joints(list))
                .stream()
                .map(sheet -> sheet.askedIf(list.isPresent()))
                .toList();
    }

    static <T> List<T> all(Optional<CutList> list, Function<CutList, List<T>> rows) {
        return list.map(rows).orElse(List.of());
    }

    /** What it takes altogether. */
    private static Sheet totals(Optional<CutList> list) {
        return Sheet.single("totals", "LENGTHS AND LUMBER IN ALL", list)
                .count("pieces", "lengths to cut", one -> one.pieces().size())
                .measure("feetOfPieces", "lengths, end to end", Quantity.RUN, CutList::feetWanted)
                .count("sticks", "sticks", one -> one.sticks().size())
                .measure(
                        "feet",
                        "sticks, end to end",
                        Quantity.RUN,
                        one -> one.bills().stream().mapToDouble(BuyLine::feet).sum())
                .measure(
                        "boardFeet",
                        "lumber",
                        Quantity.BOARD_FEET,
                        one -> one.bills().stream()
                                .mapToDouble(BuyLine::boardFeet)
                                .sum())
                .measure(
                        "wasteBoardFeet",
                        "waste of it",
                        Quantity.BOARD_FEET,
                        one -> one.bills().stream()
                                .mapToDouble(bill -> bill.boardFeet() * bill.wasted())
                                .sum())
                .sheet();
    }

    private static Sheet buy(Optional<CutList> list) {
        Map<Alike, Integer> counts = new LinkedHashMap<>();
        list.ifPresent(one -> one.sticks().forEach(stick -> counts.merge(Alike.of(stick), 1, Integer::sum)));
        return Sheet.of("buy", "BUY LIST", List.copyOf(counts.entrySet()))
                .name("of", "stick", entry -> entry.getKey().name())
                .name("wood", "wood", entry -> entry.getKey().wood())
                .name("from", "from", entry -> entry.getKey().origin().word())
                .measure(
                        "length",
                        "length",
                        Quantity.LENGTH,
                        Rounding.STICK,
                        entry -> LengthSteps.inches(entry.getKey().length()))
                .count("count", "count", Map.Entry::getValue)
                .measureIf(
                        "each",
                        "each",
                        Quantity.MONEY,
                        Rounding.NEAREST,
                        entry -> price(entry.getKey().price()))
                .measureIf(
                        "price",
                        "total",
                        Quantity.MONEY,
                        Rounding.NEAREST,
                        entry -> price(entry.getKey().price() * entry.getValue()))
                .sheet();
    }

    private static OptionalDouble price(long hundredths) {
        return hundredths == 0 ? OptionalDouble.empty() : OptionalDouble.of(hundredths / HUNDREDTHS);
    }

    private static Sheet sticks(Optional<CutList> list) {
        List<Numbered> rows = all(
                list,
                one -> IntStream.range(0, one.sticks().size())
                        .mapToObj(i -> new Numbered(one, i + 1, one.sticks().get(i)))
                        .toList());
        return Sheet.of("sticks", "STICK BY STICK", rows)
                .count("number", "no.", Numbered::number)
                .name("of", "stick", row -> row.stick().supply().name())
                .words("wood", "wood", row -> row.stick().supply().wood())
                .words("from", "from", row -> row.stick().origin().word())
                .measure(
                        "length",
                        "length",
                        Quantity.LENGTH,
                        Rounding.STICK,
                        row -> LengthSteps.inches(row.stick().length()))
                .measure(
                        "boardFeet",
                        "lumber",
                        Quantity.BOARD_FEET,
                        row -> row.stick().boardFeet())
                .measureIf(
                        "price",
                        "price",
                        Quantity.MONEY,
                        Rounding.NEAREST,
                        row -> price(row.stick().price()))
                .many(
                        "strips",
                        "strips",
                        strips(),
                        row -> row.stick().strips().stream()
                                .map(strip -> new Ripped(row.list(), strip))
                                .toList())
                .tableOfEach(
                        "strips",
                        "STICK BY STICK: lengths from the left, long point to long point; offcuts to keep, and waste"
                                + (list.filter(StickSheets::gluedUp).isPresent()
                                        ? "; plies are cut square, long point to long point, glued up, and mitered then"
                                        : ""),
                        "number",
                        "of",
                        "length",
                        "strips.ripWidth",
                        "strips.pieces",
                        "strips.offcut",
                        "strips.waste")
                .sheet();
    }

    private static boolean gluedUp(CutList list) {
        return list.sticks().stream()
                .flatMap(stick -> stick.strips().stream())
                .flatMap(strip -> strip.pieces().stream())
                .anyMatch(lie -> lie.piece().gluedUp());
    }

    private static Columns<Ripped> strips() {
        return Columns.<Ripped>inner()
                .length("width", "width", row -> LengthSteps.inches(row.strip().width()))
                .json()
                .lengthIf(
                        "ripWidth",
                        "ripped to",
                        row -> row.strip().ripped()
                                ? OptionalDouble.of(
                                        LengthSteps.inches(row.strip().width()))
                                : OptionalDouble.empty())
                .text()
                .flag("ripped", "ripped", row -> row.strip().ripped())
                .json()
                .length(
                        "rest",
                        "behind the last cut",
                        row -> LengthSteps.inches(row.strip().rest()))
                .json()
                .lengthIf("offcut", "offcut", row -> row.offcut(true))
                .text()
                .lengthIf("waste", "waste", row -> row.offcut(false))
                .text()
                .flag("kept", "kept", row -> row.list().keeps(row.strip()))
                .json()
                .many("pieces", "lengths", lies(), row -> row.strip().pieces());
    }

    private static Columns<Stick.LaidPiece> lies() {
        return Columns.<Stick.LaidPiece>inner()
                .name("id", "label", lie -> lie.piece().id())
                .wordsIf("part", "part", lie -> Optional.of(lie.piece().part()).filter(part -> !part.isEmpty()))
                .json()
                .flagIf("turned", "turned", lie -> lie.turned() ? Optional.of(true) : Optional.empty())
                .json()
                .sayingIf(
                        "lies",
                        "lies",
                        lie -> lie.turned() ? Optional.of(Phrase.of("turned face for back")) : Optional.empty())
                .text()
                .length("from", "begins at", lie -> LengthSteps.inches(lie.from()))
                .json()
                .length("length", "length", lie -> lie.piece().inches())
                .lengthIf("ripWidth", "then ripped to", StickSheets::rippedTo)
                .json()
                .sayingIf("then", "then", StickSheets::then)
                .text();
    }

    private static OptionalDouble rippedTo(Stick.LaidPiece lie) {
        return lie.ripped().isPresent()
                ? OptionalDouble.of(LengthSteps.inches(lie.ripped().getAsInt()))
                : OptionalDouble.empty();
    }

    private static Optional<Phrase> then(Stick.LaidPiece lie) {
        return lie.ripped().isPresent()
                ? Optional.of(Phrase.of("then ripped to {width}")
                        .with("width", LengthSteps.figure(lie.ripped().getAsInt())))
                : Optional.empty();
    }

    private static Sheet wood(Optional<CutList> list) {
        return Sheet.of("wood", "WOOD", all(list, CutList::bills))
                .name("of", "stick", BuyLine::name)
                .name("wood", "wood", BuyLine::wood)
                .count("sticks", "sticks", BuyLine::sticks)
                .measure("feet", "", Quantity.RUN, BuyLine::feet)
                .measure("boardFeet", "", Quantity.BOARD_FEET, BuyLine::boardFeet)
                .measure("used", "used", Quantity.SHARE, TENTHS, BuyLine::used)
                .measure("kept", "kept", Quantity.SHARE, TENTHS, BuyLine::kept)
                .measure("wasted", "wasted", Quantity.SHARE, TENTHS, BuyLine::wasted)
                .measureIf(
                        "price",
                        "price",
                        Quantity.MONEY,
                        Rounding.NEAREST,
                        bill -> bill.priced() ? OptionalDouble.of(bill.price() / HUNDREDTHS) : OptionalDouble.empty())
                .table("WOOD: lumber by nominal sizes", "of", "wood", "sticks", "feet", "boardFeet", "price")
                .table(
                        "WHERE THE WOOD GOES: used in lengths; kept in offcuts and wide edge strips; wasted in kerfs, ends, narrow edges, short offcuts",
                        "of",
                        "wood",
                        "used",
                        "kept",
                        "wasted")
                .sheet();
    }

    private static Sheet joints(Optional<CutList> list) {
        return Sheet.of("joints", "JOINTS to make", all(list, StickSheets::jointsOf))
                .name("joint", "joint", row -> row.joint().word())
                .count("count", "count", Joints::count)
                .measureIf(
                        "each",
                        "each",
                        Quantity.MONEY,
                        Rounding.NEAREST,
                        row -> row.each()
                                .map(each -> OptionalDouble.of(each / HUNDREDTHS))
                                .orElse(OptionalDouble.empty()))
                .measureIf(
                        "price",
                        "total",
                        Quantity.MONEY,
                        Rounding.NEAREST,
                        row -> row.each()
                                .map(each -> OptionalDouble.of(each * row.count() / HUNDREDTHS))
                                .orElse(OptionalDouble.empty()))
                .sheet();
    }

    private static List<Joints> jointsOf(CutList list) {
        List<Joints> joints = new ArrayList<>();
        list.joints()
                .forEach((joint, count) -> joints.add(new Joints(
                        joint, count, Optional.ofNullable(list.shop().joints().get(joint)))));
        return joints;
    }
}
