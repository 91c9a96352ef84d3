package buildup.cli.drawing.mill;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Scale;
import buildup.cli.drawing.label.Caption;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.Area;
import buildup.cli.scene.Group;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.cli.scene.Tone;
import buildup.engine.mill.nearest.NearestWords;
import buildup.engine.mill.nearest.Neighbor;
import buildup.engine.mill.nearest.Neighbors;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A profile with the one that comes nearest laid onto it, as large as its differences ask for. */
public final class NearestDrawing {
    /** Smaller pictures are drawn so many times larger that they come to about this, in. */
    private static final double SHOWN = 4;

    private static final int LARGEST = 6;
    private static final double RING = 0.12;

    private NearestDrawing() {}

    /**
     * The outline that is wanted, with one of its neighbors laid over it.
     *
     * @param name of the outline that is wanted
     * @param one of the neighbors, the one to be drawn
     * @param printer in the unit of the answer
     */
    public static Scene of(String name, Neighbors nearest, Neighbor one, TextMeasure measure, FigurePrinter printer) {
        Box box = nearest.wanted().box().with(one.outline().box());
        double times = Math.max(1, Math.min(LARGEST, Math.floor(SHOWN / Math.max(box.width(), box.height()))));
        List<Segment> wanted = segments(nearest.wanted(), times);
        List<Segment> laid = segments(one.outline(), times);
        List<SceneItem> items = new ArrayList<>();
        items.add(new Area(Optional.of("wanted"), Optional.of(name), wanted, Tone.TRIM));
        items.add(new Path(wanted, true, LineStyle.OUTLINE));
        items.add(new Group("nearest", List.of(new Path(laid, true, LineStyle.OTHER))));
        items.add(new Path(Caption.circle(one.gapAt().times(times), RING), true, LineStyle.LEADER));
        items.add(PictureSheet.below(items, legend(name, nearest, one, times, measure, printer), 2 * Drafting.TEXT));
        return PictureSheet.around(
                name + ", nearest", printer.print(NearestWords.answer(nearest)), items, 3 * Drafting.TEXT);
    }

    private static List<Segment> segments(Outline outline, double times) {
        return Scale.of(outline.segments(), times);
    }

    private static Group legend(
            String name, Neighbors nearest, Neighbor one, double times, TextMeasure measure, FigurePrinter printer) {
        return new Legend(measure, Drafting.TEXT)
                .title(name)
                .text(printer.print(NearestWords.answer(nearest)))
                .line("wanted", LineStyle.OUTLINE)
                .line(one.profile().name() + ", " + printer.print(NearestWords.laid(one.pose())), LineStyle.OTHER)
                .sample(
                        "largest gap, " + printer.bare(Figure.fine(one.gap())) + " "
                                + Quantity.LENGTH.unit(printer.metric()),
                        at -> List.of(new Path(
                                Caption.circle(at.plus(new Point(1.5 * Drafting.TEXT, 0.4 * Drafting.TEXT)), RING / 2),
                                true,
                                LineStyle.LEADER)))
                .text(times > 1 ? "Drawn " + Math.round(times) + " times full size." : "Full size.")
                .group();
    }
}
