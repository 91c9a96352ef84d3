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
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.noding.snap.SnappingNoder;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.locationtech.jts.operation.union.UnionStrategy;

/** Outlines made ready to be joined: chorded and welded in the order given. */
public final class WeldedOutlines {
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
    private final Geometry union;

    private WeldedOutlines(List<Outline> outlines, List<Chords> chords) {
        this.outlines = outlines;
        this.chords = chords;
        this.union = union(chords.stream().map(Chords::polygon).toList());
    }

    /** {@code outlines} in the order of putting up: a later one gives way where two nearly touch. */
    public static WeldedOutlines of(List<Outline> outlines) {
        List<Chords> raw = new ArrayList<>();
        for (int i = 0; i < outlines.size(); i++) {
            raw.add(Chords.of(i, outlines.get(i)));
        }
        return new WeldedOutlines(List.copyOf(outlines), Weld.weld(raw, outlines));
    }

    /** The union of all outlines, parts from lowest to highest. */
    public record Joined(List<Part> parts) {
        public Joined {
            parts = List.copyOf(parts);
        }

        /** Within what welding moves, a touching width along the joints: see {@link Covered} for the area as given. */
        public double area() {
            return parts.stream().mapToDouble(Part::area).sum();
        }

        /** The length round all parts of the union, holes included, in. */
        public double perimeter() {
            return parts.stream().mapToDouble(Part::perimeter).sum();
        }
    }

    /** The union with its true segments put back in place of the chords. */
    public Joined union() {
        Trace trace = new Trace(outlines, chords);
        List<Part> parts = new ArrayList<>();
        for (int k = 0; k < union.getNumGeometries(); k++) {
            if (union.getGeometryN(k) instanceof Polygon polygon && !polygon.isEmpty()) {
                Part part = part(polygon, trace);
                // what was taken apart may leave a speck that the outlines as given do not have
                if (!part.outer().bounds().isEmpty()) {
                    parts.add(part);
                }
            }
        }
        parts.sort(Comparator.comparingDouble((Part part) -> part.outer().box().bottom())
                .thenComparingDouble(part -> part.outer().box().back()));
        return new Joined(parts);
    }

    /**
     * The air that the outlines enclose, from lowest to highest: what touches closes it, at a corner or where a curve is
     * tangent too. Whether two touch is read off the outlines as given, not off what welding made of them.
     */
    public List<Cavity> cavities() {
        return Cavities.of(Closures.of(outlines));
    }

    static Geometry union(List<Polygon> polygons) {
        if (polygons.isEmpty()) {
            return Chords.FACTORY.createPolygon();
        }
        return oneShot(polygons).orElseGet(() -> {
            UnaryUnionOp op = new UnaryUnionOp(polygons, Chords.FACTORY);
            op.setUnionFunction(CASCADE);
            return op.union();
        });
    }

    private static Optional<Geometry> oneShot(List<Polygon> polygons) {
        GeometryCollection all = Chords.FACTORY.createMultiPolygon(polygons.toArray(new Polygon[0]));
        double sum = polygons.stream().mapToDouble(Polygon::getArea).sum();
        try {
            Geometry union = snapped(all, Chords.FACTORY.createPolygon(), OverlayNG.UNION);
            // overlaps can also leave loose lines, or polygons that lie on each other: neither is a region
            boolean region = union instanceof Polygonal && union.isValid();
            return region && Math.abs(union.getArea() - sum) <= Tolerance.LAPPED_AREA
                    ? Optional.of(union)
                    : Optional.empty();
        } catch (TopologyException overlapping) {
            return Optional.empty();
        }
    }

    /**
     * Snapped; where the snapped edges contradict each other, by the library's own ladder, which may leave slits; where
     * that cannot tell inside from outside either, once more with what welding left crossed taken apart.
     */
    static Geometry overlay(Geometry a, Geometry b, int operation) {
        try {
            return snapped(a, b, operation);
        } catch (TopologyException first) {
            try {
                return OverlayNGRobust.overlay(a, b, operation);
            } catch (TopologyException second) {
                return OverlayNGRobust.overlay(GeometryFixer.fix(a), GeometryFixer.fix(b), operation);
            }
        }
    }

    private static Geometry snapped(Geometry a, Geometry b, int operation) {
        return OverlayNG.overlay(a, b, operation, null, new SnappingNoder(Tolerance.SNAP));
    }

    private static Part part(Polygon polygon, Trace trace) {
        List<Ring> holes = new ArrayList<>();
        for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
            Polygon hole = Chords.FACTORY.createPolygon(polygon.getInteriorRingN(h));
            Ring traced = trace.ring(hole.getExteriorRing(), false, inside(hole));
            // welding may leave a speck of a hole along a joint that the outlines as given do not have
            if (!traced.bounds().isEmpty() && traced.area() > Tolerance.SNAP * traced.length()) {
                holes.add(traced);
            }
        }
        holes.sort(Comparator.comparingDouble((Ring hole) -> hole.inside().y())
                .thenComparingDouble(hole -> hole.inside().x()));
        return new Part(trace.ring(polygon.getExteriorRing(), true, inside(polygon)), holes);
    }

    static Point inside(Polygon polygon) {
        Coordinate c = InteriorPointArea.getInteriorPoint(polygon);
        return new Point(c.getX(), c.getY());
    }
}
