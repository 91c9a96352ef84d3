package buildup.cli.drawing.paper;

import buildup.cli.scene.Boxes;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

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
        long fewest = best.crosses().hits();
        for (int i = 0; i < others.size() && fewest > 0; i++) {
            long hits = others.get(i).crosses().hits();
            if (hits < fewest) {
                fewest = hits;
                best = others.get(i);
            }
        }
        return best;
    }

    /**
     * How many windows a box of no texts takes; as a number that does not overflow. Nothing is laid out for it: a box of
     * thousands of feet takes millions.
     */
    static double count(Box whole, double wide, double high) {
        return (double) Seams.fewest(whole.width(), wide) * Seams.fewest(whole.height(), high);
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
     * How far a text is moved to be read in a window; empty where it is not in it. It is whole there or not at all, since the
     * rest of a cut figure reads as another figure. One that no window holds whole is moved into the window that holds its
     * middle; only one that is longer than a window goes over several.
     */
    Optional<Point> shown(Box text, Box window) {
        if (whole(text, window) || text.width() > window.width() || text.height() > window.height()) {
            return Optional.of(Point.ORIGIN);
        }
        if (windows().anyMatch(other -> whole(text, other))) {
            return Optional.empty();
        }
        return windows()
                .filter(other -> other.holds(text.middle(), 0))
                .findFirst()
                .filter(window::equals)
                .map(home -> new Point(
                        into(text.back(), text.face(), home.back(), home.face()),
                        into(text.bottom(), text.top(), home.bottom(), home.top())));
    }

    /** How far a length is moved to lie within another. */
    private static double into(double from, double to, double low, double high) {
        return Math.max(0, low - from) - Math.max(0, to - high);
    }

    private static boolean whole(Box text, Box window) {
        return window.grown(Tolerance.SNAP).holds(new Point(text.back(), text.bottom()), 0)
                && window.grown(Tolerance.SNAP).holds(new Point(text.face(), text.top()), 0);
    }

    private Stream<Box> windows() {
        return IntStream.range(0, rows.count())
                .boxed()
                .flatMap(row -> IntStream.range(0, columns.count()).mapToObj(column -> window(column, row)));
    }

    /** The texts that are read in a window, where they stand there. */
    List<Box> texts(Box window) {
        return drawn.texts().stream()
                .filter(text -> Boxes.overlap(text, window))
                .flatMap(text -> shown(text, window).map(by -> moved(text, by)).stream())
                .toList();
    }

    private static Box moved(Box text, Point by) {
        return new Box(text.back() + by.x(), text.bottom() + by.y(), text.face() + by.x(), text.top() + by.y());
    }

    /** The crosses by which the windows are laid together. */
    Crosses crosses() {
        return Crosses.of(this);
    }
}
