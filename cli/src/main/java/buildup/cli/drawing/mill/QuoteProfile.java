package buildup.cli.drawing.mill;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Words;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.engine.mill.milling.Groove;
import buildup.engine.mill.quote.Quoted;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One profile of a quote, as it is run, full size, on a grid, with its two sizes, its radii and its grooves, and what is
 * said of it.
 *
 * @param said of it, a sentence each
 * @param room that the page leaves from side to side, in
 */
record QuoteProfile(
        int number, Quoted quoted, List<Phrase> said, double room, TextMeasure measure, FigurePrinter printer) {
    private static final double NARROWEST = 3.3;

    private static final Phrase GROOVE =
            Phrase.of("Groove {width} wide, {depth} deep, {from} to {to} from the {side}.");
    private static final Phrase RADII = Phrase.of("Radii: {radii}.");
    private static final Phrase RADIUS = Phrase.of("{member} {radius}");

    Group group() {
        List<SceneItem> items = new ArrayList<>(
                new RunProfile(quoted.milled().stick().outline(), quoted.item().name(), room, measure, printer)
                        .items());
        items.addAll(caption(Box.around(items.stream().map(SceneItem::box).toList())));
        return new Group("profile-" + number, items);
    }

    private List<SceneItem> caption(Box drawn) {
        List<SceneItem> items = new ArrayList<>();
        double y = drawn.bottom() - Drafting.AIR;
        double wide = Math.min(room, Math.max(drawn.width(), NARROWEST));
        List<Phrase> all = new ArrayList<>(said);
        radiiInWords().ifPresent(all::add);
        all.addAll(grooves());
        List<String> lines = new ArrayList<>(
                Words.lines(measure, number + ". " + quoted.item().name(), Drafting.LETTER, wide, 2));
        double size = Drafting.LETTER;
        for (String line : lines) {
            y -= 1.4 * size;
            items.add(Label.of(measure, line, new Point(drawn.back(), y), size, Label.Anchor.START));
        }
        for (Phrase phrase : all) {
            for (String line : Words.lines(measure, printer.print(phrase), Drafting.TEXT, wide, 6)) {
                y -= 1.4 * Drafting.TEXT;
                items.add(Label.of(measure, line, new Point(drawn.back(), y), Drafting.TEXT, Label.Anchor.START));
            }
        }
        return items;
    }

    private Optional<Phrase> radiiInWords() {
        List<Phrase> radii = quoted.milled().stick().outline().strokes().stream()
                .filter(stroke -> stroke.segment() instanceof Arc)
                .map(stroke -> RADIUS.with("member", stroke.member())
                        .with("radius", Figure.length(((Arc) stroke.segment()).radius())))
                .distinct()
                .toList();
        return radii.isEmpty() ? Optional.empty() : Optional.of(RADII.with("radii", Listing.commas(radii)));
    }

    private List<Phrase> grooves() {
        return quoted.milled().grooves().stream()
                .map(groove -> {
                    Groove.Place place = groove.place(quoted.milled().stick());
                    return GROOVE.with("width", Figure.length(groove.width()))
                            .with("depth", Figure.length(groove.depth()))
                            .with("from", Figure.length(place.from()))
                            .with("to", Figure.length(place.to()))
                            .with("side", place.fromBack() ? "back" : "bottom");
                })
                .toList();
    }
}
