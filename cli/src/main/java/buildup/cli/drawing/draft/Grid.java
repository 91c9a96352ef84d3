package buildup.cli.drawing.draft;

import buildup.cli.scene.Boxes;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;

/** A grid counted from the plane x = 0 and from the datum, in the unit that the shop measures in. */
public enum Grid {
    /** Quarter inches, each inch heavier. */
    INCHES(4, "Grid 1/4 in."),
    /** Five millimeters, each centimeter heavier. */
    MILLIMETERS(2, "Grid 5 mm.");

    private static final double CENTIMETER = 1 / 2.54;

    private final int parts;
    private final String words;

    Grid(int parts, String words) {
        this.parts = parts;
        this.words = words;
    }

    /** The grid of a document. */
    public static Grid of(boolean metric) {
        return metric ? MILLIMETERS : INCHES;
    }

    /** What it is, in a sentence. */
    public String words() {
        return words;
    }

    /** The lines over a window, broken round texts. */
    public List<SceneItem> over(Box window, List<Box> texts) {
        double step = (this == MILLIMETERS ? CENTIMETER : 1) / parts;
        List<Segment> fine = new ArrayList<>();
        List<Segment> heavy = new ArrayList<>();
        for (DimensionAxis run : DimensionAxis.values()) {
            long last = (long) Math.floor(run.other().most(window) / step);
            for (long k = (long) Math.ceil(run.other().least(window) / step); k <= last; k++) {
                Line line = run.line(run.least(window), run.most(window), k * step);
                (k % parts == 0 ? heavy : fine).addAll(Boxes.broken(line, texts));
            }
        }
        List<SceneItem> items = new ArrayList<>();
        if (!fine.isEmpty()) {
            items.add(new Path(fine, false, LineStyle.GRID));
        }
        if (!heavy.isEmpty()) {
            items.add(new Path(heavy, false, LineStyle.GRID_INCH));
        }
        return items;
    }
}
