package buildup.cli.drawing.paper;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A picture cut into windows of one size, in columns and rows, each lapping over the next. In of the picture.
 *
 * @param left of the first column
 * @param top of the first row
 * @param wide of a window
 * @param high of a window
 */
record Tiling(int columns, int rows, double left, double top, double wide, double high) {
    /** How far one part laps over the next; room for the crosses. */
    static final double OVERLAP = 0.5;

    /** The least number of windows that hold a box, with the box in their middle. */
    static Tiling of(Box whole, double wide, double high) {
        int columns = count(whole.width(), wide);
        int rows = count(whole.height(), high);
        return new Tiling(
                columns,
                rows,
                whole.middle().x() - span(columns, wide) / 2,
                whole.middle().y() + span(rows, high) / 2,
                wide,
                high);
    }

    private static int count(double length, double window) {
        return length <= window ? 1 : (int) Math.ceil((length - OVERLAP) / (window - OVERLAP));
    }

    private static double span(int count, double window) {
        return count * (window - OVERLAP) + OVERLAP;
    }

    /** How many windows there are; as a number that does not overflow. */
    double count() {
        return (double) columns * rows;
    }

    /** The window in a column and a row, both from 0, rows from the top down. */
    Box window(int column, int row) {
        double back = left + column * (wide - OVERLAP);
        double above = top - row * (high - OVERLAP);
        return new Box(back, above - high, back + wide, above);
    }

    /** The crosses of a window: two windows side by side share two of them, in the middle of where they lap. */
    static List<Point> crosses(Box window) {
        List<Point> crosses = new ArrayList<>();
        Box inner = window.grown(-OVERLAP / 2);
        for (double x : new double[] {inner.back(), inner.face()}) {
            for (double y : new double[] {inner.bottom(), inner.top()}) {
                crosses.add(new Point(x, y));
            }
        }
        return crosses;
    }
}
