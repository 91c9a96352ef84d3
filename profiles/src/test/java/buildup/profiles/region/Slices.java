package buildup.profiles.region;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The area of a union counted in upright slices, with no overlay at all. */
final class Slices {
    private Slices() {}

    static double area(List<Outline> outlines, int count) {
        Box box = Box.around(outlines.stream().map(Outline::box).toList());
        List<List<Point>> rings = outlines.stream()
                .map(outline -> outline.flattened(Tolerance.CHORD))
                .toList();
        double width = box.width() / count;
        double area = 0;
        for (int i = 0; i < count; i++) {
            area += width * filled(rings, box.back() + (i + 0.5) * width);
        }
        return area;
    }

    private static double filled(List<List<Point>> rings, double x) {
        List<double[]> stretches = new ArrayList<>();
        for (List<Point> ring : rings) {
            List<Double> heights = heights(ring, x);
            for (int i = 0; i + 1 < heights.size(); i += 2) {
                stretches.add(new double[] {heights.get(i), heights.get(i + 1)});
            }
        }
        stretches.sort(Comparator.comparingDouble(stretch -> stretch[0]));
        double filled = 0;
        double end = Double.NEGATIVE_INFINITY;
        for (double[] stretch : stretches) {
            if (stretch[1] > end) {
                filled += stretch[1] - Math.max(end, stretch[0]);
                end = stretch[1];
            }
        }
        return filled;
    }

    /** Where the ring crosses the upright at {@code x}, from below. */
    static List<Double> heights(List<Point> ring, double x) {
        List<Double> heights = new ArrayList<>();
        for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
            Point a = ring.get(i);
            Point b = ring.get(j);
            if (a.x() > x != b.x() > x) {
                heights.add(a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x()));
            }
        }
        heights.sort(Comparator.naturalOrder());
        return heights;
    }
}
