package buildup.cli.drawing.job;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.look.ElevationDrawing;
import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.Paper;
import buildup.cli.drawing.paper.PaperPage;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.engine.look.light.Lighting;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;

/** The front at full size as a strip to tape to the wall: as high as the stack, with the heights of its pieces. */
record TapeStrip(Section section, TextMeasure measure, FigurePrinter printer) {
    /** So narrow that the heights have room beside it on the narrowest page, in. */
    private static final double WIDE = 3.2;

    private static final double GAP = 0.15;

    /** None where nothing shines on the stack, or nothing of it faces the room. */
    List<PaperPage> pages(List<Lighting> lights, PageFrame frame, Notices notices) {
        List<SceneItem> front =
                lights.isEmpty() ? List.of() : ElevationDrawing.stretch(section, lights.get(0), measure, WIDE);
        if (front.isEmpty()) {
            return List.of();
        }
        Heights heights = new Heights(section, true, printer);
        List<SceneItem> items = new ArrayList<>(front);
        items.addAll(heights.labels(measure, WIDE + GAP, Paper.partWidth(frame)));
        items.add(heights.from(measure, items));
        Box box = Box.around(items.stream().map(SceneItem::box).toList());
        return Paper.tooMany(frame, box, notices)
                ? List.of()
                : Paper.fullSize(frame, ShopSheet.STRIP.title(), items, flow -> {
                    flow.lines(section.stack().title(), Drafting.TITLE);
                    flow.lines(
                            "The front at full size, " + Drafting.units(section.stack()) + ". " + heights.from()
                                    + " Put the parts together, tape the strip to the wall at its height, and step back.",
                            Drafting.TEXT);
                });
    }
}
