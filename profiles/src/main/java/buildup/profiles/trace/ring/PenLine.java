package buildup.profiles.trace.ring;

import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The middle of a drawn line of which a scan has given both edges, one within the other. */
final class PenLine {
    /** A line is no wider than this share of what it draws. */
    private static final double WIDEST = 0.06;

    /** Nine tenths of the way the line is as wide as in its middle tenth, but for this share. */
    private static final double EVENLY = 0.4;

    private static final int LOOKED_AT = 200;

    private PenLine() {}

    /**
     * A line between its edges.
     *
     * @param middle closed
     * @param width in
     */
    record Middle(Run middle, double width) {}

    static Optional<Middle> between(Run outer, Run inner) {
        if (!outer.box().near(inner.box(), 0) || outer.dots().size() < LOOKED_AT / 8 || inner.area() > outer.area()) {
            return Optional.empty();
        }
        double size = RingSizes.size(outer.dots());
        int step = Math.max(1, inner.dots().size() / LOOKED_AT);
        List<Double> widths = new ArrayList<>();
        for (int i = 0; i < inner.dots().size(); i += step) {
            Point p = inner.dots().get(i).at();
            widths.add(p.distance(RingSizes.nearest(p, outer.dots())));
        }
        double[] sorted = widths.stream().mapToDouble(width -> width).sorted().toArray();
        double usual = sorted[sorted.length / 2];
        double evenly = Arrays.stream(sorted)
                .filter(width -> Math.abs(width - usual) <= EVENLY * usual)
                .count();
        if (usual > WIDEST * size || evenly < 0.9 * sorted.length || !(usual > 0)) {
            return Optional.empty();
        }
        List<Dot> middle = outer.dots().stream()
                .map(dot -> new Dot(
                        dot.at().towards(RingSizes.nearest(dot.at(), inner.dots()), 0.5), dot.number(), dot.open()))
                .toList();
        return Optional.of(new Middle(new Run(middle, true, outer.layers()), usual));
    }
}
