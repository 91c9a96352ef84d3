package buildup.cli.drawing.paper;

import buildup.cli.scene.Boxes;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The crosses by which the windows of a picture are laid together: two windows side by side share two of them, where they
 * lap. They stand in straight rows and columns; one that would lie on a text there moves within its lap. In of the picture.
 */
final class Crosses {
    /** The places in a lap at which a row of crosses is tried, from its middle out; shares of what their arms leave. */
    private static final List<Double> TRIED = List.of(0.5, 0.375, 0.625, 0.25, 0.75, 0.125, 0.875, 0.0, 1.0);

    /** The places each way that are tried for one cross alone. */
    private static final int PLACES = 32;

    /** So far from the outer edge a cross may stand, in windows; those of a window stay well apart. */
    private static final double FARTHER = 0.3;

    /** What it costs a cross to lie on a text, in lines that it could lie on. */
    private static final long TEXT = 1000;

    private final Seams columns;
    private final Seams rows;

    /** By column and row of laps, from the lower left one. */
    private final List<List<Lap>> laps = new ArrayList<>();

    private final List<List<Point>> at = new ArrayList<>();

    /** Where windows lap, and what is seen there in any of them. */
    private record Lap(Seams.Span across, Seams.Span up, List<Box> texts, List<Segment> lines) {
        long hits(Point at) {
            Box cross = Box.of(at, at).grown(Tiling.ARM);
            return texts.stream().filter(text -> Boxes.overlap(text, cross)).count();
        }

        long cost(Point at) {
            Box cross = Box.of(at, at).grown(Tiling.ARM);
            return TEXT * hits(at)
                    + lines.stream()
                            .filter(line -> line.box().near(cross, 0)
                                    && (line instanceof Arc || Boxes.crosses(cross, line.from(), line.to())))
                            .count();
        }

        /** The place that costs least, and of those the one nearest to where it would stand in its row. */
        Point best(Point wished) {
            return places(across)
                    .boxed()
                    .flatMap(x -> places(up).mapToObj(y -> new Point(x, y)))
                    .min(Comparator.comparingLong(this::cost)
                            .thenComparingDouble(wished::distance)
                            .thenComparingDouble(Point::x)
                            .thenComparingDouble(Point::y))
                    .orElse(wished);
        }

        private static DoubleStream places(Seams.Span lap) {
            return IntStream.rangeClosed(0, PLACES).mapToDouble(i -> place(lap, (double) i / PLACES));
        }
    }

    private Crosses(Tiling tiling) {
        this.columns = tiling.columns();
        this.rows = tiling.rows();
        List<List<List<Box>>> texts = IntStream.range(0, columns.count())
                .mapToObj(column -> IntStream.range(0, rows.count())
                        .mapToObj(up -> tiling.texts(tiling.window(column, rows.count() - 1 - up)))
                        .toList())
                .toList();
        for (int i = 0; i <= columns.count(); i++) {
            List<Lap> column = new ArrayList<>();
            for (int k = 0; k <= rows.count(); k++) {
                column.add(lap(
                        span(columns, i),
                        span(rows, k),
                        around(texts, i, k),
                        tiling.drawn().lines()));
            }
            laps.add(column);
        }
    }

    /** The texts of the windows that share a cross. */
    private static Stream<Box> around(List<List<List<Box>>> texts, int column, int row) {
        return texts.subList(Math.max(0, column - 1), Math.min(texts.size(), column + 1)).stream()
                .flatMap(up -> up.subList(Math.max(0, row - 1), Math.min(up.size(), row + 1)).stream())
                .flatMap(List::stream)
                .distinct();
    }

    /**
     * Where a cross may stand: where windows lap, and at the outer edge of a picture, where only windows beside one another
     * share it, farther in.
     */
    private static Seams.Span span(Seams seams, int i) {
        Seams.Span lap = seams.lap(i);
        double farther = FARTHER * seams.window();
        if (i == 0) {
            return new Seams.Span(lap.from(), lap.from() + farther);
        }
        return i == seams.count() ? new Seams.Span(lap.to() - farther, lap.to()) : lap;
    }

    private static Lap lap(Seams.Span across, Seams.Span up, Stream<Box> texts, List<Segment> lines) {
        Box box = new Box(across.from(), up.from(), across.to(), up.to());
        return new Lap(
                across,
                up,
                texts.filter(text -> Boxes.overlap(text, box)).toList(),
                lines.stream().filter(line -> line.box().near(box, 0)).toList());
    }

    /** The crosses of all windows. None lies on a text where its lap has another place for it. */
    static Crosses of(Tiling tiling) {
        Crosses crosses = new Crosses(tiling);
        crosses.place();
        return crosses;
    }

    private void place() {
        List<Double> across = middles(columns);
        List<Double> up = middles(rows);
        // a second look, since the first was at crosses that have moved since
        for (int round = 0; round < 2; round++) {
            for (int i = 0; i < across.size(); i++) {
                int column = i;
                across.set(i, best(columns.lap(i), x -> cost(column, x, up)));
            }
            for (int k = 0; k < up.size(); k++) {
                int row = k;
                up.set(k, best(rows.lap(k), y -> cost(across, row, y)));
            }
        }
        for (int i = 0; i < across.size(); i++) {
            List<Point> column = new ArrayList<>();
            for (int k = 0; k < up.size(); k++) {
                Point inLine = new Point(across.get(i), up.get(k));
                Lap lap = laps.get(i).get(k);
                column.add(lap.hits(inLine) > 0 ? lap.best(inLine) : inLine);
            }
            at.add(column);
        }
    }

    private static List<Double> middles(Seams seams) {
        return IntStream.rangeClosed(0, seams.count())
                .mapToObj(i -> place(seams.lap(i), TRIED.get(0)))
                .collect(Collectors.toCollection(ArrayList::new));
    }

    private static double place(Seams.Span lap, double share) {
        return lap.from() + Tiling.ARM + share * (lap.to() - lap.from() - 2 * Tiling.ARM);
    }

    /** The first of the places in a lap that cost least. */
    private static double best(Seams.Span lap, ToLongFunction<Double> cost) {
        double best = place(lap, TRIED.get(0));
        long least = Long.MAX_VALUE;
        for (double share : TRIED) {
            double tried = place(lap, share);
            long costs = cost.applyAsLong(tried);
            if (costs < least) {
                least = costs;
                best = tried;
            }
        }
        return best;
    }

    private long cost(int column, double x, List<Double> up) {
        return IntStream.range(0, up.size())
                .mapToLong(k -> laps.get(column).get(k).cost(new Point(x, up.get(k))))
                .sum();
    }

    private long cost(List<Double> across, int row, double y) {
        return IntStream.range(0, across.size())
                .mapToLong(i -> laps.get(i).get(row).cost(new Point(across.get(i), y)))
                .sum();
    }

    /** How often one of them lies on a text. */
    long hits() {
        return IntStream.range(0, at.size())
                .mapToLong(i -> IntStream.range(0, at.get(i).size())
                        .mapToLong(k -> laps.get(i).get(k).hits(at.get(i).get(k)))
                        .sum())
                .sum();
    }

    /** The four of a window, rows from the top down: of its left side and then of its right, each from below up. */
    List<Point> of(int column, int row) {
        int below = rows.count() - 1 - row;
        return at.subList(column, column + 2).stream()
                .flatMap(up -> up.subList(below, below + 2).stream())
                .toList();
    }
}
