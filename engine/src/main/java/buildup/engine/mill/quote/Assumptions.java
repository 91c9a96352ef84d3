package buildup.engine.mill.quote;

import buildup.catalog.mill.Mill;
import buildup.catalog.mill.Rates;
import buildup.engine.mill.milling.Knife;
import buildup.engine.mill.milling.Milled;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.figure.Value;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Everything that a price rests on, in sentences. */
record Assumptions(Order order) {
    private static final Phrase RATES = Phrase.of("Rates '{rates}': {about}.");
    private static final Phrase MILL = Phrase.of("Mill '{mill}': {about}.");
    private static final String UNSAID = "nothing is said of it";
    private static final Phrase BOARDS =
            Phrase.of("Boards come {widths}, up to {longest} long; {sound} of the wood is sound.");
    private static final Phrase ALIKE = Phrase.of("{width} wide");
    private static final Phrase BETWEEN = Phrase.of("{narrowest} to {widest} wide, {average} on average");
    private static final Phrase SET_UP =
            Phrase.of("Each profile takes {setUp} to set up; {prepared} of strip are made ready in an hour.");
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
    private static final Phrase STRIPS = Phrase.of(
            "{yield} of the boards' width goes into strips: {edge} goes with the edge, {kerf} with each cut.");
    private static final Phrase SOME_BOARDS =
            Phrase.of("Only {enough} of the wood comes wide enough for a strip; the rest is left for other work.");
    private static final Phrase WASTE = Phrase.of("Waste {waste} ({work}): {run} go through the machine.");
    private static final Phrase RANDOM = Phrase.of("Lengths are random.");
    private static final Phrase LENGTHS = Phrase.of("Lengths asked for: {lengths}; {more} more for that.");
    private static final Phrase WHOLE_STICKS =
            Phrase.of("{feet} are delivered: {each} whole sticks of each length, for the {wanted} that are wanted.");
    private static final Phrase GROUND = Phrase.of("A new knife is ground for the {side}: {knife}.");
    private static final Phrase KNIFE_ON_HAND = Phrase.of("The knife for the {side} is on hand: {knife}.");
    private static final Phrase KNIFE = Phrase.of(
            "{width} wide, {margin} over the molding at either edge, {wood} deep in the wood and {depth} on the steel");
    private static final Phrase CUTTER =
            Phrase.of("The {side} takes a cutter of the shop's list: {cutter}. It has a pass of its own.");
    private static final Phrase PLANED = Phrase.of("S4S: it takes no knife.");
    private static final Phrase CORNER =
            Phrase.of("The cutter leaves a radius of {radius} in an inside corner drawn sharp.");
    private static final Phrase CORNERS =
            Phrase.of("The cutter leaves a radius of {radius} in {corners} inside corners drawn sharp.");
    private static final Phrase FINISH = Phrase.of("Finish: {finishes}.");
    private static final Phrase GLUED_TO = Phrase.of("Glued to '{other}' along a joint {joint} wide.");

    List<Phrase> ofAll(double marks) {
        Mill mill = order.mill();
        Rates rates = order.rates();
        return List.of(
                RATES.with("rates", rates.name()).with("about", said(rates.about())),
                MILL.with("mill", mill.name()).with("about", said(mill.about())),
                BOARDS.with("widths", widths(mill))
                        .with("longest", Amounts.run(mill.longest()))
                        .with("sound", Amounts.percent(mill.sound())),
                SET_UP.with("setUp", Amounts.run(mill.setUp()))
                        .with("prepared", Amounts.run(rates.prepared().doubleValue())),
                FEED.with("head", order.head().name())
                        .with("feed", Figure.of(Quantity.FEED, Knife.feed(order.head())))
                        .with("marks", Figure.of(Quantity.MARKS, marks)),
                MARK_UP.with("markUp", Amounts.percent(rates.markUp())).with("minimum", Amounts.money(rates.minimum())),
                ACCURACY.with("accuracy", Amounts.size(mill.accuracy())),
                TAXES);
    }

    private static Value widths(Mill mill) {
        double least = mill.widths().get(0).width().toInches();
        double most = mill.widths().get(mill.widths().size() - 1).width().toInches();
        // a board foot of narrow board is longer: the average board is that of equal lengths
        double lengths = mill.widths().stream()
                .mapToDouble(
                        width -> width.share().doubleValue() / width.width().toInches())
                .sum();
        return Tolerance.same(least, most)
                ? ALIKE.with("width", Amounts.size(least))
                : BETWEEN.with("narrowest", Amounts.size(least))
                        .with("widest", Amounts.size(most))
                        .with("average", Figure.length(1 / lengths).rounded(Rounding.decimals(1)));
    }

    List<Phrase> of(OrderItem item, Blank blank, Optional<Price> price, Milled milled) {
        List<Phrase> all = new ArrayList<>(wood(blank));
        item.half()
                .filter(Halving.Half::isLast)
                .ifPresent(half ->
                        all.add(GLUED_TO.with("other", half.beside()).with("joint", Amounts.size(half.joint()))));
        price.ifPresent(found -> {
            all.add(WASTE.with("waste", Amounts.percent(item.waste()))
                    .with("work", item.work())
                    .with("run", Amounts.run(found.run())));
            all.addAll(lengths(item, found));
        });
        milled.knives().stream()
                .filter(knife -> Double.isFinite(knife.depth()))
                .forEach(knife -> all.add((item.newKnife() ? GROUND : KNIFE_ON_HAND)
                        .with("side", knife.side().words())
                        .with("knife", knife(knife))));
        milled.heads()
                .forEach(work -> work.cutter()
                        .ifPresent(pass ->
                                all.add(CUTTER.with("side", work.side().words()).with("cutter", pass.cutter()))));
        if (milled.isPlain()) {
            all.add(PLANED);
        }
        if (!milled.corners().isEmpty()) {
            int corners = milled.corners().size();
            all.add((corners == 1 ? CORNER : CORNERS)
                    .with("radius", Amounts.size(milled.corners().get(0).radius()))
                    .with("corners", Figure.count(corners)));
        }
        if (!item.finishes().isEmpty()) {
            all.add(FINISH.with(
                    "finishes",
                    Listing.commas(item.finishes().stream().map(Phrase::plain).toList())));
        }
        return List.copyOf(all);
    }

    private List<Phrase> lengths(OrderItem item, Price price) {
        if (item.lengths().isEmpty()) {
            return List.of(RANDOM);
        }
        Phrase lengths = LENGTHS.with(
                        "lengths",
                        Listing.commas(item.lengths().stream()
                                .map(length -> Amounts.run(length / 12))
                                .toList()))
                .with("more", Amounts.percent(order.rates().specified()));
        return price.feet().compareTo(item.feet()) == 0
                ? List.of(lengths)
                : List.of(
                        lengths,
                        WHOLE_STICKS
                                .with("feet", Amounts.run(price.feet().doubleValue()))
                                .with("each", Figure.count(price.sticks().each()))
                                .with("wanted", Amounts.run(item.feet().doubleValue())));
    }

    private List<Phrase> wood(Blank blank) {
        Mill mill = order.mill();
        List<Phrase> all = new ArrayList<>(List.of(
                (blank.layers() > 1 ? FINISHED_IN_LAYERS : FINISHED)
                        .with("thickness", Amounts.size(blank.thickness()))
                        .with("width", Amounts.size(blank.width()))
                        .with("layers", Figure.count(blank.layers()))
                        .with("quarter", blank.quarter().label())
                        .with("yields", Amounts.size(blank.quarter().finished())),
                (blank.plies() > 1 ? BLANK_OF_STRIPS : BLANK)
                        .with("blank", Amounts.size(blank.blank()))
                        .with("allowance", Amounts.size(mill.allowance()))
                        .with("plies", Figure.count(blank.plies()))
                        .with("strip", Amounts.size(blank.strip())),
                STRIPS.with("yield", Amounts.percent(BigDecimal.valueOf(blank.inStrips())))
                        .with("edge", Amounts.size(mill.edge()))
                        .with("kerf", Amounts.size(mill.kerf()))));
        if (blank.enough() < 1 - Tolerance.COINCIDENT) {
            all.add(SOME_BOARDS.with("enough", Amounts.percent(BigDecimal.valueOf(blank.enough()))));
        }
        return all;
    }

    private static Phrase knife(Knife knife) {
        return KNIFE.with("width", Amounts.size(knife.width()))
                .with("margin", Amounts.size(Knife.MARGIN))
                .with("wood", Figure.fine(knife.woodDepth()))
                .with("depth", Figure.fine(knife.depth()));
    }

    private static String said(String about) {
        return about.isEmpty() ? UNSAID : about;
    }
}
