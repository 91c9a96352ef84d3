package buildup.profiles.region;

import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where outlines lie in each other, on the true segments as given: nothing is welded or chorded, so a lap keeps the area
 * that it has.
 */
public final class OutlineLaps {
    /** How far the vertices between which a width is measured may pass by a curve, in. */
    private static final double FINE = Tolerance.CHORD / 16;

    private OutlineLaps() {}

    /** The laps of every pair that are at least touching deep, in the order of the outlines, each pair's lowest first. */
    public static List<Lap> of(List<Outline> outlines) {
        List<Difference> ready = outlines.stream().map(Difference::from).toList();
        List<Lap> laps = new ArrayList<>();
        // no lap is wider than the overlap of the boxes
        for (Pairs.Pair pair : Pairs.near(outlines.stream().map(Outline::box).toList(), -Tolerance.TOUCHING / 2)) {
            List<Lap> own = new ArrayList<>();
            for (List<Slab.Cell> part : parts(ready.get(pair.first()).cells(ready.get(pair.second())))) {
                double depth = Width.least(vertices(part));
                if (depth >= Tolerance.TOUCHING) {
                    own.add(lap(pair, part, depth));
                }
            }
            own.sort(Comparator.comparingDouble((Lap lap) -> lap.at().y())
                    .thenComparingDouble(lap -> lap.at().x()));
            laps.addAll(own);
        }
        return laps;
    }

    private static Lap lap(Pairs.Pair pair, List<Slab.Cell> part, double depth) {
        double area = 0;
        Slab.Cell largest = part.get(0);
        for (Slab.Cell cell : part) {
            area += cell.area();
            // by a margin, so that of equals the lowest is taken whatever the last digit says
            if (cell.area() > largest.area() + Tolerance.SNAP) {
                largest = cell;
            }
        }
        return new Lap(pair.first(), pair.second(), area, depth, largest.inside());
    }

    /** Cells of one slab and the next that share more than a corner belong together. */
    private static List<List<Slab.Cell>> parts(List<List<Slab.Cell>> slabs) {
        List<List<Slab.Cell>> parts = new ArrayList<>();
        List<Slab.Cell> below = List.of();
        for (List<Slab.Cell> slab : slabs) {
            for (Slab.Cell cell : slab) {
                List<List<Slab.Cell>> met = new ArrayList<>();
                for (Slab.Cell under : below) {
                    if (under.goesOnIn(cell)) {
                        parts.stream()
                                .filter(part -> part.contains(under) && !met.contains(part))
                                .findFirst()
                                .ifPresent(met::add);
                    }
                }
                List<Slab.Cell> whole = new ArrayList<>();
                met.forEach(whole::addAll);
                whole.add(cell);
                parts.removeAll(met);
                parts.add(whole);
            }
            below = slab;
        }
        return parts;
    }

    private static List<Point> vertices(List<Slab.Cell> part) {
        List<Point> vertices = new ArrayList<>();
        for (Slab.Cell cell : part) {
            vertices.addAll(cell.left().flattened(cell.from(), cell.to(), FINE));
            vertices.addAll(cell.right().flattened(cell.from(), cell.to(), FINE));
        }
        return vertices;
    }
}
