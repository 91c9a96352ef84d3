package buildup.profiles.region;

import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/**
 * What stands of a blank beside the wood that is wanted when cutters have gone through it. By chords: arcs of one circle
 * share theirs, so a cutter that fits leaves nothing on a curve.
 */
public final class Carving {
    /**
     * A connected piece that is left.
     *
     * @param ring of chords, closed
     * @param area sq in
     */
    public record Left(List<Segment> ring, double area) {
        public Left {
            ring = List.copyOf(ring);
        }
    }

    private Carving() {}

    /** The pieces thicker than touching, from lowest to highest. */
    public static List<Left> left(Outline blank, Outline wood, List<Outline> cuts) {
        Geometry rest = WeldedOutlines.overlay(polygon(blank), polygon(wood), OverlayNG.DIFFERENCE);
        for (Outline cut : cuts) {
            rest = WeldedOutlines.overlay(rest, polygon(cut), OverlayNG.DIFFERENCE);
        }
        List<Left> left = new ArrayList<>();
        for (int i = 0; i < rest.getNumGeometries(); i++) {
            if (rest.getGeometryN(i) instanceof Polygon polygon
                    && !polygon.buffer(-Tolerance.TOUCHING / 2).isEmpty()) {
                left.add(new Left(ring(polygon), polygon.getArea()));
            }
        }
        left.sort(Comparator.comparingDouble(
                        (Left one) -> one.ring().get(0).from().y())
                .thenComparingDouble(one -> one.ring().get(0).from().x()));
        return left;
    }

    /** Whether two outlines overlap by more than touching. */
    public static boolean bites(Outline cut, Outline wood) {
        return cut.box().near(wood.box(), 0)
                && !WeldedOutlines.overlay(polygon(cut), polygon(wood), OverlayNG.INTERSECTION)
                        .buffer(-Tolerance.TOUCHING / 2)
                        .isEmpty();
    }

    private static Polygon polygon(Outline outline) {
        return Chords.of(0, outline).polygon();
    }

    private static List<Segment> ring(Polygon polygon) {
        Coordinate[] corners = polygon.getExteriorRing().getCoordinates();
        List<Segment> ring = new ArrayList<>();
        for (int i = 0; i + 1 < corners.length; i++) {
            ring.add(new Line(
                    new Point(corners[i].getX(), corners[i].getY()),
                    new Point(corners[i + 1].getX(), corners[i + 1].getY())));
        }
        return ring;
    }
}
