package buildup.cli.drawing.paper;

import buildup.cli.scene.Boxes;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A picture cut into windows of one size, in columns and rows, each lapping over the next. In of the picture.
 *
 * @param columns across
 * @param rows up the picture, the lowest first
 * @param texts that no cross may lie on
 */
record Tiling(Seams columns, Seams rows, List<Box> texts) {
    /** How far one part laps over the next at least; room for the crosses. */
    static final double OVERLAP = Seams.OVERLAP;

    /** Half the arms of a cross. */
    static final double ARM = 0.16;

    /** The places in a lap at which a cross is tried, from its middle out; shares of what its arms leave. */
    private static final double[] TRIED = {0.5, 0.25, 0.75, 0, 1};

    Tiling {
        texts = List.copyOf(texts);
    }

    /**
     * The windows that hold a box, so that each of its texts is whole in one of them; as few as can be, with the box in their
     * middle.
     */
    static Tiling of(Box whole, double wide, double high, List<Box> texts) {
        List<Seams> across = Seams.of(
                whole.back(),
                whole.face(),
                wide,
                texts.stream()
                        .map(text -> new Seams.Span(text.back(), text.face()))
                        .toList());
        List<Seams> up = Seams.of(
                whole.bottom(),
                whole.top(),
                high,
                texts.stream()
                        .map(text -> new Seams.Span(text.bottom(), text.top()))
                        .toList());
        Tiling first = new Tiling(across.get(0), up.get(0), texts);
        Tiling moved = clearest(
                first,
                up.stream().map(rows -> new Tiling(first.columns, rows, texts)).toList());
        return clearest(
                moved,
                across.stream()
                        .map(columns -> new Tiling(columns, moved.rows, texts))
                        .toList());
    }

    /** The first one whose crosses lie on the fewest texts. */
    private static Tiling clearest(Tiling first, List<Tiling> others) {
        Tiling best = first;
        long fewest = best.crosses().hits(best.texts);
        for (int i = 0; i < others.size() && fewest > 0; i++) {
            long hits = others.get(i).crosses().hits(best.texts);
            if (hits < fewest) {
                fewest = hits;
                best = others.get(i);
            }
        }
        return best;
    }

    /** How many windows there are; as a number that does not overflow. */
    double count() {
        return (double) columns.count() * rows.count();
    }

    /** The window in a column and a row, both from 0, rows from the top down. */
    Box window(int column, int row) {
        double back = columns.starts().get(column);
        double bottom = rows.starts().get(rows.count() - 1 - row);
        return new Box(back, bottom, back + columns.window(), bottom + rows.window());
    }

    /**
     * The crosses of all windows, by their place across and from below up: two windows side by side share two of them, where
     * they lap. None lies on a text where there is another place for it.
     */
    Crosses crosses() {
        List<Double> across = middles(columns);
        List<Double> up = middles(rows);
        // a second look, since the first was at crosses that have moved since
        for (int round = 0; round < 2; round++) {
            for (int i = 0; i < across.size(); i++) {
                across.set(i, best(columns, i, up, true));
            }
            for (int i = 0; i < up.size(); i++) {
                up.set(i, best(rows, i, across, false));
            }
        }
        return new Crosses(across, up);
    }

    private static List<Double> middles(Seams seams) {
        List<Double> middles = new ArrayList<>();
        for (int i = 0; i <= seams.count(); i++) {
            middles.add(place(seams.lap(i), TRIED[0]));
        }
        return middles;
    }

    private static double place(Seams.Span lap, double share) {
        return lap.from() + ARM + share * (lap.to() - lap.from() - 2 * ARM);
    }

    private double best(Seams seams, int lap, List<Double> others, boolean across) {
        double best = place(seams.lap(lap), TRIED[0]);
        long fewest = Long.MAX_VALUE;
        for (double share : TRIED) {
            double at = place(seams.lap(lap), share);
            Crosses tried = across ? new Crosses(List.of(at), others) : new Crosses(others, List.of(at));
            long hit = tried.hits(texts);
            if (hit < fewest) {
                fewest = hit;
                best = at;
            }
        }
        return best;
    }

    /**
     * Where crosses stand.
     *
     * @param across one more than there are columns
     * @param up one more than there are rows, the lowest first
     */
    record Crosses(List<Double> across, List<Double> up) {
        Crosses {
            across = List.copyOf(across);
            up = List.copyOf(up);
        }

        /** How often one of them lies on a text. */
        long hits(List<Box> texts) {
            long hits = 0;
            for (double x : across) {
                for (double y : up) {
                    Box cross = new Box(x, y, x, y).grown(ARM);
                    hits += texts.stream()
                            .filter(text -> Boxes.overlap(text, cross))
                            .count();
                }
            }
            return hits;
        }

        /** The four of a window, rows from the top down. */
        List<Point> of(int column, int row) {
            int below = up.size() - 2 - row;
            List<Point> four = new ArrayList<>();
            for (int i = 0; i < 2; i++) {
                for (int k = 0; k < 2; k++) {
                    four.add(new Point(across.get(column + i), up.get(below + k)));
                }
            }
            four.sort(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y));
            return four;
        }
    }
}
