package buildup.profiles.region;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/**
 * Finds the air that a union encloses, as what is left of a sheet from which the union is cut: polygons hang together by
 * more than a point, so that air which a point of contact parts comes out as two.
 */
final class Cavities {
    /** Chords of an arc, enough to see whether what it bounds is wider than touching. */
    private static final int ARC_STEPS = 32;

    private static final Comparator<Cavity> UPWARD = Comparator.comparingDouble(
                    (Cavity cavity) -> cavity.ring().inside().y())
            .thenComparingDouble(cavity -> cavity.ring().inside().x());

    private final List<Polygon> air;
    private final Envelope sheet;
    private final Trace trace;
    private final Map<Coordinate, Set<Integer>> wideAirAt = new HashMap<>();

    private Cavities(List<Polygon> air, Envelope sheet, Trace trace) {
        this.air = air;
        this.sheet = sheet;
        this.trace = trace;
        for (int i = 0; i < air.size(); i++) {
            // the specks that welded chords leave along a joint part nothing
            if (isWide(air.get(i))) {
                for (Coordinate at : air.get(i).getCoordinates()) {
                    wideAirAt.computeIfAbsent(at, any -> new HashSet<>()).add(i);
                }
            }
        }
    }

    static List<Cavity> of(Geometry union, Trace trace) {
        boolean closed = union.getNumGeometries() > 1
                || (union instanceof Polygon only && (only.isEmpty() || only.getNumInteriorRing() > 0));
        if (!closed) {
            return List.of();
        }
        Envelope sheet = union.getEnvelopeInternal();
        sheet.expandBy(1);
        Geometry rest = WeldedOutlines.overlay(Chords.FACTORY.toGeometry(sheet), union, OverlayNG.DIFFERENCE);
        List<Polygon> air = new ArrayList<>();
        for (int i = 0; i < rest.getNumGeometries(); i++) {
            if (rest.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                air.add(polygon);
            }
        }
        return new Cavities(air, sheet, trace).found();
    }

    /** The same of parts whose air lies in their holes alone. */
    static List<Cavity> in(List<Part> parts) {
        List<Cavity> found = new ArrayList<>();
        for (Part part : parts) {
            for (Ring hole : part.holes()) {
                List<Ring> islands = parts.stream()
                        .filter(other -> holds(hole, other.outer()))
                        .map(Part::outer)
                        .toList();
                found.add(new Cavity(hole, islands, isWide(polygon(hole)), List.of()));
            }
        }
        found.sort(UPWARD);
        return found;
    }

    private static boolean holds(Ring hole, Ring other) {
        Point at = other.bounds().get(0).segment().from();
        return hole.box().holds(at, 0) && Outline.isInside(Abutting.corners(hole.bounds()), at);
    }

    private List<Cavity> found() {
        List<Cavity> found = new ArrayList<>();
        for (int i = 0; i < air.size(); i++) {
            Polygon polygon = air.get(i);
            if (!polygon.getEnvelopeInternal().equals(sheet)) {
                Ring ring = trace.ring(polygon.getExteriorRing(), false, WeldedOutlines.inside(polygon));
                // welding may leave a speck of air that the outlines as given do not have
                if (!ring.bounds().isEmpty()) {
                    boolean wide = isWide(polygon) && isWide(polygon(ring));
                    found.add(new Cavity(ring, islands(polygon), wide, corners(i)));
                }
            }
        }
        found.sort(UPWARD);
        return found;
    }

    /** As the outlines were given: what welding drew aside at one end is no wider for it. */
    private static Polygon polygon(Ring ring) {
        List<Coordinate> around = new ArrayList<>();
        for (Bound bound : ring.bounds()) {
            int steps = bound.segment() instanceof Arc ? ARC_STEPS : 1;
            for (int k = 0; k <= steps; k++) {
                Point at = bound.segment().at((double) k / steps);
                around.add(new Coordinate(at.x(), at.y()));
            }
        }
        around.add(around.get(0).copy());
        return Chords.FACTORY.createPolygon(around.toArray(new Coordinate[0]));
    }

    private static boolean isWide(Polygon polygon) {
        return polygon.getArea() > Tolerance.LEAST_VOID_AREA / 2
                && !polygon.buffer(-Tolerance.TOUCHING / 2).isEmpty();
    }

    private List<Ring> islands(Polygon polygon) {
        List<Ring> islands = new ArrayList<>();
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            LinearRing ring = polygon.getInteriorRingN(i);
            Ring island = trace.ring(ring, true, WeldedOutlines.inside(Chords.FACTORY.createPolygon(ring)));
            if (!island.bounds().isEmpty()) {
                islands.add(island);
            }
        }
        return islands;
    }

    /** Where the ring of a piece of air meets the air beyond at a point, in the order of height. */
    private List<Point> corners(int number) {
        Set<Coordinate> corners =
                new TreeSet<>(Comparator.comparingDouble(Coordinate::getY).thenComparingDouble(Coordinate::getX));
        for (Coordinate at : air.get(number).getExteriorRing().getCoordinates()) {
            if (wideAirAt.getOrDefault(at, Set.of()).stream().anyMatch(other -> other != number)) {
                corners.add(at);
            }
        }
        return corners.stream().map(at -> new Point(at.getX(), at.getY())).toList();
    }
}
