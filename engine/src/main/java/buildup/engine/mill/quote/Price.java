package buildup.engine.mill.quote;

import buildup.catalog.mill.Head;
import buildup.catalog.mill.Mill;
import buildup.catalog.mill.Rates;
import buildup.engine.mill.milling.Knife;
import buildup.engine.mill.milling.Milled;
import buildup.shared.length.LengthUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * What so many feet of a molding cost. The cost of wood and work is without mark-up; what is charged has it, and adds up
 * to the hundredth: total = set-up + knife + feet x foot.
 *
 * @param sticks that are delivered
 * @param run feet that go through the machine: waste and set-up in
 * @param boardFeet to buy, its part of boards that it shares with other items in
 * @param kept board feet of drops that are taken back
 * @param hours that the machine runs
 * @param wood, drops, labor, glue, machine, finish, specified cost; drops are taken off
 * @param setUp, knife charged
 * @param foot charged for each foot
 * @param total charged
 * @param each total for each foot, set-up and knife shared out
 */
public record Price(
        Sticks sticks,
        double run,
        double boardFeet,
        double kept,
        double hours,
        BigDecimal wood,
        BigDecimal drops,
        BigDecimal labor,
        BigDecimal glue,
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

    /** By definition of the international foot. */
    private static final BigDecimal METERS_IN_A_FOOT = new BigDecimal("0.3048");

    private static final BigDecimal MINUTES = BigDecimal.valueOf(60);

    /**
     * Of so many feet.
     *
     * @param shared what it has of other items' boards, and they of its own
     */
    static Price of(Order order, OrderItem item, Milled milled, Blank blank, BigDecimal wanted, Shared shared) {
        Mill mill = order.mill();
        Rates rates = order.rates();
        Sticks sticks = Sticks.of(item.lengths(), wanted);
        BigDecimal feet = sticks.feet();
        BigDecimal run = run(item, mill, feet);
        double sound = mill.sound().doubleValue();
        double own = blank.boardFeet(run.doubleValue() - shared.strips() / blank.pieces(), sound);
        double boardFeet = own + shared.taken() - shared.given();
        double kept = own * sound * blank.kept() - shared.used();
        BigDecimal boardFoot = rates.wood().getOrDefault(item.wood().name(), BigDecimal.ZERO);
        BigDecimal wood = cents(clean(boardFeet).multiply(boardFoot));
        BigDecimal credit = mill.drops().map(Mill.Drops::credit).orElse(BigDecimal.ZERO);
        BigDecimal drops = cents(clean(kept).multiply(boardFoot).multiply(credit));
        BigDecimal labor = cents(run.multiply(BigDecimal.valueOf(blank.pieces()))
                .divide(rates.prepared(), MathContext.DECIMAL64)
                .multiply(rates.labor()));
        BigDecimal glue = cents(clean(run.doubleValue() * (blank.jointInAFoot() + item.jointInAFoot()))
                .multiply(rates.glue().orElse(BigDecimal.ZERO)));
        BigDecimal hours = hours(run, order.head(), passes(milled));
        BigDecimal machine = cents(hours.multiply(rates.machine()));
        BigDecimal finish = cents(item.finishes().stream()
                .map(kind ->
                        cents(rates.finish().getOrDefault(kind, BigDecimal.ZERO).multiply(feet)))
                .reduce(BigDecimal.ZERO, BigDecimal::add));
        BigDecimal work = wood.subtract(drops).add(labor).add(glue).add(machine).add(finish);
        BigDecimal specified = cents(item.lengths().isEmpty() ? BigDecimal.ZERO : work.multiply(rates.specified()));
        BigDecimal charged = BigDecimal.ONE.add(rates.markUp());
        BigDecimal setUp =
                cents(rates.setUp().multiply(BigDecimal.valueOf(setUps(milled))).multiply(charged));
        BigDecimal knife = cents(
                item.newKnife()
                        ? rates.knife().multiply(clean(knifeWidth(milled))).multiply(charged)
                        : BigDecimal.ZERO);
        BigDecimal foot = rate(work.add(specified).multiply(charged), feet, order.unit());
        BigDecimal total = cents(setUp.add(knife).add(foot.multiply(feet)));
        return new Price(
                sticks,
                run.doubleValue(),
                boardFeet,
                kept,
                hours.doubleValue(),
                wood,
                drops,
                labor,
                glue,
                machine,
                finish,
                specified,
                setUp,
                knife,
                foot,
                total,
                rate(total, feet, order.unit()));
    }

    /** What a foot costs, to the hundredth; in a metric order what a meter costs to the hundredth, of which a foot has its part. */
    static BigDecimal rate(BigDecimal all, BigDecimal feet, LengthUnit unit) {
        return unit.isMetric()
                ? all.divide(feet.multiply(METERS_IN_A_FOOT), CENTS, RoundingMode.HALF_UP)
                        .multiply(METERS_IN_A_FOOT)
                : all.divide(feet, CENTS, RoundingMode.HALF_UP);
    }

    /** Feet delivered. */
    public BigDecimal feet() {
        return sticks.feet();
    }

    /** Feet that go through the machine for so many that are delivered: waste and set-up in. */
    static BigDecimal run(OrderItem item, Mill mill, BigDecimal feet) {
        BigDecimal setUp =
                BigDecimal.valueOf(mill.setUp().toInches()).divide(BigDecimal.valueOf(12), MathContext.DECIMAL64);
        return feet.multiply(BigDecimal.ONE.add(item.waste())).add(setUp);
    }

    private static BigDecimal hours(BigDecimal run, Head head, int passes) {
        BigDecimal feed = BigDecimal.valueOf(Knife.feed(head));
        return run.multiply(BigDecimal.valueOf(passes)).divide(feed.multiply(MINUTES), MathContext.DECIMAL64);
    }

    /** All knives cut in one pass of the molder; each cutter of the shop's list takes one of its own. */
    static int passes(Milled milled) {
        return 1 + milled.cutters().size();
    }

    /** Each head with its knife, each cutter; planed stock is set up once. */
    static int setUps(Milled milled) {
        return Math.max(1, milled.heads().size());
    }

    /** Of all knives to be ground, in. */
    static double knifeWidth(Milled milled) {
        return milled.knives().stream().mapToDouble(Knife::width).sum();
    }

    /** Without the digits that computing blurs, so that a half of a hundredth is one in every unit. */
    private static BigDecimal clean(double computed) {
        return BigDecimal.valueOf(computed).setScale(COMPUTED, RoundingMode.HALF_UP);
    }

    static BigDecimal cents(BigDecimal sum) {
        return sum.setScale(CENTS, RoundingMode.HALF_UP);
    }
}
