package buildup.cli.drawing.paper;

import buildup.cli.drawing.sheet.FullSize;
import buildup.cli.drawing.sheet.PaperSize;
import buildup.cli.scene.Group;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * What surrounds a picture on its page: the margins of a printer, the title strip at the foot, and on a page at full size the
 * lines by which that is checked.
 *
 * @param paper the page, upright
 * @param strip as it stands at the foot of every page
 * @param metric whether sizes are in millimeters
 */
public record PageFrame(PaperSize paper, TitleStrip strip, TextMeasure measure, boolean metric) {
    /** Printers leave so much free at the ends where they take hold of the paper, and along its sides; common practice. */
    private static final double ENDS = 0.5;

    private static final double SIDES = 0.25;

    /** The upright check line with its words, and the level one. */
    private static final double CHECK = 0.42;

    /** Beside a part of a picture: the number of its neighbor. */
    private static final double NEIGHBOR = 0.2;

    private static final double GAP = 0.08;

    /** What a picture on a page is. */
    enum Use {
        /** Not at full size, or no picture. */
        PLAIN(0, 0),
        /** Whole, and at full size. */
        CHECKED(CHECK, 0),
        /** A part of a picture at full size. */
        PART(CHECK, NEIGHBOR),
        /** A part of a picture that is not. */
        PLAIN_PART(0, NEIGHBOR);

        private final double check;
        private final double neighbor;

        Use(double check, double neighbor) {
            this.check = check;
            this.neighbor = neighbor;
        }
    }

    /** The same with the paper lying on its side. */
    PageFrame turned() {
        return new PageFrame(paper.turned(), strip, measure, metric);
    }

    private Box printed() {
        boolean upright = paper.height() >= paper.width();
        double beside = upright ? SIDES : ENDS;
        double below = upright ? ENDS : SIDES;
        return new Box(beside, below, paper.width() - beside, paper.height() - below);
    }

    /** Where a picture may lie, in of paper from the lower left corner. */
    Box window(Use use) {
        Box printed = printed();
        return new Box(
                printed.back() + use.check + use.neighbor,
                printed.bottom() + strip.height() + GAP + use.check + use.neighbor,
                printed.face() - use.neighbor,
                printed.top() - use.neighbor);
    }

    /** Where texts beside a part of a picture stand: just outside of its window. */
    static double beside() {
        return NEIGHBOR / 2;
    }

    /** The strip, with what it says of this page, and the check lines. */
    List<SceneItem> items(Use use, List<TitleCell> more) {
        Box printed = printed();
        double head = printed.bottom() + strip.height();
        List<SceneItem> items = new ArrayList<>(
                strip.with(more).items(measure, new Box(printed.back(), printed.bottom(), printed.face(), head)));
        if (use.check > 0) {
            FullSize line = FullSize.of(metric);
            Group level = new Group("full-size-level", line.level(measure, Point.ORIGIN));
            Group upright = line.upright(measure);
            items.add(level.moved(
                    printed.back() + use.check - level.box().back(),
                    head + GAP - level.box().bottom()));
            items.add(upright.moved(
                    printed.back() - upright.box().back(),
                    head + GAP + use.check - upright.box().bottom()));
        }
        return items;
    }
}
