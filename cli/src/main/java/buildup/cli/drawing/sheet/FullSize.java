package buildup.cli.drawing.sheet;

import buildup.cli.drawing.draft.DimensionAxis;
import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.label.Clearances;
import buildup.cli.scene.About;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lines of a known length, one each way: a printer that scales does not always scale both alike. */
public enum FullSize {
    /** 4 in, with a tick at each inch. */
    INCHES(4, 4, "This line is 4 in"),
    /** 100 mm, with a tick at each centimeter. */
    MILLIMETERS(100 / 25.4, 10, "This line is 100 mm");

    private static final double END = 0.09;
    private static final double TICK = 0.045;
    private static final double STEP = 0.05;
    private static final double MARGIN = 0.2;

    /** What the level line with its words takes above it. */
    private static final double HALF = 0.28;

    private final double length;
    private final int ticks;
    private final String words;

    FullSize(double length, int ticks, String words) {
        this.length = length;
        this.ticks = ticks;
        this.words = words;
    }

    /** The line of a document. */
    public static FullSize of(boolean metric) {
        return metric ? MILLIMETERS : INCHES;
    }

    /** The upright one. */
    public Group upright(TextMeasure measure) {
        return new Group("full-size-upright", items(measure, DimensionAxis.UPRIGHT, 0, 0));
    }

    /** The upright one where nothing else lies within the picture's box, as far right and down as can be. */
    public Optional<Group> within(Box picture, Clearances clearances, TextMeasure measure) {
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

    /**
     * The check line, drawn level.
     *
     * @param start the left end
     */
    public List<SceneItem> level(TextMeasure measure, Point start) {
        return items(measure, DimensionAxis.LEVEL, start.x(), start.y());
    }

    /** A sheet that is cut to its picture, grown by both lines. */
    public Scene on(Scene scene, TextMeasure measure) {
        double low = MARGIN + HALF + MARGIN;
        Group upright = upright(measure);
        double wide = scene.width() + upright.box().width() + MARGIN;
        double high = Math.max(scene.height(), length + 2 * MARGIN);
        List<SceneItem> items = new ArrayList<>();
        double up = low + high - scene.height();
        scene.items().forEach(item -> items.add(item.moved(0, up)));
        items.add(new Group("full-size-level", level(measure, new Point(2 * MARGIN, MARGIN))));
        items.add(upright.moved(
                wide - MARGIN - upright.box().face(),
                low + MARGIN - upright.box().bottom()));
        return new Scene(scene.title(), scene.description(), Math.max(wide, length + 4 * MARGIN), low + high, items);
    }

    private List<SceneItem> items(TextMeasure measure, DimensionAxis run, double along, double across) {
        List<Segment> lines = new ArrayList<>();
        lines.add(run.line(along, along + length, across));
        for (int tick = 0; tick <= ticks; tick++) {
            double half = tick % ticks == 0 ? END : TICK;
            lines.add(run.other().line(across - half, across + half, along + tick * length / ticks));
        }
        double aside = END + 0.08 + Drafting.TEXT * Label.CAPITALS / 2;
        Point middle = run.point(along + length / 2, run == DimensionAxis.LEVEL ? across + aside : across - aside);
        return List.of(
                new Path(lines, false, LineStyle.CHECK),
                new About(
                        Subject.SHEET,
                        List.of(Label.centered(measure, words, middle, Drafting.TEXT, run == DimensionAxis.UPRIGHT))));
    }
}
