package buildup.engine.mill.quote;

import buildup.catalog.mill.Mill;
import buildup.catalog.mill.Rates;
import buildup.engine.mill.milling.Knife;
import buildup.engine.mill.milling.Milled;
import buildup.engine.mill.milling.Side;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.length.Length;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Everything that a price rests on, in sentences. */
record Assumptions(Order order) {
    private static final Phrase RATES = Phrase.of("Rates '{rates}': {about}.");
    private static final Phrase MILL = Phrase.of("Mill '{mill}': {about}.");
    private static final String UNSAID = "nothing is said of it";
    private static final Phrase BOARDS = Phrase.of(
            "Boards come in {board} wide, one with another, up to {longest} long; {sound} of the wood is sound.");
    private static final Phrase SET_UP =
            Phrase.of("Each profile takes {setUp} to set up; {prepared} of blank are made ready in an hour.");
    private static final Phrase FEED = Phrase.of("The {head} runs {feed}; its knives leave {marks}.");
    private static final Phrase MARK_UP = Phrase.of("Mark-up {markUp} on everything; no order under {minimum}.");
    private static final Phrase ACCURACY = Phrase.of("Profiles within {accuracy} of the drawing.");
    private static final Phrase TAXES =
            Phrase.of("Prices are those of the rates; taxes, freight and packing are not in them.");

    private static final Phrase FINISHED =
            Phrase.of("Finished {thickness} x {width}, from {quarter}, which yields up to {yields}.");
    private static final Phrase FINISHED_IN_LAYERS = Phrase.of(
            "Finished {thickness} x {width}, from {layers} layers of {quarter}, which yields up to {yields}.");
    private static final Phrase BLANK = Phrase.of("Blank {blank} wide, {allowance} over the finished width.");
    private static final Phrase BLANK_OF_STRIPS = Phrase.of(
            "Blank {blank} wide, {allowance} over the finished width, glued up of {plies} strips of {strip}.");
    private static final Phrase ONE_STRIP =
            Phrase.of("A board gives 1 strip, {yield} of its width: {edge} goes with its edge, {kerf} with each cut.");
    private static final Phrase STRIPS = Phrase.of(
            "A board gives {strips} strips, {yield} of its width: {edge} goes with its edge, {kerf} with each cut.");
    private static final Phrase WASTE = Phrase.of("Waste {waste} ({work}): {run} go through the machine.");
    private static final Phrase RANDOM = Phrase.of("Lengths are random.");
    private static final Phrase LENGTHS = Phrase.of("Lengths asked for: {lengths}; {more} more for that.");
    private static final Phrase NEW_KNIFE =
            Phrase.of("A new knife is ground, {knife} wide, {margin} over the molding at either edge.");
    private static final Phrase NEW_DEEP_KNIFE = Phrase.of(
            "A new knife is ground, {knife} wide, {margin} over the molding at either edge, and {depth} deep on the"
                    + " steel.");
    private static final Phrase PLANED = Phrase.of("S4S: it takes no knife.");
    private static final Phrase ON_HAND = Phrase.of("The knife is on hand.");
    private static final Phrase MORE_PASSES = Phrase.of(
            "The outside head does not reach all of it: also cut by the {sides}, with a cutter of the shop's own.");
    private static final Phrase AND_BY = Phrase.of("{one} and the {other}");
    private static final Phrase CORNER =
            Phrase.of("The cutter leaves a radius of {radius} in an inside corner drawn sharp.");
    private static final Phrase CORNERS =
            Phrase.of("The cutter leaves a radius of {radius} in {corners} inside corners drawn sharp.");
    private static final Phrase FINISH = Phrase.of("Finish: {finishes}.");

    List<Phrase> ofAll(double marks) {
        Mill mill = order.mill();
        Rates rates = order.rates();
        return List.of(
                RATES.with("rates", rates.name()).with("about", said(rates.about())),
                MILL.with("mill", mill.name()).with("about", said(mill.about())),
                BOARDS.with("board", size(mill.board()))
                        .with("longest", run(mill.longest().toInches() / 12))
                        .with("sound", percent(mill.sound())),
                SET_UP.with("setUp", run(mill.setUp().toInches() / 12))
                        .with("prepared", run(rates.prepared().doubleValue())),
                FEED.with("head", order.head().name())
                        .with(
                                "feed",
                                Figure.of(Quantity.FEED, order.head().feed().toInches() / 12))
                        .with("marks", Figure.of(Quantity.MARKS, marks)),
                MARK_UP.with("markUp", percent(rates.markUp()))
                        .with(
                                "minimum",
                                Figure.of(Quantity.MONEY, rates.minimum().doubleValue())),
                ACCURACY.with("accuracy", size(mill.accuracy())),
                TAXES);
    }

    List<Phrase> of(Item item, Blank blank, Price price, Milled milled) {
        List<Phrase> all = new ArrayList<>(wood(item, blank, price));
        all.add(
                item.lengths().isEmpty()
                        ? RANDOM
                        : LENGTHS.with(
                                        "lengths",
                                        Listing.commas(item.lengths().stream()
                                                .map(length -> run(length / 12))
                                                .toList()))
                                .with("more", percent(order.rates().specified())));
        all.add(item.newKnife() ? knife(item, milled) : item.planed() ? PLANED : ON_HAND);
        passes(milled).ifPresent(all::add);
        if (!milled.corners().isEmpty()) {
            int corners = milled.corners().size();
            all.add((corners == 1 ? CORNER : CORNERS)
                    .with("radius", size(milled.corners().get(0).radius()))
                    .with("corners", Figure.count(corners)));
        }
        if (!item.finishes().isEmpty()) {
            all.add(FINISH.with(
                    "finishes",
                    Listing.commas(item.finishes().stream().map(Phrase::plain).toList())));
        }
        return List.copyOf(all);
    }

    private List<Phrase> wood(Item item, Blank blank, Price price) {
        Mill mill = order.mill();
        return List.of(
                (blank.layers() > 1 ? FINISHED_IN_LAYERS : FINISHED)
                        .with("thickness", size(blank.thickness()))
                        .with("width", size(blank.width()))
                        .with("layers", Figure.count(blank.layers()))
                        .with("quarter", blank.quarter().label())
                        .with("yields", size(blank.quarter().finished())),
                (blank.plies() > 1 ? BLANK_OF_STRIPS : BLANK)
                        .with("blank", size(blank.blank()))
                        .with("allowance", size(mill.allowance()))
                        .with("plies", Figure.count(blank.plies()))
                        .with("strip", size(blank.strip())),
                (blank.strips() == 1 ? ONE_STRIP : STRIPS)
                        .with("strips", Figure.count(blank.strips()))
                        .with("yield", percent(BigDecimal.valueOf(blank.yield())))
                        .with("edge", size(mill.edge()))
                        .with("kerf", size(mill.kerf())),
                WASTE.with("waste", percent(item.waste()))
                        .with("work", item.work())
                        .with("run", run(price.run())));
    }

    private static Phrase knife(Item item, Milled milled) {
        Phrase ground = milled.knife()
                .map(knife -> NEW_DEEP_KNIFE.with("depth", Figure.fine(knife.depth())))
                .orElse(NEW_KNIFE);
        return ground.with("knife", size(item.knifeWidth())).with("margin", size(Knife.MARGIN));
    }

    /** What the head in front leaves to others. */
    private static Optional<Phrase> passes(Milled milled) {
        Set<Side> from = new LinkedHashSet<>();
        milled.undercuts().forEach(undercut -> {
            from.addAll(undercut.passes());
            undercut.tilt().ifPresent(from::add);
        });
        return from.stream()
                .map(Side::words)
                .reduce((one, other) -> AND_BY.with("one", one).with("other", other))
                .map(sides -> MORE_PASSES.with("sides", sides));
    }

    private static String said(String about) {
        return about.isEmpty() ? UNSAID : about;
    }

    private static Figure size(Length length) {
        return size(length.toInches());
    }

    /** As finely as a mill's own figures are written. */
    private static Figure size(double inches) {
        return Figure.length(inches).rounded(Rounding.LISTED);
    }

    private static Figure run(double feet) {
        return Figure.of(Quantity.RUN, feet);
    }

    /** In whole percent where it is so, else to a tenth. */
    private static Figure percent(BigDecimal share) {
        double tenths = Math.rint(share.doubleValue() * 1000);
        return Figure.share(share.doubleValue()).rounded(Rounding.decimals(tenths % 10 == 0 ? 0 : 1));
    }
}
