package buildup.cli.drawing.mill;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Words;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.engine.mill.quote.Quoted;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.List;

/**
 * One profile of a quote, as it is run, full size, and what is said of it.
 *
 * @param said of it, a sentence each
 * @param room that the page leaves from side to side, in
 */
record QuoteProfile(
        int number, Quoted quoted, List<Phrase> said, double room, TextMeasure measure, FigurePrinter printer) {
    /** What the name of its group begins with. */
    static final String ID = "profile-";

    private static final double NARROWEST = 3.3;

    /** Between a profile and what is said beside it. */
    private static final double BESIDE = 0.3;

    Group group() {
        RunProfile run = new RunProfile(quoted.item().profile(), quoted.milled(), room, measure, printer);
        List<SceneItem> items = new ArrayList<>(run.items());
        items.addAll(caption(run, Box.around(items.stream().map(SceneItem::box).toList())));
        return new Group(ID + number, items);
    }

    private List<SceneItem> caption(RunProfile run, Box drawn) {
        List<SceneItem> items = new ArrayList<>();
        // beside a profile that is tall, so that it and its words take no page of their own
        double free = room - drawn.width() - BESIDE;
        boolean beside = drawn.height() > NARROWEST && free >= NARROWEST;
        double left = beside ? drawn.face() + BESIDE : drawn.back();
        double y = beside ? drawn.top() : drawn.bottom() - Drafting.AIR;
        double wide = beside ? free : Math.min(room, Math.max(drawn.width(), NARROWEST));
        List<Phrase> all = new ArrayList<>(said);
        all.addAll(run.words());
        List<String> lines = new ArrayList<>(
                Words.lines(measure, number + ". " + quoted.item().name(), Drafting.LETTER, wide, 2));
        double size = Drafting.LETTER;
        for (String line : lines) {
            y -= 1.4 * size;
            items.add(Label.of(measure, line, new Point(left, y), size, Label.Anchor.START));
        }
        for (Phrase phrase : all) {
            for (String line : Words.lines(measure, printer.print(phrase), Drafting.TEXT, wide, 6)) {
                y -= 1.4 * Drafting.TEXT;
                items.add(Label.of(measure, line, new Point(left, y), Drafting.TEXT, Label.Anchor.START));
            }
        }
        return items;
    }
}
