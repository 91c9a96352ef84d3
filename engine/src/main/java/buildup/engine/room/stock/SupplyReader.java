package buildup.engine.room.stock;

import buildup.catalog.Catalog;
import buildup.catalog.wood.Wood;
import buildup.catalog.words.SizeText;
import buildup.engine.section.stack.Stack;
import buildup.profiles.Profile;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.length.Length;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** Reads the entries of {@code stock.sticks}; one that is wrong is refused and left out. */
final class SupplyReader {
    private static final int MOST_ENTRIES = 300;
    private static final int MOST_ON_HAND = 999;

    /** Longer sticks are a slip, most likely millimeters read as inches. */
    private static final double LONGEST = 1200;

    private final Stack stack;
    private final Catalog catalog;
    private final ShopReader shop;
    private final Notices notices;
    private final BoardFeet boardFeet;

    SupplyReader(Stack stack, Catalog catalog, ShopReader shop, Notices notices) {
        this.stack = stack;
        this.catalog = catalog;
        this.shop = shop;
        this.notices = notices;
        this.boardFeet = new BoardFeet(catalog.boardLists().stream()
                .filter(list -> list.name().equals(stack.boardList()))
                .findFirst());
    }

    List<Supply> read(Fields fields, int trim) {
        List<Fields> entries = fields.list("sticks");
        if (entries.size() > MOST_ENTRIES) {
            shop.say(
                    StickNotices.MANY_KINDS
                            .with("kinds", Figure.count(entries.size()))
                            .with("most", Figure.count(MOST_ENTRIES)),
                    fields.mark("sticks"));
            return List.of();
        }
        List<Supply> supplies = new ArrayList<>();
        for (Fields entry : entries) {
            supply(entry, trim).ifPresent(supplies::add);
        }
        return List.copyOf(supplies);
    }

    private Optional<Supply> supply(Fields entry, int trim) {
        Optional<Scalar> call = entry.needed("of", StickNotices.STICK_OF_WHAT.notice());
        Optional<Profile> profile =
                call.flatMap(text -> catalog.profile(text, stack.boardList(), stack.lengths(), notices));
        Optional<Wood> wood = shop.wood(entry, mark -> shop.say(StickNotices.WHICH_WOOD.notice(), mark))
                .flatMap(name -> catalog.wood(name, notices));
        List<Scalar> buying = entry.scalars("buy");
        List<Scalar> lying = entry.scalars("on-hand");
        List<Integer> buy = new ArrayList<>();
        buying.forEach(text -> length(entry, text, trim).ifPresent(buy::add));
        List<Supply.OnHand> onHand = new ArrayList<>();
        lying.forEach(text -> onHand(entry, text, trim).ifPresent(onHand::add));
        if (buying.isEmpty() && lying.isEmpty()) {
            shop.say(
                    StickNotices.STICK_WITHOUT_LENGTH.with(
                            "of", call.map(Scalar::text).orElse("a kind of stick")),
                    entry.mark());
        }
        OptionalLong rate = shop.money(entry, "price");
        Optional<Supply.Unit> unit = unit(entry);
        boolean whole = buy.size() == buying.size() && onHand.size() == lying.size();
        if (profile.isEmpty() || wood.isEmpty() || unit.isEmpty() || !whole) {
            return Optional.empty();
        }
        Profile of = profile.get();
        return Optional.of(new Supply(
                of.name(),
                of.kind(),
                wood.get().name(),
                of.thickness(),
                of.width(),
                boardFeet.inAFoot(of.thickness(), of.width()),
                buy.stream().distinct().sorted().toList(),
                onHand,
                rate,
                unit.get(),
                entry.mark()));
    }

    private Optional<Supply.Unit> unit(Fields entry) {
        Optional<Scalar> per = entry.scalar("per").filter(text -> !text.text().isBlank());
        Supply.Unit usual = stack.unit().isMetric() ? Supply.Unit.METER : Supply.Unit.FOOT;
        Optional<Supply.Unit> unit = Arrays.stream(Supply.Unit.values())
                .filter(one -> one.word().equals(per.map(Scalar::text).orElse(usual.word())))
                .findFirst();
        if (unit.isEmpty()) {
            shop.say(
                    StickNotices.UNKNOWN_UNIT
                            .with("word", per.orElseThrow().text())
                            .cure(Phrase.plain(Suggestion.cure(
                                    per.orElseThrow().text(),
                                    Arrays.stream(Supply.Unit.values())
                                            .map(Supply.Unit::word)
                                            .toList()))),
                    per.orElseThrow().mark());
        }
        return unit;
    }

    /** {@code 96}, or {@code 3 x 96} for three of them. */
    private Optional<Supply.OnHand> onHand(Fields entry, Scalar text, int trim) {
        List<String> parts = SizeText.split(text.text());
        if (parts.size() != 2) {
            return length(entry, text, trim).map(length -> new Supply.OnHand(length, 1));
        }
        Optional<Integer> count = Optional.of(parts.get(0))
                .filter(number -> number.matches("[1-9]\\d{0,2}"))
                .map(Integer::parseInt)
                .filter(number -> number <= MOST_ON_HAND);
        if (count.isEmpty()) {
            shop.say(
                    StickNotices.NOT_A_COUNT.with("word", parts.get(0)).with("example", Figure.atLeast(96)),
                    text.mark());
        }
        Optional<Integer> length = length(entry, new Scalar(parts.get(1), text.mark()), trim);
        return count.isEmpty() ? Optional.empty() : length.map(each -> new Supply.OnHand(each, count.get()));
    }

    private Optional<Integer> length(Fields entry, Scalar text, int trim) {
        Optional<Length> length = entry.readLength(text);
        if (length.isEmpty()) {
            return Optional.empty();
        }
        double inches = length.get().toInches();
        Mark mark = text.mark();
        int steps = shop.grid().offered(Math.min(inches, LONGEST));
        if (inches > LONGEST) {
            shop.say(StickNotices.STICK_TOO_LONG.with("size", Figure.length(inches)), mark);
            return Optional.empty();
        }
        if (steps - 2 * trim <= 0) {
            shop.say(
                    (trim > 0 ? StickNotices.TRIMMED_AWAY : StickNotices.NOTHING_TO_CUT)
                            .with("size", LengthSteps.figure(steps)),
                    mark);
            return Optional.empty();
        }
        return Optional.of(steps);
    }
}
