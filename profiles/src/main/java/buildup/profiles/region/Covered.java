package buildup.profiles.region;

import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/** The area that outlines cover together, exact over their true segments as given. */
public final class Covered {
    private Covered() {}

    /** Square inches; what lies in several outlines counts once. */
    public static double area(List<Outline> outlines) {
        double area = 0;
        for (List<Outline> heap : heaps(outlines)) {
            area += heap.size() == 1 ? heap.get(0).area() : joined(heap);
        }
        return area;
    }

    /** Outlines that lie in each other, together; others by themselves. */
    private static List<List<Outline>> heaps(List<Outline> outlines) {
        Groups heaps = new Groups(outlines.size());
        List<Difference> ready = outlines.stream().map(Difference::from).toList();
        for (Pairs.Pair pair : Pairs.near(outlines.stream().map(Outline::box).toList(), -Tolerance.COINCIDENT)) {
            if (!heaps.together(pair.first(), pair.second())
                    && ready.get(pair.first()).shared(ready.get(pair.second())) > Tolerance.NO_AREA) {
                heaps.join(pair.first(), pair.second());
            }
        }
        return heaps.all().stream()
                .map(heap -> heap.stream().map(outlines::get).toList())
                .toList();
    }

    /** Slab by slab between the heights at which an edge begins, ends, turns back or crosses another. */
    private static double joined(List<Outline> heap) {
        List<Slab.Edge> edges = new ArrayList<>();
        heap.forEach(outline -> edges.addAll(Difference.edges(outline)));
        List<Double> heights = heights(edges);
        double area = 0;
        for (int i = 0; i + 1 < heights.size(); i++) {
            double from = heights.get(i);
            double to = heights.get(i + 1);
            if (to - from > Tolerance.COINCIDENT) {
                area += Slab.at(edges, (from + to) / 2).joined(from, to);
            }
        }
        return area;
    }

    private static List<Double> heights(List<Slab.Edge> edges) {
        List<Double> heights = new ArrayList<>();
        for (Slab.Edge edge : edges) {
            heights.add(edge.low());
            heights.add(edge.high());
        }
        for (Pairs.Pair pair : Pairs.near(edges.stream().map(Slab.Edge::box).toList(), 0)) {
            Crossings.of(
                            edges.get(pair.first()).segment(),
                            edges.get(pair.second()).segment(),
                            Tolerance.TOUCHING)
                    .forEach(p -> heights.add(p.y()));
        }
        heights.sort(null);
        return heights;
    }
}
