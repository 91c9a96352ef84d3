package buildup.cli.drawing.paper;

import buildup.cli.scene.Boxes;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A picture cut into windows of one size, in columns and rows, each lapping over the next. In of the picture.
 *
 * @param columns across
 * @param rows up the picture, the lowest first
 * @param drawn what crosses had better not lie on
 */
record Tiling(Seams columns, Seams rows, Drawn drawn) {
    /** How far one part laps over the next at least; room for the crosses. */
    static final double OVERLAP = Seams.OVERLAP;

    /** Half the arms of a cross. */
    static final double ARM = 0.16;

    /** The places in a lap at which a cross is tried, from its middle out; shares of what its arms leave. */
    private static final List<Double> TRIED = List.of(0.5, 0.375, 0.625, 0.25, 0.75, 0.125, 0.875, 0.0, 1.0);

    /** What it costs a cross to lie on a text, in lines that it could lie on. */
    private static final long TEXT = 1000;

    /**
     * What a picture holds.
     *
     * @param texts that no cross may lie on, and that no seam may cut
     * @param lines among which a cross is hard to see
     */
    record Drawn(List<Box> texts, List<Segment> lines) {
        Drawn {
            texts = List.copyOf(texts);
            lines = List.copyOf(lines);
        }

        /** Nothing. */
        static final Drawn NOTHING = new Drawn(List.of(), List.of());
    }

    /**
     * The windows that hold a box, so that each of its texts is whole in one of them; as few as can be, with the box in their
     * middle.
     */
    static Tiling of(Box whole, double wide, double high, Drawn drawn) {
        List<Seams> across = Seams.of(
                whole.back(),
                whole.face(),
                wide,
                drawn.texts().stream()
                        .map(text -> new Seams.Span(text.back(), text.face()))
                        .toList());
        List<Seams> up = Seams.of(
                whole.bottom(),
                whole.top(),
                high,
                drawn.texts().stream()
                        .map(text -> new Seams.Span(text.bottom(), text.top()))
                        .toList());
        Tiling first = new Tiling(across.get(0), up.get(0), drawn);
        Tiling moved = clearest(
                first,
                up.stream().map(rows -> new Tiling(first.columns, rows, drawn)).toList());
        return clearest(
                moved,
                across.stream()
                        .map(columns -> new Tiling(columns, moved.rows, drawn))
                        .toList());
    }

    /** The first one whose crosses lie on the fewest texts. */
    private static Tiling clearest(Tiling first, List<Tiling> others) {
        Tiling best = first;
        long fewest = best.crosses().hits(best.drawn.texts());
        for (int i = 0; i < others.size() && fewest > 0; i++) {
            long hits = others.get(i).crosses().hits(best.drawn.texts());
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
            middles.add(place(seams.lap(i), TRIED.get(0)));
        }
        return middles;
    }

    private static double place(Seams.Span lap, double share) {
        return lap.from() + ARM + share * (lap.to() - lap.from() - 2 * ARM);
    }

    private double best(Seams seams, int lap, List<Double> others, boolean across) {
        double best = place(seams.lap(lap), TRIED.get(0));
        long fewest = Long.MAX_VALUE;
        for (double share : TRIED) {
            double at = place(seams.lap(lap), share);
            Crosses tried = across ? new Crosses(List.of(at), others) : new Crosses(others, List.of(at));
            long hit = TEXT * tried.hits(drawn.texts()) + tried.lines(drawn.lines());
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

        /** How many lines pass through them. */
        private long lines(List<Segment> lines) {
            long passing = 0;
            for (double x : across) {
                for (double y : up) {
                    Box ring = new Box(x, y, x, y).grown(ARM);
                    passing += lines.stream()
                            .filter(line -> line.box().near(ring, 0)
                                    && (line instanceof Arc || Boxes.crosses(ring, line.from(), line.to())))
                            .count();
                }
            }
            return passing;
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
