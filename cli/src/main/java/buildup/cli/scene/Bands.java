package buildup.cli.scene;

import buildup.profiles.outline.Line;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Lines sorted into bands of equal breadth, level or upright, so that a question about a place asks only the lines
 * near it. A line is in every band that it reaches. Immutable.
 */
final class Bands {
    private final double start;
    private final double breadth;
    /** By number of the line: the band where it begins. */
    private final int[] first;
    /** By number of the band: the lines in it, in their order. */
    private final int[][] lines;

    private Bands(double start, double breadth, int[] first, int[][] lines) {
        this.start = start;
        this.breadth = breadth;
        this.first = first;
        this.lines = lines;
    }

    /**
     * As many bands as there are lines.
     *
     * @param least where a line begins across the bands, in
     * @param most where it ends, in
     */
    static Bands of(List<Line> all, ToDoubleFunction<Line> least, ToDoubleFunction<Line> most) {
        double start = all.stream().mapToDouble(least).min().orElse(0);
        double end = all.stream().mapToDouble(most).max().orElse(0);
        int count = Math.max(1, all.size());
        Bands empty = new Bands(start, (end - start) / count, new int[all.size()], new int[count][0]);
        int[] last = new int[all.size()];
        int[] sizes = new int[count];
        for (int line = 0; line < all.size(); line++) {
            empty.first[line] = empty.band(least.applyAsDouble(all.get(line)));
            last[line] = empty.band(most.applyAsDouble(all.get(line)));
            for (int band = empty.first[line]; band <= last[line]; band++) {
                sizes[band]++;
            }
        }
        int[][] lines = Arrays.stream(sizes).mapToObj(int[]::new).toArray(int[][]::new);
        for (int line = all.size() - 1; line >= 0; line--) {
            for (int band = empty.first[line]; band <= last[line]; band++) {
                lines[band][--sizes[band]] = line;
            }
        }
        return new Bands(start, empty.breadth, empty.first, lines);
    }

    /** The band of a place; one before or behind them all is in the first or the last. */
    int band(double place) {
        // a breadth of nothing divides to no number or beyond all, which the cast and the limits set right
        return Math.max(0, Math.min(lines.length - 1, (int) ((place - start) / breadth)));
    }

    /** The numbers of the lines in the band of a place. */
    int[] at(double place) {
        return lines[band(place)];
    }

    /** The numbers of the lines in a band. */
    int[] in(int band) {
        return lines[band];
    }

    /** Whether a line was met already by one who comes from an earlier band of those from {@code from}. */
    boolean isMet(int line, int band, int from) {
        return band > Math.max(from, first[line]);
    }
}
