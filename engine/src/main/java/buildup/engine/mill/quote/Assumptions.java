package buildup.engine.mill.quote;

import buildup.catalog.Mill;
import buildup.catalog.Rates;
import buildup.engine.mill.milling.Knife;
import buildup.engine.mill.milling.Milled;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Everything that a price rests on, in sentences. */
record Assumptions(Order order) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    List<String> ofAll(double marks) {
        Mill mill = order.mill();
        Rates rates = order.rates();
        List<String> all = new ArrayList<>();
        all.add("Rates '" + rates.name() + "': " + said(rates.about()));
        all.add("Mill '" + mill.name() + "': " + said(mill.about()));
        all.add("Boards come in " + size(mill.board()) + " wide, one with another, up to " + feet(mill.longest())
                + " ft long; " + percent(mill.sound()) + " of the wood is sound.");
        all.add("Each profile takes " + feet(mill.setUp()) + " ft to set up; "
                + decimals(rates.prepared().doubleValue()) + " ft of blank are made ready in an hour.");
        all.add("The " + order.head().name() + " runs " + feet(order.head().feed()) + " ft a minute: " + decimals(marks)
                + " knife marks to the inch.");
        all.add("Mark-up " + percent(rates.markUp()) + " on everything; no order under "
                + rates.minimum().toPlainString() + ".");
        all.add("Profiles within " + size(mill.accuracy()) + " of the drawing.");
        all.add("Prices are those of the rates; taxes, freight and packing are not in them.");
        return all;
    }

    List<String> of(Item item, Blank blank, Price price, Milled milled) {
        Mill mill = order.mill();
        List<String> all = new ArrayList<>();
        all.add("Finished " + size(blank.thickness()) + " x " + size(blank.width()) + ", from "
                + (blank.layers() > 1 ? blank.layers() + " layers of " : "")
                + blank.quarter().label()
                + ", which yields up to " + size(blank.quarter().finished()) + ".");
        all.add("Blank " + size(blank.blank()) + " wide, " + size(mill.allowance()) + " over the finished width"
                + (blank.plies() > 1 ? ", glued up of " + blank.plies() + " strips of " + size(blank.strip()) : "")
                + ".");
        all.add("A board gives " + blank.strips() + (blank.strips() == 1 ? " strip" : " strips") + ", "
                + percent(BigDecimal.valueOf(blank.yield())) + " of its width: " + size(mill.edge())
                + " goes with its edge, " + size(mill.kerf()) + " with each cut.");
        all.add("Waste " + percent(item.waste()) + " (" + item.work() + "): " + decimals(price.run())
                + " ft go through the machine.");
        all.add(
                item.lengths().isEmpty()
                        ? "Lengths are random."
                        : "Lengths asked for: "
                                + item.lengths().stream()
                                        .map(length -> feet(Length.inches(length)) + " ft")
                                        .collect(Collectors.joining(", "))
                                + "; " + percent(order.rates().specified()) + " more for that.");
        all.add(
                item.newKnife()
                        ? "A new knife is ground, " + size(item.knifeWidth()) + " wide, " + size(Knife.MARGIN)
                                + " over the molding at either edge" + depth(milled) + "."
                        : item.planed() ? "Planed on four sides: it takes no knife." : "The knife is on hand.");
        passes(milled).ifPresent(all::add);
        if (!milled.corners().isEmpty()) {
            all.add("The cutter leaves a radius of "
                    + size(milled.corners().get(0).radius()) + " in "
                    + (milled.corners().size() == 1
                            ? "an inside corner"
                            : milled.corners().size() + " inside corners")
                    + " drawn sharp.");
        }
        if (!item.finishes().isEmpty()) {
            all.add("Finish: " + String.join(", ", item.finishes()) + ".");
        }
        return all;
    }

    private static String depth(Milled milled) {
        return milled.knife()
                .map(knife -> ", and " + LengthPrinter.decimals(Length.inches(knife.depth()), 3) + " deep on the steel")
                .orElse("");
    }

    /** What the head in front leaves to others. */
    private static Optional<String> passes(Milled milled) {
        Set<String> from = new LinkedHashSet<>();
        milled.undercuts().forEach(undercut -> {
            undercut.passes().forEach(side -> from.add(side.word()));
            undercut.tilt().ifPresent(side -> from.add(side.word()));
        });
        return from.isEmpty()
                ? Optional.empty()
                : Optional.of("The head in front does not reach all of it: also cut from "
                        + String.join(" and from ", from) + ", with a cutter of the shop's own.");
    }

    private static String said(String about) {
        return about.isEmpty() ? "nothing is said of it." : about + ".";
    }

    private static String size(Length length) {
        return LengthPrinter.fraction(length, 64);
    }

    private static String size(double inches) {
        return size(Length.inches(inches));
    }

    private static String feet(Length length) {
        return decimals(length.toInches() / 12);
    }

    private static String percent(BigDecimal share) {
        return decimals(share.multiply(HUNDRED).doubleValue()) + " %";
    }

    /** At most one decimal. */
    private static String decimals(double number) {
        return LengthPrinter.decimals(Length.inches(number), 1).replaceAll("\\.0$", "");
    }
}
