package buildup.cli.drawing.sheet;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Run;
import buildup.cli.drawing.label.Clearances;
import buildup.cli.scene.Group;
import buildup.cli.scene.Item;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.TextMeasure;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lines of 4 in, of 100 mm in metric jobs, one each way: a printer that scales does not always scale both alike.
 */
public final class FullSize {
    static final double LENGTH = 4;
    private static final String WORDS = "Full size only if this line is ";
    private static final double MILLIMETERS = 25.4;
    private static final double END = 0.09;
    private static final double INCH = 0.045;
    private static final double STEP = 0.05;

    private FullSize() {}

    public static Group upright(TextMeasure measure) {
        return new Group("full-size-upright", items(measure, Run.UPRIGHT, Point.ORIGIN, false));
    }

    /** The upright one where nothing else lies within the picture's box, as far right and down as can be. */
    public static Optional<Group> within(Box picture, Clearances clearances, TextMeasure measure) {
        Group line = upright(measure);
        Box own = line.box();
        for (double face = picture.face(); face - own.width() > picture.back(); face -= STEP) {
            for (double bottom = picture.bottom(); bottom + own.height() < picture.top(); bottom += STEP) {
                Box place = new Box(face - own.width(), bottom, face, bottom + own.height());
                if (clearances.isFree(place.grown(STEP))) {
                    clearances.addText(place);
                    return Optional.of(line.moved(place.back() - own.back(), place.bottom() - own.bottom()));
                }
            }
        }
        return Optional.empty();
    }

    /** @param start the left end */
    public static List<Item> level(TextMeasure measure, Point start) {
        return level(measure, start, false);
    }

    /**
     * The same, of 100 mm where the job is metric.
     *
     * @param start the left end
     */
    public static List<Item> level(TextMeasure measure, Point start, boolean metric) {
        return items(measure, Run.LEVEL, start, metric);
    }

    private static List<Item> items(TextMeasure measure, Run run, Point start, boolean metric) {
        double along = run == Run.LEVEL ? start.x() : start.y();
        double across = run == Run.LEVEL ? start.y() : start.x();
        int steps = metric ? 10 : 4;
        double step = metric ? 10 / MILLIMETERS : 1;
        double length = steps * step;
        List<Segment> lines = new ArrayList<>();
        lines.add(run.line(along, along + length, across));
        for (int i = 0; i <= steps; i++) {
            double half = i % steps == 0 ? END : INCH;
            lines.add(run.other().line(across - half, across + half, along + i * step));
        }
        double aside = END + 0.08 + Drafting.TEXT * Label.CAPITALS / 2;
        Point middle = run.point(along + length / 2, run == Run.LEVEL ? across + aside : across - aside);
        return List.of(
                new Path(lines, false, LineStyle.CHECK),
                Label.centred(
                        measure, WORDS + (metric ? "100 mm" : "4 in"), middle, Drafting.TEXT, run == Run.UPRIGHT));
    }
}
