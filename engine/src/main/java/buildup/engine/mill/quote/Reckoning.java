package buildup.engine.mill.quote;

import buildup.catalog.mill.Mill;
import buildup.catalog.mill.Rates;
import buildup.engine.mill.milling.Knife;
import buildup.engine.mill.milling.Milled;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** How each figure of a price came about, a line each, in the order in which whoever checks it goes on. */
record Reckoning(Order order, OrderItem item, Blank blank, Milled milled, Price price, Shared shared) {
    private static final Phrase DELIVERED = Phrase.of("{each} of each length asked for");
    private static final Phrase RUN = Phrase.of("{feet}, {waste} more for waste, and {setUp} to set up");
    private static final Phrase WOOD_TO_BUY = Phrase.of(
            "{strips} in {pieces} x {run} of strip; {yield} of the boards' width is strip, and {sound} is sound");
    private static final Phrase WITH_OTHERS =
            Phrase.of("{strips} of strip are ripped from what is left beside {items}; their part of those boards");
    private static final Phrase FOR_OTHERS =
            Phrase.of("strips of {items} are ripped from what is left beside its own; their part is taken off");
    private static final Phrase LUMBER = Phrase.of("{boardFeet} at {rate}");
    private static final Phrase DROPS =
            Phrase.of("{kept} beside the strips, {least} and wider, at {credit} of {rate}; taken off");
    private static final Phrase LABOR = Phrase.of("{pieces} x {run} of strip, {prepared} in an hour, at {rate}");
    private static final Phrase GLUE = Phrase.of("{joint} of joint in {run}, at {rate}");
    private static final Phrase MACHINE = Phrase.of("{run} at {feed}, {passes}: {hours} at {rate}");
    private static final Phrase ONE_PASS = Phrase.of("1 pass");
    private static final Phrase PASSES = Phrase.of("{passes} passes");
    private static final Phrase FINISH = Phrase.of("{feet} of each of {finishes}");
    private static final Phrase SPECIFIED = Phrase.of("{share} of all of these");
    private static final Phrase SET_UP = Phrase.of("{setUps} x {rate}, and {markUp} on it");
    private static final Phrase KNIVES = Phrase.of("{widths} wide at {rate}, and {markUp} on it");
    private static final Phrase ON_HAND = Phrase.of("on hand");
    private static final Phrase FOOT = Phrase.of("{sum} of wood and work, and {markUp} on it, over {feet}");
    private static final Phrase TOTAL = Phrase.of("{feet} at {foot}, and set-up and knives");

    List<PriceStep> steps() {
        List<PriceStep> steps = new ArrayList<>();
        if (!item.lengths().isEmpty()) {
            steps.add(new PriceStep(
                    "delivered",
                    feet(),
                    DELIVERED.with("each", Figure.count(price.sticks().each()))));
        }
        wood(steps);
        work(steps);
        charged(steps);
        return List.copyOf(steps);
    }

    private void wood(List<PriceStep> steps) {
        Mill mill = order.mill();
        Figure rate = Amounts.rate(
                Quantity.MONEY_PER_BOARD_FOOT,
                order.rates().wood().getOrDefault(item.wood().name(), BigDecimal.ZERO));
        steps.add(new PriceStep(
                "run",
                Amounts.run(price.run()),
                RUN.with("feet", feet())
                        .with("waste", Amounts.percent(item.waste()))
                        .with("setUp", Amounts.run(mill.setUp()))));
        steps.addAll(boards());
        steps.add(money(
                "lumber",
                price.wood(),
                LUMBER.with("boardFeet", Amounts.boardFeet(price.boardFeet())).with("rate", rate)));
        mill.drops()
                .filter(drops -> price.drops().signum() > 0)
                .ifPresent(drops -> steps.add(money(
                        "drops",
                        price.drops(),
                        DROPS.with("kept", Amounts.boardFeet(price.kept()))
                                .with("least", Amounts.size(drops.least()))
                                .with("credit", Amounts.percent(drops.credit()))
                                .with("rate", rate))));
    }

    /** Its own boards, and what it shares of them and of those of other items. */
    private List<PriceStep> boards() {
        double run = price.run() - shared.strips() / blank.pieces();
        List<PriceStep> steps = new ArrayList<>();
        steps.add(new PriceStep(
                "wood to buy",
                Amounts.boardFeet(blank.boardFeet(run, order.mill().sound().doubleValue())),
                WOOD_TO_BUY
                        .with("strips", Amounts.boardFeet(run * blank.boardFeetInAFoot()))
                        .with("pieces", Figure.count(blank.pieces()))
                        .with("run", Amounts.run(run))
                        .with("yield", Figure.share(blank.inStrips()).rounded(Rounding.decimals(1)))
                        .with("sound", Amounts.percent(order.mill().sound()))));
        if (shared.taken() > 0) {
            steps.add(new PriceStep(
                    "from other boards",
                    Amounts.boardFeet(shared.taken()),
                    WITH_OTHERS
                            .with("strips", Amounts.run(shared.strips()))
                            .with("items", Listing.names(shared.from()))));
        }
        if (shared.given() > 0) {
            steps.add(new PriceStep(
                    "to other strips",
                    Amounts.boardFeet(shared.given()),
                    FOR_OTHERS.with("items", Listing.names(shared.to()))));
        }
        return steps;
    }

    private void work(List<PriceStep> steps) {
        Rates rates = order.rates();
        steps.add(money(
                "labor",
                price.labor(),
                LABOR.with("pieces", Figure.count(blank.pieces()))
                        .with("run", Amounts.run(price.run()))
                        .with("prepared", Amounts.run(rates.prepared().doubleValue()))
                        .with("rate", Amounts.money(rates.labor()))));
        if (blank.gluedUp() || item.jointInAFoot() > 0) {
            steps.add(money(
                    "glue",
                    price.glue(),
                    GLUE.with("run", Amounts.run(price.run()))
                            .with(
                                    "joint",
                                    Figure.of(
                                            Quantity.SURFACE,
                                            price.run() * (blank.jointInAFoot() + item.jointInAFoot())))
                            .with(
                                    "rate",
                                    Amounts.rate(
                                            Quantity.MONEY_PER_SURFACE,
                                            rates.glue().orElse(BigDecimal.ZERO)))));
        }
        int passes = Price.passes(milled);
        steps.add(money(
                "machine",
                price.machine(),
                MACHINE.with("run", Amounts.run(price.run()))
                        .with("feed", Figure.of(Quantity.FEED, Knife.feed(order.head())))
                        .with("passes", (passes == 1 ? ONE_PASS : PASSES).with("passes", Figure.count(passes)))
                        .with("hours", Figure.of(Quantity.HOURS, price.hours()).rounded(Rounding.decimals(3)))
                        .with("rate", Amounts.money(rates.machine()))));
        if (!item.finishes().isEmpty()) {
            steps.add(money(
                    "finish",
                    price.finish(),
                    FINISH.with("feet", feet())
                            .with(
                                    "finishes",
                                    Listing.commas(item.finishes().stream()
                                            .map(this::finish)
                                            .toList()))));
        }
        if (!item.lengths().isEmpty()) {
            steps.add(money(
                    "lengths asked for",
                    price.specified(),
                    SPECIFIED.with("share", Amounts.percent(rates.specified()))));
        }
    }

    private Phrase finish(String kind) {
        return Phrase.of("{kind} at {rate}")
                .with("kind", kind)
                .with(
                        "rate",
                        Amounts.rate(
                                Quantity.MONEY_PER_RUN, order.rates().finish().getOrDefault(kind, BigDecimal.ZERO)));
    }

    private void charged(List<PriceStep> steps) {
        Rates rates = order.rates();
        Figure markUp = Amounts.percent(rates.markUp());
        steps.add(money(
                "set-up",
                price.setUp(),
                SET_UP.with("setUps", Figure.count(Price.setUps(milled)))
                        .with("rate", Amounts.money(rates.setUp()))
                        .with("markUp", markUp)));
        if (!milled.knives().isEmpty()) {
            Phrase ground = KNIVES.with(
                            "widths",
                            Listing.and(milled.knives().stream()
                                    .map(Knife::width)
                                    .map(Amounts::size)
                                    .toList()))
                    .with("rate", Amounts.rate(Quantity.MONEY_PER_INCH, rates.knife()))
                    .with("markUp", markUp);
            steps.add(money("knives", price.knife(), item.newKnife() ? ground : ON_HAND));
        }
        BigDecimal sum = price.wood()
                .subtract(price.drops())
                .add(price.labor())
                .add(price.glue())
                .add(price.machine())
                .add(price.finish())
                .add(price.specified());
        Figure bare = feet().rounded(Rounding.decimals(2));
        steps.add(new PriceStep(
                "price",
                Figure.of(Quantity.MONEY_PER_RUN, price.foot().doubleValue()),
                FOOT.with("sum", Amounts.money(sum)).with("markUp", markUp).with("feet", bare)));
        steps.add(money(
                "total",
                price.total(),
                TOTAL.with("feet", bare).with("foot", Amounts.rate(Quantity.MONEY_PER_RUN, price.foot()))));
    }

    private Figure feet() {
        return Amounts.run(price.feet().doubleValue());
    }

    private static PriceStep money(String what, BigDecimal sum, Phrase how) {
        return new PriceStep(what, Amounts.money(sum), how);
    }
}
