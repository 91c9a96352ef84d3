package buildup.cli.drawing.job;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.Paper;
import buildup.cli.drawing.paper.PaperPage;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;

/** A pole with the height of every piece on it, from the floor where there is one, at full size. */
record StoryPole(Section section, TextMeasure measure, FigurePrinter printer) {
    private static final double WIDE = 1.5;
    private static final double GAP = 0.1;

    List<PaperPage> pages(PageFrame frame, Notices notices) {
        Heights heights = new Heights(section, false, printer);
        List<Heights.Level> levels = heights.levels();
        double low = section.stack().space().floor().orElse(levels.get(0).y());
        double top = levels.get(levels.size() - 1).y();
        Box pole = new Box(0, Math.min(low, levels.get(0).y()), WIDE, top);
        if (Paper.tooMany(frame, pole, notices)) {
            return List.of();
        }
        List<SceneItem> items = new ArrayList<>();
        items.add(new Path(Outline.rectangle(pole).segments(), true, LineStyle.OUTLINE));
        List<Segment> marks = new ArrayList<>();
        levels.forEach(level -> marks.add(new Line(new Point(0, level.y()), new Point(WIDE, level.y()))));
        items.add(new Path(marks, false, LineStyle.TICK));
        items.addAll(heights.labels(measure, WIDE + GAP));
        section.stack()
                .space()
                .floor()
                .ifPresent(floor -> items.add(Label.of(
                        measure,
                        "floor",
                        new Point(WIDE + GAP, floor + Drafting.AIR),
                        Drafting.TEXT,
                        Label.Anchor.START)));
        return Paper.fullSize(frame, ShopSheet.STORY_POLE.title(), items, flow -> {
            flow.lines(section.stack().title(), Drafting.TITLE);
            flow.lines(
                    "A story pole at full size, " + Drafting.units(section.stack()) + ". " + heights.from()
                            + " Every line across is an edge of a piece: put the parts together on a straight stick, and"
                            + " carry the lines to the wall.",
                    Drafting.TEXT);
        });
    }
}
