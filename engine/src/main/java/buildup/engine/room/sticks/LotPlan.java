package buildup.engine.room.sticks;

import buildup.engine.room.stock.Shop;
import buildup.shared.figure.Phrase;

/**
 * How a lot is laid out.
 *
 * @param name what its pieces are cut from
 * @param strip width of the strip or stick, {@link LengthSteps}
 * @param ripped whether it is ripped from wider boards
 * @param pieces how many
 * @param sticks how many sticks, or strips, they take
 * @param aim what was made least
 * @param over how much more this may take than the least possible: hundredths when the aim is the price, else sticks to
 *     be bought; 0 is proved. Of what is ripped it tells of the strips alone, at the boards chosen; the {@link RipPlan}
 *     tells of the boards
 * @param missing whether some of its pieces wait for sticks that are nowhere
 * @param ended whether the search came to its own end
 * @param steps that it took
 */
public record LotPlan(
        Phrase name,
        String wood,
        int strip,
        boolean ripped,
        int pieces,
        int sticks,
        Shop.Aim aim,
        long over,
        boolean missing,
        boolean ended,
        long steps) {
    /** Whether no cheaper plan is possible. */
    public boolean proved() {
        return over == 0;
    }
}
