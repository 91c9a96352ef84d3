package buildup.cli.drawing.draft;

import buildup.cli.scene.Boxes;
import buildup.cli.scene.Item;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;

/** Quarter inches, counted from the plane x = 0 and from the datum, each inch heavier. */
public final class Grid {
    private static final int PER_INCH = 4;

    private Grid() {}

    public static List<Item> over(Box window, List<Box> texts) {
        List<Segment> quarters = new ArrayList<>();
        List<Segment> inches = new ArrayList<>();
        for (Run run : Run.values()) {
            long last = (long) Math.floor(run.other().most(window) * PER_INCH);
            for (long k = (long) Math.ceil(run.other().least(window) * PER_INCH); k <= last; k++) {
                Line line = run.line(run.least(window), run.most(window), (double) k / PER_INCH);
                (k % PER_INCH == 0 ? inches : quarters).addAll(Boxes.broken(line, texts));
            }
        }
        List<Item> items = new ArrayList<>();
        if (!quarters.isEmpty()) {
            items.add(new Path(quarters, false, LineStyle.GRID));
        }
        if (!inches.isEmpty()) {
            items.add(new Path(inches, false, LineStyle.GRID_INCH));
        }
        return items;
    }
}
