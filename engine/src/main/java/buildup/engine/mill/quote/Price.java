package buildup.engine.mill.quote;

import buildup.catalog.mill.Head;
import buildup.catalog.mill.Mill;
import buildup.catalog.mill.Rates;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * What so many feet of a molding cost. The cost of wood and work is without mark-up; what is charged has it, and adds up
 * to the hundredth: total = set-up + knife + feet x foot.
 *
 * @param feet wanted
 * @param run feet that go through the machine: waste and set-up in
 * @param boardFeet to buy
 * @param wood, labor, machine, finish, specified cost
 * @param setUp, knife charged
 * @param foot charged for each foot
 * @param total charged
 * @param each total for each foot, set-up and knife shared out
 */
public record Price(
        BigDecimal feet,
        double run,
        double boardFeet,
        BigDecimal wood,
        BigDecimal labor,
        BigDecimal machine,
        BigDecimal finish,
        BigDecimal specified,
        BigDecimal setUp,
        BigDecimal knife,
        BigDecimal foot,
        BigDecimal total,
        BigDecimal each) {
    private static final int CENTS = 2;

    /** Decimals of a double that computing does not blur. */
    private static final int COMPUTED = 9;

    private static final BigDecimal MINUTES = BigDecimal.valueOf(60);

    static Price of(Item item, BigDecimal feet, Blank blank, Mill mill, Rates rates, Head head) {
        BigDecimal setUpFeet =
                BigDecimal.valueOf(mill.setUp().toInches()).divide(BigDecimal.valueOf(12), MathContext.DECIMAL64);
        BigDecimal run = feet.multiply(BigDecimal.ONE.add(item.waste())).add(setUpFeet);
        double boardFeet = blank.boardFeet(run.doubleValue(), mill.sound().doubleValue());
        BigDecimal wood = cents(
                clean(boardFeet).multiply(rates.wood().getOrDefault(item.wood().name(), BigDecimal.ZERO)));
        BigDecimal labor =
                cents(run.divide(rates.prepared(), MathContext.DECIMAL64).multiply(rates.labor()));
        BigDecimal hours =
                run.divide(BigDecimal.valueOf(head.feed().toInches() / 12).multiply(MINUTES), MathContext.DECIMAL64);
        BigDecimal machine = cents(hours.multiply(rates.machine()));
        BigDecimal finish = item.finishes().stream()
                .map(kind ->
                        cents(rates.finish().getOrDefault(kind, BigDecimal.ZERO).multiply(feet)))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal work = wood.add(labor).add(machine).add(finish);
        BigDecimal specified =
                item.lengths().isEmpty() ? cents(BigDecimal.ZERO) : cents(work.multiply(rates.specified()));
        BigDecimal charged = BigDecimal.ONE.add(rates.markUp());
        BigDecimal setUp = cents(rates.setUp().multiply(charged));
        BigDecimal knife = item.newKnife()
                ? cents(rates.knife()
                        .multiply(BigDecimal.valueOf(item.knifeWidth()))
                        .multiply(charged))
                : cents(BigDecimal.ZERO);
        BigDecimal foot = work.add(specified).multiply(charged).divide(feet, CENTS, RoundingMode.HALF_UP);
        BigDecimal total = cents(setUp.add(knife).add(foot.multiply(feet)));
        return new Price(
                feet,
                run.doubleValue(),
                boardFeet,
                wood,
                labor,
                machine,
                cents(finish),
                specified,
                setUp,
                knife,
                foot,
                total,
                total.divide(feet, CENTS, RoundingMode.HALF_UP));
    }

    /** Without the digits that computing blurs, so that a half of a hundredth is one in every unit. */
    private static BigDecimal clean(double computed) {
        return BigDecimal.valueOf(computed).setScale(COMPUTED, RoundingMode.HALF_UP);
    }

    static BigDecimal cents(BigDecimal sum) {
        return sum.setScale(CENTS, RoundingMode.HALF_UP);
    }
}
