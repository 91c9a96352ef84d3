package buildup.profiles.region;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/**
 * How much two outlines differ, by area: exact over the true segments, and quick enough to be asked some thousand times
 * in a run. The pair is cut into slabs at every height where an edge of either begins, ends or turns back, and where
 * one crosses the other; between two such heights what they share is bounded by one edge on each side, whose area is a
 * closed form.
 *
 * <p>No overlay library is asked: its answer would have to be traced back from chords each time, at a hundred times the
 * cost, and outlines that differ by less than its snap are what is compared here. The tests hold the two against each
 * other.
 */
public final class Difference {
    private final Box box;
    private final double area;
    private final List<Slab.Edge> edges;

    private Difference(Box box, double area, List<Slab.Edge> edges) {
        this.box = box;
        this.area = area;
        this.edges = edges;
    }

    /** Made ready to be compared with others. */
    public static Difference from(Outline outline) {
        return new Difference(outline.box(), outline.area(), edges(outline));
    }

    static List<Slab.Edge> edges(Outline outline) {
        List<Slab.Edge> edges = new ArrayList<>();
        for (Stroke stroke : outline.strokes()) {
            edges.addAll(Slab.Edge.of(stroke.segment()));
        }
        return edges;
    }

    /** The least box round the wanted outline, in. */
    public Box box() {
        return box;
    }

    /** Area of its own, sq in. */
    public double area() {
        return area;
    }

    /** The same, so much farther out and up. */
    public Difference shifted(double dx, double dy) {
        return new Difference(
                new Box(box.back() + dx, box.bottom() + dy, box.face() + dx, box.top() + dy),
                area,
                edges.stream().map(edge -> edge.shifted(dx, dy)).toList());
    }

    /** Area of what lies in one of the two alone, sq in. */
    public double to(Difference other) {
        return Math.max(0, area + other.area - 2 * shared(other));
    }

    /** Area of what lies in both, sq in. */
    public double shared(Difference other) {
        double shared = 0;
        for (List<Slab.Cell> slab : cells(other)) {
            for (Slab.Cell cell : slab) {
                shared += cell.area();
            }
        }
        return shared;
    }

    /** What lies in both, slab by slab from the lowest up. */
    List<List<Slab.Cell>> cells(Difference other) {
        if (!box.near(other.box, 0)) {
            return List.of();
        }
        List<Double> heights = heights(other);
        List<List<Slab.Cell>> slabs = new ArrayList<>();
        for (int i = 0; i + 1 < heights.size(); i++) {
            double from = heights.get(i);
            double to = heights.get(i + 1);
            if (to - from > Tolerance.COINCIDENT) {
                double middle = (from + to) / 2;
                slabs.add(Slab.at(edges, middle).shared(Slab.at(other.edges, middle), from, to));
            }
        }
        return slabs;
    }

    private List<Double> heights(Difference other) {
        double low = Math.max(box.bottom(), other.box.bottom());
        double high = Math.min(box.top(), other.box.top());
        List<Double> heights = new ArrayList<>();
        for (List<Slab.Edge> side : List.of(edges, other.edges)) {
            for (Slab.Edge edge : side) {
                heights.add(edge.low());
                heights.add(edge.high());
            }
        }
        for (Slab.Edge a : edges) {
            for (Slab.Edge b : other.edges) {
                if (a.low() < b.high() && b.low() < a.high() && a.box().near(b.box(), 0)) {
                    // one too many does no harm: it parts a slab in two
                    Crossings.of(a.segment(), b.segment(), Tolerance.TOUCHING).forEach(p -> heights.add(p.y()));
                }
            }
        }
        heights.removeIf(y -> y < low || y > high);
        heights.add(low);
        heights.add(high);
        heights.sort(null);
        return heights;
    }
}
