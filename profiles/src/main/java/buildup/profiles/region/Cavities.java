package buildup.profiles.region;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.NearPoints;
import buildup.profiles.outline.NearPoints.NearPoint;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Closures.Closure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
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
    private final List<Closure> joints;
    private final List<Boolean> wide;
    /** For each joint the pieces of air that reach both its ends. */
    private final List<Set<Integer>> beside;

    private Cavities(List<Polygon> air, Envelope sheet, Closures joints) {
        this.air = air;
        this.sheet = sheet;
        this.trace = new Trace(joints.outlines(), joints.chords());
        this.joints = joints.all();
        this.wide = air.stream().map(Cavities::isWide).toList();
        List<Set<Integer>> first = airAt(NearPoint::onFirst);
        List<Set<Integer>> second = airAt(NearPoint::onSecond);
        for (int k = 0; k < first.size(); k++) {
            first.get(k).retainAll(second.get(k));
        }
        this.beside = first;
    }

    /** The wide pieces of air at one end of each joint: the specks along a joint part nothing. */
    private List<Set<Integer>> airAt(Function<NearPoint, Point> which) {
        List<Set<Integer>> found = new ArrayList<>();
        STRtree places = new STRtree();
        for (int k = 0; k < joints.size(); k++) {
            found.add(new TreeSet<>());
            Point end = which.apply(end(k));
            places.insert(around(new Coordinate(end.x(), end.y())), k);
        }
        for (int i = 0; i < air.size() && !joints.isEmpty(); i++) {
            int number = i;
            if (wide.get(i)) {
                for (Coordinate at : air.get(i).getCoordinates()) {
                    places.query(around(at), joint -> found.get((Integer) joint).add(number));
                }
            }
        }
        return found;
    }

    private NearPoint end(int joint) {
        return joints.get(joint).near();
    }

    private static Envelope around(Coordinate at) {
        Envelope envelope = new Envelope(at);
        envelope.expandBy(Tolerance.SNAP);
        return envelope;
    }

    static List<Cavity> of(Closures joints) {
        Geometry union = WeldedOutlines.union(joints.solid());
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
        return new Cavities(air, sheet, joints).found();
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
                    boolean open = wide.get(i) && isWide(polygon(ring));
                    found.add(new Cavity(ring, islands(polygon), open, corners(i)));
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

    /**
     * Where a piece of air and the air beyond come to one place at which two outlines meet in a point, in the order of
     * height.
     */
    private List<Cavity.Corner> corners(int number) {
        List<Integer> closing = new ArrayList<>();
        for (int k = 0; k < joints.size(); k++) {
            if (beside.get(k).contains(number) && parts(k, number)) {
                closing.add(k);
            }
        }
        List<Cavity.Corner> corners = new ArrayList<>();
        while (!closing.isEmpty()) {
            Point at = end(closing.get(0)).at();
            List<Integer> here = closing.stream()
                    .filter(joint -> end(joint).at().near(at, NearPoints.ONE_PLACE))
                    .toList();
            corners.add(new Cavity.Corner(at, outlines(here)));
            closing.removeAll(here);
        }
        corners.sort(
                Comparator.comparingDouble((Cavity.Corner corner) -> corner.at().y())
                        .thenComparingDouble(corner -> corner.at().x()));
        return corners;
    }

    private List<Integer> outlines(List<Integer> here) {
        return here.stream()
                .map(joints::get)
                .flatMap(joint -> Stream.of(joint.first(), joint.second()))
                .distinct()
                .sorted()
                .toList();
    }

    private boolean parts(int joint, int number) {
        for (int k = 0; k < joints.size(); k++) {
            if (joints.get(k).isAt(joints.get(joint)) && beside.get(k).stream().anyMatch(other -> other != number)) {
                return true;
            }
        }
        return false;
    }
}
