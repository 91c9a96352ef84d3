package buildup.profiles.region;

import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.InteriorPointArea;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryCollection;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.noding.snap.SnappingNoder;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.locationtech.jts.operation.union.UnionStrategy;

/** Outlines made ready to be joined: chorded and welded in the order given. */
public final class Joining {
    /**
     * A one-shot union whose area differs more than this from the sum of its pieces, in square inches, had overlaps: the
     * smallest overlap that counts, touching wide and touching deep, has eight times as much.
     */
    private static final double AREA_SLACK = 1e-6;

    private static final UnionStrategy CASCADE = new UnionStrategy() {
        @Override
        public Geometry union(Geometry a, Geometry b) {
            return overlay(a, b, OverlayNG.UNION);
        }

        @Override
        public boolean isFloatingPrecision() {
            // lets the operation skip parts that do not meet: snapping leaves those alone
            return true;
        }
    };

    private final List<Outline> outlines;
    private final List<Chords> chords;
    private final List<Polygon> polygons;

    private Joining(List<Outline> outlines) {
        this.outlines = List.copyOf(outlines);
        List<Chords> raw = new ArrayList<>();
        for (int i = 0; i < outlines.size(); i++) {
            raw.add(Chords.of(i, outlines.get(i)));
        }
        this.chords = Weld.weld(raw, this.outlines);
        this.polygons = chords.stream().map(Chords::polygon).toList();
    }

    /** {@code outlines} in the order of putting up: a later one gives way where two nearly touch. */
    public static Joining of(List<Outline> outlines) {
        return new Joining(outlines);
    }

    /** The union of all outlines, parts from lowest to highest; {@code overlapping} when outlines may overlap. */
    public record Joined(List<Part> parts, boolean overlapping) {
        public Joined {
            parts = List.copyOf(parts);
        }

        public double area() {
            return parts.stream().mapToDouble(Part::area).sum();
        }

        public double perimeter() {
            return parts.stream().mapToDouble(Part::perimeter).sum();
        }
    }

    public Joined union() {
        if (polygons.isEmpty()) {
            return new Joined(List.of(), false);
        }
        Optional<Geometry> oneShot = oneShot();
        Geometry union = oneShot.orElseGet(() -> {
            UnaryUnionOp op = new UnaryUnionOp(polygons, Chords.FACTORY);
            op.setUnionFunction(CASCADE);
            return op.union();
        });
        return new Joined(parts(union), oneShot.isEmpty());
    }

    private Optional<Geometry> oneShot() {
        GeometryCollection all = Chords.FACTORY.createMultiPolygon(polygons.toArray(new Polygon[0]));
        double sum = polygons.stream().mapToDouble(Polygon::getArea).sum();
        try {
            Geometry union = snapped(all, Chords.FACTORY.createPolygon(), OverlayNG.UNION);
            // overlaps can also leave loose lines, or polygons that lie on each other: neither is a region
            boolean region = union instanceof Polygonal && union.isValid();
            return region && Math.abs(union.getArea() - sum) <= AREA_SLACK ? Optional.of(union) : Optional.empty();
        } catch (TopologyException overlapping) {
            return Optional.empty();
        }
    }

    /** Snapped; where the snapped edges contradict each other, by the library's own ladder, which may leave slits. */
    static Geometry overlay(Geometry a, Geometry b, int operation) {
        try {
            return snapped(a, b, operation);
        } catch (TopologyException first) {
            return OverlayNGRobust.overlay(a, b, operation);
        }
    }

    private static Geometry snapped(Geometry a, Geometry b, int operation) {
        return OverlayNG.overlay(a, b, operation, null, new SnappingNoder(Tolerance.SNAP));
    }

    /** The overlaps of every pair that are at least touching deep, in the order of the outlines. */
    public List<Lap> laps() {
        List<Lap> laps = new ArrayList<>();
        for (int i = 0; i < polygons.size(); i++) {
            for (int j = i + 1; j < polygons.size(); j++) {
                if (polygons.get(i)
                        .getEnvelopeInternal()
                        .intersects(polygons.get(j).getEnvelopeInternal())) {
                    laps(i, j, laps);
                }
            }
        }
        return laps;
    }

    private void laps(int i, int j, List<Lap> out) {
        Geometry common = overlay(polygons.get(i), polygons.get(j), OverlayNG.INTERSECTION);
        List<Lap> found = new ArrayList<>();
        for (int k = 0; k < common.getNumGeometries(); k++) {
            if (common.getGeometryN(k) instanceof Polygon polygon && !polygon.isEmpty()) {
                double depth = Width.least(polygon);
                if (depth >= Tolerance.TOUCHING) {
                    Part part = part(polygon, new Trace(outlines, List.of(chords.get(i), chords.get(j))));
                    found.add(new Lap(i, j, part.area(), depth, part.outer().inside()));
                }
            }
        }
        found.sort(Comparator.comparingDouble((Lap lap) -> lap.at().y())
                .thenComparingDouble(lap -> lap.at().x()));
        out.addAll(found);
    }

    private List<Part> parts(Geometry union) {
        Trace trace = new Trace(outlines, chords);
        List<Part> parts = new ArrayList<>();
        for (int k = 0; k < union.getNumGeometries(); k++) {
            if (union.getGeometryN(k) instanceof Polygon polygon && !polygon.isEmpty()) {
                parts.add(part(polygon, trace));
            }
        }
        parts.sort(Comparator.comparingDouble((Part part) -> part.outer().box().bottom())
                .thenComparingDouble(part -> part.outer().box().back()));
        return parts;
    }

    private static Part part(Polygon polygon, Trace trace) {
        List<Part.Hole> holes = new ArrayList<>();
        for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
            LinearRing ring = polygon.getInteriorRingN(h);
            Polygon hole = Chords.FACTORY.createPolygon(ring);
            boolean wide = hole.getArea() > Tolerance.LEAST_VOID_AREA / 2
                    && !hole.buffer(-Tolerance.TOUCHING / 2).isEmpty();
            Ring traced = trace.ring(ring, false, inside(hole));
            // welding may leave a speck of a hole that the outlines as given do not have
            if (!traced.bounds().isEmpty()) {
                holes.add(new Part.Hole(traced, wide));
            }
        }
        holes.sort(Comparator.comparingDouble(
                        (Part.Hole hole) -> hole.ring().inside().y())
                .thenComparingDouble(hole -> hole.ring().inside().x()));
        return new Part(trace.ring(polygon.getExteriorRing(), true, inside(polygon)), holes);
    }

    private static Point inside(Polygon polygon) {
        Coordinate c = InteriorPointArea.getInteriorPoint(polygon);
        return new Point(c.getX(), c.getY());
    }
}
