package buildup.engine.buy;

import buildup.engine.room.sticks.CutList;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop;
import buildup.engine.room.stock.Stick;
import buildup.engine.room.stock.Supply;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Rounding;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.OptionalLong;

/**
 * What waste wants of one kind of stick on top of a cutting plan. The plan is cut without a slip, and what it leaves over is
 * there for one: sticks are added only as far as all of them together fall short of the lengths and their waste. One that is added holds the
 * longest length that is cut of its kind, so that any of them can be cut again.
 *
 * @param waste share of the lengths
 * @param lengths that are cut of it; where boards are ripped, as wide as the board, in
 * @param sticks of the plan, end to end, in
 * @param basket what is bought besides
 */
public record WasteSticks(Supply supply, double waste, double lengths, double sticks, Basket basket) {
    private static final Phrase LENGTH = Phrase.of("{length}");

    /** One for each kind of stick in the plan. */
    public static List<WasteSticks> of(CutList list, double waste, Notices notices) {
        return list.byKind().entrySet().stream()
                .map(kind -> of(list.shop(), kind.getKey(), kind.getValue(), waste, notices))
                .toList();
    }

    private static WasteSticks of(Shop shop, Supply supply, List<Stick> own, double waste, Notices notices) {
        double lengths = own.stream()
                .flatMap(stick -> stick.strips().stream())
                .mapToDouble(strip -> LengthSteps.inches(strip.width()) / supply.width() * ends(strip))
                .sum();
        double sticks = own.stream()
                .mapToDouble(stick -> LengthSteps.inches(stick.length()))
                .sum();
        double missing = lengths * (1 + waste) - sticks;
        if (missing > 0 && supply.buy().isEmpty()) {
            notices.add(BuyNotices.NOTHING_TO_BUY
                    .with("stick", supply.name())
                    .with("share", Figure.percent(waste))
                    .with("length", Figure.atLeast(missing))
                    .at(supply.mark()));
        }
        Basket basket = supply.buy().isEmpty() ? Basket.EMPTY : Basket.holding(missing, packs(shop, supply, own));
        return new WasteSticks(supply, waste, lengths, sticks, basket);
    }

    /** The lengths of a strip, each from long point to long point. */
    private static double ends(Stick.Strip strip) {
        return strip.pieces().stream()
                .mapToDouble(lie -> LengthSteps.inches(lie.piece().length()))
                .sum();
    }

    private static List<Pack> packs(Shop shop, Supply supply, List<Stick> own) {
        int longest = own.stream()
                .flatMap(stick -> stick.strips().stream())
                .flatMap(strip -> strip.pieces().stream())
                .mapToInt(lie -> lie.piece().length())
                .max()
                .orElse(0);
        List<Integer> enough = supply.buy().stream()
                .filter(length -> shop.usable(length) >= longest)
                .toList();
        // where none to be had is so long, any is better than none
        return (enough.isEmpty() ? supply.buy() : enough)
                .stream()
                        .map(length -> new Pack(
                                LENGTH.with(
                                        "length",
                                        Figure.length(LengthSteps.inches(length))
                                                .rounded(Rounding.STICK)),
                                LengthSteps.inches(length),
                                supply.rate().isPresent()
                                        ? OptionalLong.of(supply.price(length))
                                        : OptionalLong.empty()))
                        .toList();
    }

    /** What of the lengths all sticks hold besides, in; negative when they fall short. */
    double left() {
        return sticks + basket.size() - lengths;
    }
}
